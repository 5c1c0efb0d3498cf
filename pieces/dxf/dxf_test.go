package dxf_test

import (
	"bytes"
	"encoding/json"
	"fmt"
	"math"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/pieces"
	"ellwand/pieces/dxf"
	"ellwand/pieces/found"
	"ellwand/pieces/geometry"
	"ellwand/pieces/marks"
	"ellwand/pieces/seams"
	"ellwand/testdata/bench"
	"ellwand/testdata/check"
)

// enough for what the tests read.
var enough = found.Limits{found.Bytes: 32 << 20, found.Things: 100_000, found.Vertices: 400_000, found.Nesting: 16,
	found.Outlines: 1000, found.Words: 20_000}

func read(t *testing.T, data []byte, o found.Options) found.Drawing {
	t.Helper()
	require.True(t, dxf.Is(data[:min(len(data), 1000)]))
	o.Limits = enough
	out, err := dxf.Read(data, o)
	require.NoError(t, err)
	return out
}

func area(p found.Piece) float64 {
	var all orb.Ring
	for _, s := range p.Outline {
		points := s.Flatten(1e-4)
		all = append(all, points[:len(points)-1]...)
	}
	return math.Abs(geometry.Area(append(all, all[0])))
}

// The shapes of an open nesting instance have the areas that the instance has of them.
func TestOpenInstance(t *testing.T) {
	folder := bench.Folder(t)
	data, err := os.ReadFile(filepath.Join(folder, "shirts.json"))
	require.NoError(t, err)
	var instance struct {
		Items []struct {
			Shape struct{ Data []orb.Point }
		}
	}
	require.NoError(t, json.Unmarshal(data, &instance))
	require.Len(t, instance.Items, 8)
	for i, item := range instance.Items {
		data, err := os.ReadFile(filepath.Join(folder, "dxf", fmt.Sprintf("shirts_%d.dxf", i)))
		require.NoError(t, err)
		got := read(t, data, found.Options{Unit: 10})
		require.Len(t, got.Pieces, 1)
		want := math.Abs(geometry.Area(item.Shape.Data)) * 100
		assert.InEpsilon(t, want, area(got.Pieces[0]), 1e-6, "shape %d", i)
	}
}

// A drawing by another program, with every entity, in several versions of the format.
func TestDrawnByOthers(t *testing.T) {
	for _, version := range []string{"R12", "R2000", "R2018"} {
		t.Run(version, func(t *testing.T) {
			path := filepath.Join(t.TempDir(), "drawn.dxf")
			want := check.WriteDXF(t, path, version)
			data, err := os.ReadFile(path)
			require.NoError(t, err)
			o := found.Options{}
			if version == "R12" { // which has no unit
				o.Unit = 1
			}
			got := read(t, data, o)
			require.Len(t, got.Pieces, len(want))
			areas := map[string]float64{}
			for _, p := range got.Pieces {
				areas[p.Name] = area(p)
			}
			for _, w := range want {
				assert.InEpsilon(t, w.Area, areas[w.Name], 1e-5, w.Name)
			}
		})
	}
}

// jacket is a half on the fold, and a pair with a curve, notches and marks.
func jacket() []pieces.Piece {
	back := pieces.Rectangle("back", 240, 600)
	back.Size, back.Cloth, back.Fold = "38", "wool", seams.Left
	back.Edges[0].Allowance, back.Edges[1].Allowance, back.Edges[2].Allowance = 40, 15, 10
	back.Notches = []pieces.Notch{{Edge: seams.Right, At: 150, Count: 2}}
	back.Marks = []pieces.Mark{{Name: marks.StripeLine, Path: pieces.Path{pieces.Line{From: orb.Point{-5, 300},
		To: orb.Point{300, 300}}}}}
	sleeve := pieces.Rectangle("sleeve é", 300, 500)
	sleeve.Cut, sleeve.Pair, sleeve.Kind, sleeve.Cloth = 2, true, pieces.Lining, "lining"
	sleeve.Accuracy = 0.4
	sleeve.Edges[2].Path = pieces.Path{pieces.Arc{Centre: orb.Point{150, 500}, Radius: 150, Sweep: math.Pi}}
	sleeve.Notches = []pieces.Notch{{Edge: seams.Top, At: 100, Count: 1}, {Edge: seams.Left, At: 40, Count: 1}}
	sleeve.Marks = []pieces.Mark{{Name: marks.DrillHole, At: orb.Point{100, 100}}, {Name: marks.ElbowLine,
		Path: pieces.Path{pieces.Line{From: orb.Point{0, 250}, To: orb.Point{300, 250}}}},
		{Name: marks.Cutout, Path: pieces.Path{pieces.Line{From: orb.Point{20, 20}, To: orb.Point{60, 20}},
			pieces.Line{From: orb.Point{60, 20}, To: orb.Point{20, 60}}, pieces.Line{From: orb.Point{20, 60},
				To: orb.Point{20, 20}}}}}
	for i := range sleeve.Edges {
		sleeve.Edges[i].Allowance = 12
	}
	band := pieces.Rectangle("band", 80, 700)
	band.Cut, band.Grain.Lie = 3, pieces.EitherGrain
	return []pieces.Piece{back, sleeve, band}
}

