package projector

import (
	"bytes"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/pieces"
	"ellwand/pieces/arrangement"
	"ellwand/pieces/drawing"
	"ellwand/pieces/found"
	"ellwand/pieces/linework"
	"ellwand/pieces/pdfin"
	"ellwand/pieces/sheet"
)

func figures(t *testing.T, sizes ...string) []sheet.DrawnPiece {
	t.Helper()
	var all []pieces.Piece
	for i, size := range sizes {
		p := pieces.Rectangle("cuff", 240+20*float64(i), 100)
		p.Size = size
		for k := range p.Edges {
			p.Edges[k].Allowance = 10
		}
		all = append(all, p)
	}
	f, err := sheet.NewDrawnPiece(all...)
	require.NoError(t, err)
	return []sheet.DrawnPiece{f}
}

// read the page back by a reader that shares nothing with the writer.
func read(t *testing.T, page drawing.Page) linework.Drawing {
	t.Helper()
	var file bytes.Buffer
	require.NoError(t, drawing.WriteLayeredPDF(&file, "test", []drawing.Page{page}))
	out, err := pdfin.Lines(file.Bytes(), found.Options{Limits: found.Limits{1 << 24, 1e5, 1e5, 60, 1000, 1000}})
	require.NoError(t, err)
	return out
}

func layer(d linework.Drawing, name string) []linework.Line {
	var out []linework.Line
	for _, l := range d.Lines {
		if l.Layer == name {
			out = append(out, l)
		}
	}
	return out
}

func TestPage(t *testing.T) {
	for _, scale := range []float64{1, 0.25} {
		page, err := Page(figures(t, "10"), Options{Grid: 100, Square: 100, Scale: scale})
		require.NoError(t, err)
		d := read(t, page)
		assert.Equal(t, "#000000", d.Lines[0].Pen.Fill, "a dark ground")
		cutting := layer(d, drawing.CutLayer)
		require.Len(t, cutting, 1)
		box := cutting[0].Path.Flatten(0.1).Bound()
		assert.InDelta(t, 260*scale, box.Max[0]-box.Min[0], 0.02)
		assert.InDelta(t, 2*scale, cutting[0].Pen.Width, 0.01, "thick")
		assert.Equal(t, "#ffffff", cutting[0].Pen.Colour)
		square := layer(d, SquareLayer)
		require.Len(t, square, 1)
		box = square[0].Path.Flatten(0.1).Bound()
		assert.InDelta(t, 100*scale, box.Max[0]-box.Min[0], 0.02)
		assert.InDelta(t, 100*scale, box.Max[1]-box.Min[1], 0.02)
		grid := layer(d, GridLayer)
		assert.Len(t, grid, 2+3, "upright and level lines, each 10 cm")
		for _, l := range grid {
			assert.GreaterOrEqual(t, l.Pen.Width, gridWidth*scale-0.01)
		}
	}
	inches := Usual(true)
	inches.Light = true
	page, err := Page(figures(t, "10"), inches)
	require.NoError(t, err)
	d := read(t, page)
	box := layer(d, SquareLayer)[0].Path.Flatten(0.1).Bound()
	assert.InDelta(t, 4*25.4, box.Max[0]-box.Min[0], 0.02)
	grid := layer(d, GridLayer)
	require.Len(t, grid, 2+2)
	assert.InDelta(t, 4*25.4, grid[1].Path.Start()[0]-grid[0].Path.Start()[0], 0.02)
	inches.Grid = 0
	page, err = Page(figures(t, "10"), inches)
	require.NoError(t, err)
	d = read(t, page)
	assert.Empty(t, layer(d, GridLayer))
	assert.Equal(t, "#000000", layer(d, drawing.CutLayer)[0].Pen.Colour)
	var words []string
	for _, w := range d.Words {
		words = append(words, w.Text)
		assert.GreaterOrEqual(t, w.Size, leastWords-0.01)
	}
	assert.Contains(t, words, "4 in each way:")
	_, err = Page(nil, Options{Scale: 1})
	assert.ErrorContains(t, err, "there is no piece to draw")
}

// Each size is a layer of its own.
func TestSizesAreLayers(t *testing.T) {
	page, err := Page(figures(t, "10", "12"), Options{Square: 100, Scale: 1})
	require.NoError(t, err)
	d := read(t, page)
	for i, size := range []string{"10", "12"} {
		longest := 0.0
		for _, l := range layer(d, sheet.SizeLayer(size)) {
			longest = max(longest, l.Path.Flatten(0.1).Bound().Max[0]-l.Path.Flatten(0.1).Bound().Min[0])
		}
		assert.InDelta(t, 260+20*float64(i), longest, 0.02, size)
	}
}

func TestGridInWords(t *testing.T) {
	assert.Equal(t, "10 cm", Options{}.inWords(100))
	assert.Equal(t, "2.55 cm", Options{}.inWords(25.5))
	assert.Equal(t, "1.5 in", Options{Inches: true}.inWords(38.1))
}

// A page is as wide as what lies on it, and as the square by which it is measured.
func TestPageHoldsTheSquare(t *testing.T) {
	for _, square := range []float64{100, 400} {
		page, err := Page(figures(t, "10"), Options{Square: square, Scale: 0.5})
		require.NoError(t, err)
		assert.InDelta(t, max(260, square)/2+arrangement.Margin, page.Width, 1e-6)
	}
}
