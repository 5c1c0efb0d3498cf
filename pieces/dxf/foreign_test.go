package dxf_test

import (
	"math"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/pieces"
	"ellwand/pieces/found"
	"ellwand/pieces/marks"
	"ellwand/pieces/seams"
)

// text of a pattern file.
func text(layer int, words string) []any {
	return []any{0, "TEXT", 8, layer, 10, 1, 20, 1, 40, 0.2, 1, words}
}

func point(layer int, x, y float64) []any { return []any{0, "POINT", 8, layer, 10, x, 20, y} }

func line(layer int, x1, y1, x2, y2 float64) []any {
	return []any{0, "LINE", 8, layer, 10, x1, 20, y1, 11, x2, 21, y2}
}

// foreign is a pattern as others write it: in inches, its boundary of lines in no
// order, clockwise, with every kind of notch, lower case keys, and layers of no use.
func foreign(extra ...[]any) []byte {
	all := []any{0, "SECTION", 2, "BLOCKS", 0, "BLOCK", 8, 1, 2, "F-38", 70, 0, 10, 3, 20, 4}
	for _, part := range append([][]any{
		text(1, "PIECE NAME:  Front "), text(1, "Size: 38"), text(1, "Quantity: 1,1"), text(1, "MATERIAL: Denim"),
		text(1, "Annotation: cut with care"), text(1, `\U+00C4rmel: red`), text(1, "Rule Table: R1"),
		line(1, 0, 0, 0, 20), line(1, 10, 20, 0, 20), line(1, 10, 0, 0, 0), line(1, 10, 20, 10, 0),
		point(2, 0, 0), point(2, 0, 20), point(2, 10, 20), point(2, 10, 0),
		point(4, 0, 5), point(80, 0, 10), point(81, 10, 6), point(82, 10, 8), point(83, 10, 10.2), point(83, 10, 10.4),
		line(5, 0, 0, 1, 1), line(7, 5, 2, 5, 18), line(8, 2, 2, 8, 2), line(9, -1, 12, 11, 12), line(10, 5, -1, 5, 21),
		{0, "LWPOLYLINE", 8, 11, 70, 1, 10, 4, 20, 4, 10, 5, 20, 4, 10, 5, 20, 5},
		point(13, 3, 3), line(99, 0, 0, 3, 3),
	}, extra...) {
		all = append(all, part...)
	}
	all = append(all, 0, "ENDBLK", 0, "ENDSEC", 0, "SECTION", 2, "ENTITIES")
	for _, part := range [][]any{text(1, "Style Name: Jeans"), text(1, "Units: ENGLISH"), text(1, "Author: Ute"),
		{0, "INSERT", 8, 1, 2, "F-38", 10, 3, 20, 4}} {
		all = append(all, part...)
	}
	return groups(append(all, 0, "ENDSEC", 0, "EOF")...)
}

func TestForeignPattern(t *testing.T) {
	drawing := read(t, foreign(), found.Options{})
	assert.Equal(t, "Jeans", drawing.Title)
	require.Len(t, drawing.Pieces, 1)
	p := drawing.Pieces[0]
	assert.Empty(t, p.Missing(found.Said{}))
	var shapes []found.NotchShape
	for _, n := range p.Notches {
		shapes = append(shapes, n.Shape)
	}
	assert.Equal(t, []found.NotchShape{found.PlainNotch, found.TNotch, found.CastleNotch, found.CheckNotch, found.UNotch,
		found.UNotch}, shapes)
	var notes []string
	for _, n := range drawing.Notes {
		notes = append(notes, n.What)
	}
	assert.Equal(t, []string{"layer 5", "layer 99", "Ärmel: red"}, notes)
	front := complete(t, drawing, found.Options{})[0]
	assert.Equal(t, "Front", front.Name)
	assert.Equal(t, "38", front.Size)
	assert.Equal(t, "Denim", front.Cloth)
	assert.Equal(t, 2, front.Cut)
	assert.True(t, front.Pair)
	assert.Equal(t, orb.Bound{Max: orb.Point{254, 508}}, front.Boundary(1).Bound())
	assert.Len(t, front.Edges, 4)
	for _, e := range front.Edges {
		assert.True(t, e.Unknown)
	}
	require.Len(t, front.Notches, 7, "the two that lie side by side are one; a stripe and a check")
	assert.Equal(t, 2, front.Notches[4].Count)
	assert.Equal(t, []marks.Name{marks.StripeLine, marks.PlaidLine},
		[]marks.Name{front.Notches[5].Match, front.Notches[6].Match})
	var names []string
	for _, m := range front.Marks {
		names = append(names, m.Name.String())
	}
	assert.Equal(t, []string{"internal line", "stripe line", "plaid line", "cut-out", "drill hole"}, names)
	assert.Equal(t, pieces.Grain{From: orb.Point{127, 50.8}, To: orb.Point{127, 457.2}}, front.Grain)
}

