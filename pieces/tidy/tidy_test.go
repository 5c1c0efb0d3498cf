package tidy

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/pieces"
	"ellwand/pieces/found"
	"ellwand/pieces/geometry"
	"ellwand/pieces/linework"
	"ellwand/testdata/sketch"
)

// options of the tests.
var options = found.Options{Limits: found.Limits{found.Bytes: 64 << 20, found.Things: 200_000, found.Vertices: 400_000,
	found.Nesting: 60, found.Outlines: 1000, found.Words: 1000}}

func readPDF(t *testing.T, name string, view found.View) found.Drawing {
	t.Helper()
	data, err := os.ReadFile(filepath.Join("testdata", name))
	require.NoError(t, err)
	o := options
	o.View = view
	out, err := PDF(data, o)
	require.NoError(t, err)
	return out
}

// The shapes of testdata/untidy.py, in its own frame.

func skirt(size float64) orb.Ring {
	k := (size - 10) / 2
	w, h := 200+15*k, 430+6*k
	side := pieces.Path{
		pieces.Bezier{P0: orb.Point{w, 20}, P1: orb.Point{w, 200}, P2: orb.Point{w + 5, 330}, P3: orb.Point{w - 25, h}},
		pieces.Bezier{P0: orb.Point{w - 25, h}, P1: orb.Point{w - 90, h - 8}, P2: orb.Point{70, h - 10},
			P3: orb.Point{20, h - 10}},
		pieces.Line{From: orb.Point{20, h - 10}, To: orb.Point{20, 20}}, pieces.Line{From: orb.Point{20, 20},
			To: orb.Point{w, 20}},
	}
	return orb.Ring(side.Flatten(0.001))
}

var pocket = orb.Ring{{150, 300}, {270, 300}, {270, 440}, {150, 440}, {150, 300}}

func sleeve() orb.Ring {
	return orb.Ring(pieces.Path{
		pieces.Bezier{P0: orb.Point{330, 120}, P1: orb.Point{380, 60}, P2: orb.Point{480, 60}, P3: orb.Point{540, 120}},
		pieces.Bezier{P0: orb.Point{540, 120}, P1: orb.Point{500, 250}, P2: orb.Point{470, 400}, P3: orb.Point{435, 400}},
		pieces.Bezier{P0: orb.Point{435, 400}, P1: orb.Point{400, 400}, P2: orb.Point{370, 250}, P3: orb.Point{330, 120}},
	}.Flatten(0.001))
}

func outline(p found.Piece) orb.Ring {
	var path pieces.Path
	for _, s := range p.Outline {
		path = append(path, s.Curve)
	}
	return orb.Ring(path.Flatten(0.001))
}

// assertShape that lies as one of the script's, moved by as much as the joined sheets
// are.
func assertShape(t *testing.T, want orb.Ring, got found.Piece, within float64) {
	t.Helper()
	ring := outline(got)
	// The upper left sheet lies at (0, 0) of the joined drawing.
	box, wanted := ring.Bound(), want.Bound()
	shift := geometry.Sub(wanted.Min, box.Min)
	moved := orb.Ring(geometry.Moved(ring, shift))
	assert.Less(t, sketch.Apart(moved, want), within)
}

func TestUntidySheets(t *testing.T) {
	for _, c := range []struct {
		lines []int
		want  []orb.Ring
	}{
		{[]int{1}, []orb.Ring{skirt(14), sleeve()}},
		{[]int{2}, []orb.Ring{skirt(12)}},
		{[]int{3}, []orb.Ring{skirt(10)}},
		{[]int{4}, []orb.Ring{pocket}},
	} {
		got := readPDF(t, "untidy.pdf", found.View{Lines: c.lines})
		require.Len(t, got.Pieces, len(c.want), "%v", c.lines)
		for i, want := range c.want {
			assertShape(t, want, got.Pieces[i], 0.01)
		}
		assert.Equal(t, "2 3 4/5 6 7", noteOf(t, got, found.Joined).What)
	}
}

// The test square on the page of instructions is told, and sets the scale if it is asked
// to.
func TestSquare(t *testing.T) {
	got := readPDF(t, "untidy.pdf", found.View{Lines: []int{4}})
	note := noteOf(t, got, found.ScaleChecked)
	assert.Equal(t, "10 cm", note.What)
	assert.InDelta(t, 100, note.Size, 0.001)
	got = readPDF(t, "untidy.pdf", found.View{Lines: []int{4}, Square: 101.6})
	require.Len(t, got.Pieces, 1)
	assert.InDelta(t, 120*1.016*140*1.016, geometry.Area(outline(got.Pieces[0])), 0.5)
	assert.InDelta(t, 100, noteOf(t, got, found.ScaleSet).Size, 0.001)
}

func noteOf(t *testing.T, d found.Drawing, kind found.NoteKind) found.Note {
	t.Helper()
	for _, n := range d.Notes {
		if n.Kind == kind {
			return n
		}
	}
	require.Fail(t, "there is no such note", "%v of %v", kind, d.Notes)
	return found.Note{}
}

func TestLayeredSheets(t *testing.T) {
	for size, layer := range map[float64]string{10: "Size 10", 12: "size 12", 14: "SIZE 14"} {
		got := readPDF(t, "layered.pdf", found.View{Layers: []string{layer}})
		require.Len(t, got.Pieces, 1)
		assertShape(t, skirt(size), got.Pieces[0], 0.01)
	}
	mixed := readPDF(t, "layered.pdf", found.View{})
	assert.Equal(t, 3, noteOf(t, mixed, found.KindsMixed).Count)
	data, err := os.ReadFile("testdata/layered.pdf")
	require.NoError(t, err)
	o := options
	o.View.Layers = []string{"size 16"}
	_, err = PDF(data, o)
	assert.Equal(t, &linework.Fault{Of: linework.NoSuchLayer, Text: "size 16",
		Names: []string{"Size 14", "Size 12", "Size 10"}}, err)
	o.View = found.View{Lines: []int{4}}
	_, err = PDF(data, o)
	assert.Equal(t, &linework.Fault{Of: linework.NoSuchLines, Number: 4, Known: 3}, err)
	o.View = found.View{Pages: []int{9}}
	_, err = PDF(data, o)
	assert.Equal(t, &linework.Fault{Of: linework.NoSuchPage, Number: 9, Known: 4}, err)
}