// complete makes pieces of what was read.
func complete(t *testing.T, d found.Drawing, o found.Options) []pieces.Piece {
	t.Helper()
	var out []pieces.Piece
	for _, p := range d.Pieces {
		clean, _, err := found.Clean(p, o)
		require.NoError(t, err)
		piece, _, err := found.Complete(clean, found.Said{}, o)
		require.NoError(t, err)
		out = append(out, piece)
	}
	return out
}

func written(t *testing.T, all []pieces.Piece) []byte {
	t.Helper()
	var out bytes.Buffer
	require.NoError(t, dxf.Write(&out, "Jacket", all))
	return out.Bytes()
}

// What is written is read with all that the format carries, and written again it is
// the same to the last byte.
func TestRoundTrip(t *testing.T) {
	first := written(t, jacket())
	drawing := read(t, first, found.Options{})
	assert.Equal(t, "Jacket", drawing.Title)
	all := complete(t, drawing, found.Options{})
	require.Len(t, all, 3)
	back, sleeve, band := all[0], all[1], all[2]
	assert.Equal(t, "back", back.Name)
	assert.Equal(t, "38", back.Size)
	assert.Equal(t, "wool", back.Cloth)
	assert.Equal(t, seams.Centre, back.Fold)
	assert.Equal(t, 1, back.Cut)
	assert.Equal(t, []float64{40, 15, 10}, included(back))
	require.Len(t, back.Notches, 2, "two strokes, and the stripe")
	assert.Equal(t, 2, back.Notches[0].Count)
	assert.Equal(t, marks.StripeLine, back.Notches[1].Match)
	assert.Equal(t, "sleeve é", sleeve.Name)
	assert.True(t, sleeve.Pair)
	assert.Equal(t, 2, sleeve.Cut)
	assert.Equal(t, pieces.Lining, sleeve.Kind)
	assert.Equal(t, 0.4, sleeve.Accuracy)
	var names []marks.Name
	for _, m := range sleeve.Marks {
		names = append(names, m.Name)
	}
	assert.Equal(t, []marks.Name{marks.SewLine, marks.ElbowLine, marks.Cutout, marks.DrillHole}, names)
	assert.Equal(t, pieces.EitherGrain, band.Grain.Lie)
	assert.Equal(t, 3, band.Cut)
	for i, p := range jacket() {
		want, err := p.CuttingOutline(0.001)
		require.NoError(t, err)
		got, err := all[i].CuttingOutline(0.001)
		require.NoError(t, err)
		assert.InDelta(t, geometry.Area(want), geometry.Area(got), 20, p.Name)
	}
	assert.Equal(t, string(first), string(written(t, all)))
}

func included(p pieces.Piece) []float64 {
	var out []float64
	for _, e := range p.Edges {
		if e.Name != p.Fold {
			out = append(out, e.Included)
		}
	}
	return out
}

// Halves may be opened.
func TestOpened(t *testing.T) {
	o := found.Options{Open: true}
	all := complete(t, read(t, written(t, jacket()), o), o)
	assert.Equal(t, seams.None, all[0].Fold)
	box := all[0].Boundary(1).Bound()
	assert.InDelta(t, 2*(240+15), box.Max[0]-box.Min[0], 0.01)
}