// A mirror line along an edge lays it on the fold; a sew line tells what the edges
// include, and that of an uneven one is unknown.
func TestForeignHalf(t *testing.T) {
	sew := []any{0, "LWPOLYLINE", 8, 14, 70, 1, 10, 0, 20, 1.5, 10, 9.5, 20, 1.5, 10, 9.5, 20, 19, 10, 0, 20, 19.5}
	drawing := read(t, foreign(line(6, 0, 0, 0, 20), sew), found.Options{})
	front := complete(t, drawing, found.Options{})[0]
	assert.Equal(t, seams.Centre, front.Fold)
	var included []float64
	unknown := 0
	for _, e := range front.Edges {
		switch {
		case e.Unknown:
			unknown++
		case e.Name != front.Fold:
			included = append(included, e.Included)
		}
	}
	assert.ElementsMatch(t, []float64{38.1, 12.7}, included)
	assert.Equal(t, 1, unknown)
}

// Curve points are no corners; smooth lines are drawn through them when that is asked
// for.
func TestCurvePoints(t *testing.T) {
	block := []any{0, "SECTION", 2, "BLOCKS", 0, "BLOCK", 8, 1, 2, "B", 0, "LWPOLYLINE", 8, 1, 70, 1, 10, 0, 20, 0, 10,
		100,
		20, 0, 10, 200, 20, 60, 10, 100, 20, 100, 10, 0, 20, 100}
	for _, p := range [][]any{text(1, "Piece Name: cap"), text(1, "Quantity: 1"), line(7, 50, 10, 50, 90), point(2, 0, 0),
		point(2, 100, 0), point(3, 200, 60), point(2, 100, 100), point(2, 0, 100)} {
		block = append(block, p...)
	}
	data := groups(append(block, 0, "ENDBLK", 0, "ENDSEC", 0, "EOF")...)
	plain := read(t, data, found.Options{})
	assert.Len(t, complete(t, plain, found.Options{})[0].Edges, 4)
	o := found.Options{Smooth: true}
	smooth := read(t, data, o)
	assert.Greater(t, area(smooth.Pieces[0]), area(plain.Pieces[0])+500)
	assert.Len(t, complete(t, smooth, o)[0].Edges, 4)
}