// Another program reads the layers, the counts, the texts and the areas.
func TestReadByOthers(t *testing.T) {
	path := filepath.Join(t.TempDir(), "jacket.dxf")
	require.NoError(t, os.WriteFile(path, written(t, jacket()), 0o600))
	got := check.ReadDXF(t, path)
	assert.Empty(t, got.Errors)
	assert.Equal(t, []string{"Style Name: Jacket", "Units: METRIC"}, got.Style)
	assert.Equal(t, []string{"BACK_38", "SLEEVE__", "BAND"}, got.Inserts)
	require.Len(t, got.Blocks, 3)
	back, sleeve := got.Blocks[0], got.Blocks[1]
	assert.Equal(t, []string{"Piece Name: back", "Size: 38", "Quantity: 1", "Material: wool", "Category: shell"},
		back.Texts)
	assert.Equal(t, []string{"Piece Name: sleeve é", "Annotation: Accuracy: 0.4 mm", "Quantity: 1,1", "Material: lining",
		"Category: lining", "elbow line"}, sleeve.Texts)
	assert.Equal(t, map[string]int{"1 TEXT": 5, "1 POLYLINE": 1, "2 POINT": 4, "4 POINT": 2, "6 LINE": 1, "7 LINE": 1,
		"9 POLYLINE": 1, "14 POLYLINE": 1}, back.Layers)
	assert.Equal(t, 1, sleeve.Layers["8 POLYLINE"])
	assert.Equal(t, 1, sleeve.Layers["11 POLYLINE"])
	assert.Equal(t, 1, sleeve.Layers["13 POINT"])
	assert.Equal(t, 2, sleeve.Layers["4 POINT"])
	assert.InDelta(t, 255*650, back.Areas["1"], 0.5)
	assert.InDelta(t, 240*600, back.Areas["14"], 0.5)
	assert.InDelta(t, 300*500+math.Pi*150*150/2, sleeve.Areas["14"], 10)
	assert.InDelta(t, 324*(500+12)+math.Pi*162*162/2, sleeve.Areas["1"], 500)
}

// A fold ends at corners, however little the cutting line turns there: a spindle of which
// half is drawn.
func TestFoldEndsAtCorners(t *testing.T) {
	half := pieces.Rectangle("spindle", 100, 600)
	half.Fold = seams.Left
	low, high := orb.Point{20, -200}, orb.Point{20, 800}
	half.Edges[0].Path = pieces.Path{pieces.Line{To: low}, pieces.Line{From: low, To: orb.Point{100, 0}}}
	half.Edges[2].Path = pieces.Path{pieces.Line{From: orb.Point{100, 600}, To: high},
		pieces.Line{From: high, To: orb.Point{0, 600}}}
	for i := range 3 {
		half.Edges[i].Allowance = 10
	}
	var turns []found.Bend
	for _, step := range read(t, written(t, []pieces.Piece{half}), found.Options{}).Pieces[0].Outline {
		turns = append(turns, step.Begins)
	}
	assert.Equal(t, slices.Repeat([]found.Bend{found.Corner}, 8), turns)
}

// Letters of every script that R12 can name come back; \U+ has four digits, so that
// those beyond are no letters of it.
func TestLetters(t *testing.T) {
	for name, want := range map[string]string{"Ärmel": "Ärmel", "袖": "袖", "\uffe5": "\uffe5", "\U00010000": "?",
		"back \U0001f9f5": "back ?"} {
		all := jacket()[:1]
		all[0].Name = name
		assert.Equal(t, want, read(t, written(t, all), found.Options{}).Pieces[0].Name)
	}
}

// groups are a DXF file of lines that alternate between codes and values.
func groups(values ...any) []byte {
	var out strings.Builder
	for _, v := range values {
		fmt.Fprintln(&out, v)
	}
	return []byte(out.String())
}

// entities wraps drawn things into a file in mm.
func entities(values ...any) []byte {
	head := groups(0, "SECTION", 2, "HEADER", 9, "$INSUNITS", 70, 4, 0, "ENDSEC", 0, "SECTION", 2, "ENTITIES")
	return append(append(head, groups(values...)...), groups(0, "ENDSEC", 0, "EOF")...)
}

// Units of the header, of what was said, and none.
func TestUnits(t *testing.T) {
	square := []any{0, "LWPOLYLINE", 8, "0", 90, 4, 70, 1, 10, 0, 20, 0, 10, 10, 20, 0, 10, 10, 20, 10, 10, 0, 20, 10}
	plain := append(groups(0, "SECTION", 2, "ENTITIES"), groups(append(square, 0, "ENDSEC", 0, "EOF")...)...)
	_, err := dxf.Read(plain, found.Options{Limits: enough})
	var unit *found.NeedUnit
	require.ErrorAs(t, err, &unit)
	assert.Equal(t, found.NeedUnit{Across: 10, Up: 10}, *unit)
	assert.InDelta(t, 254*254, area(read(t, plain, found.Options{Unit: 25.4}).Pieces[0]), 1e-6)
	assert.InDelta(t, 100, area(read(t, entities(square...), found.Options{}).Pieces[0]), 1e-9)
}