// More of the left ones than of the right ones, or none of these, are taken as the file
// says: those as drawn, these mirrored; and written they are read as the same.
func TestUnevenSides(t *testing.T) {
	block := func(quantity string) []byte {
		all := []any{0, "SECTION", 2, "BLOCKS", 0, "BLOCK", 8, 1, 2, "B", 0, "LWPOLYLINE", 8, 1, 70, 1, 10, 0, 20, 0, 10, 200,
			20, 0, 10, 120, 20, 100, 10, 0, 20, 100, 0, "LWPOLYLINE", 8, 14, 70, 1, 10, 10, 20, 10, 10, 184.39, 20, 10,
			10, 112.39, 20, 100, 10, 10, 20, 100}
		for _, p := range [][]any{text(1, "Piece Name: front"), text(1, "Quantity: "+quantity), line(7, 30, 10, 30, 90),
			line(8, 20, 20, 50, 60), point(13, 150, 20), point(4, 0, 30)} {
			all = append(all, p...)
		}
		return groups(append(all, 0, "ENDBLK", 0, "ENDSEC", 0, "EOF")...)
	}
	tests := []struct {
		quantity string
		names    []string
		cuts     []int
		mirrored []bool
	}{
		{"2,1", []string{"front left", "front right"}, []int{2, 1}, []bool{false, true}},
		{"1, 3", []string{"front left", "front right"}, []int{1, 3}, []bool{false, true}},
		{"0,2", []string{"front"}, []int{2}, []bool{true}},
		{"2,0", []string{"front"}, []int{2}, []bool{false}},
	}
	for _, test := range tests {
		t.Run(test.quantity, func(t *testing.T) {
			drawing := read(t, block(test.quantity), found.Options{})
			all := complete(t, drawing, found.Options{})
			require.Len(t, all, len(test.names))
			for i, p := range all {
				assert.Equal(t, test.names[i], p.Name)
				assert.Equal(t, test.cuts[i], p.Cut)
				assert.False(t, p.Pair)
				box, middle := p.Boundary(1).Bound(), 0.0
				for _, m := range p.Marks {
					if m.Name.Kind() == marks.DrillHole {
						middle = m.At[0] - box.Min[0]
					}
				}
				assert.InDelta(t, map[bool]float64{false: 150, true: 50}[test.mirrored[i]], middle, 1e-9)
				require.Len(t, p.Notches, 1)
				edge, _ := p.Edge(p.Notches[0].Edge)
				assert.InDelta(t, 30, edge.Path.At(p.Notches[0].At)[1], 1e-9)
				assert.Equal(t, 80.0, p.Grain.To[1]-p.Grain.From[1])
				assert.ElementsMatch(t, []float64{10, 10, 6, 0}, roundedAll(included(p)))
			}
			out := written(t, all)
			again := complete(t, read(t, out, found.Options{}), found.Options{})
			require.Len(t, again, len(all))
			for i, p := range again {
				assert.Equal(t, all[i].Cut, p.Cut)
				assert.Equal(t, all[i].Name, p.Name)
			}
			assert.Equal(t, string(out), string(written(t, again)))
		})
	}
}

func roundedAll(all []float64) []float64 {
	for i := range all {
		all[i] = math.Round(all[i])
	}
	return all
}

// A block is set with its base where it is inserted.
func TestBaseOfABlock(t *testing.T) {
	drawing := read(t, append(groups(0, "SECTION", 2, "BLOCKS", 0, "BLOCK", 2, "A", 10, 30, 20, 70, 0, "CIRCLE", 8, "0",
		10, 32, 20, 75, 40, 5, 0, "ENDBLK", 0, "ENDSEC"), entities(0, "INSERT", 8, "0", 2, "A", 10, 100, 20, 200)...),
		found.Options{Unit: 1})
	require.Len(t, drawing.Pieces, 1)
	box := orb.MultiPoint{}
	for _, s := range drawing.Pieces[0].Outline {
		box = append(box, pieces.Path{s.Curve}.Flatten(0.01)...)
	}
	assert.InDelta(t, 102, box.Bound().Center()[0], 0.02)
	assert.InDelta(t, 205, box.Bound().Center()[1], 0.02)
}

// The arc of an ellipse of which the drawing shows the back runs to the right.
func TestBackOfAnEllipse(t *testing.T) {
	for side, want := range map[int]float64{1: 10, -1: -10} {
		drawing := read(t, entities(0, "ELLIPSE", 8, "0", 10, 0, 20, 0, 11, 40, 21, 0, 40, 0.25, 41, 0, 42, math.Pi,
			230, side, 0, "LINE", 8, "0", 10, -40, 20, 0, 11, 40, 21, 0), found.Options{Unit: 1})
		require.Len(t, drawing.Pieces, 1)
		var middle float64
		for _, s := range drawing.Pieces[0].Outline {
			for _, q := range (pieces.Path{s.Curve}).Flatten(0.01) {
				if math.Abs(q[1]) > math.Abs(middle) {
					middle = q[1]
				}
			}
		}
		assert.InDelta(t, want, middle, 0.05, "%d", side)
	}
}
