package drawing

import (
	"bytes"
	"strings"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// layered is a page of two groups, each with something in two layers, one seen through a
// window.
func layered() Page {
	inner := &Picture{}
	one := &Picture{}
	one.Layer(CutLayer, func() { one.Line(Pen{Width: 0.5}, orb.Point{0, 0}, orb.Point{10, 0}) })
	one.Layer(WordsLayer, func() { one.Write(Text{Words: "front", At: orb.Point{1, 1}, Points: 10}) })
	one.Layer("empty", func() {})
	inner.Group("front", one)
	page := Page{Width: 50, Height: 40}
	page.Line(Pen{Grey: 90}, orb.Point{0, 30}, orb.Point{9, 30})
	page.Window(orb.Bound{Max: orb.Point{50, 40}}, inner, orb.Point{5, 5})
	page.Layer(CutLayer, func() { page.Line(Pen{Width: 0.5}, orb.Point{0, 20}, orb.Point{10, 20}) })
	return page
}

func TestLayersOfSVG(t *testing.T) {
	var out bytes.Buffer
	require.NoError(t, WriteSVG(&out, "test", layered()))
	text := out.String()
	cut, words := strings.Index(text, `<g id="cut" inkscape:groupmode="layer"`), strings.Index(text, `<g id="words"`)
	require.Positive(t, cut)
	require.Greater(t, words, cut)
	assert.Equal(t, 2, strings.Count(text[cut:words], `stroke-width="0.5"`), "both cutting lines")
	assert.Equal(t, 1, strings.Count(text[words:], ">front</text>"))
	assert.NotContains(t, text, "empty")
	assert.Contains(t, text[:cut], "M0 30L9 30", "what is in no layer comes first")
	out.Reset()
	plain := Page{Width: 50, Height: 40}
	plain.Line(Pen{}, orb.Point{0, 0}, orb.Point{1, 1})
	require.NoError(t, WriteSVG(&out, "test", plain))
	assert.NotContains(t, out.String(), "inkscape")
}

func TestLayersOfPDF(t *testing.T) {
	var out bytes.Buffer
	require.NoError(t, WriteLayeredPDF(&out, "test", []Page{layered()}, WordsLayer))
	assert.Contains(t, out.String(), "/OCProperties")
	assert.Equal(t, 2, strings.Count(out.String(), "/Type /OCG"))
	assert.Contains(t, out.String(), "/OFF [", "hidden at first")
	out.Reset()
	require.NoError(t, WritePDF(&out, "test", []Page{layered()}))
	assert.NotContains(t, out.String(), "/OCProperties")
}

func TestChanged(t *testing.T) {
	p := &Picture{}
	p.Layer(CutLayer, func() {
		p.Line(Pen{Width: 1, Grey: 10, Dashes: []float64{4, 2}}, orb.Point{0, 0},
			orb.Point{10, 4})
	})
	p.Area(20, orb.Point{0, 0}, orb.Point{1, 0}, orb.Point{0, 1})
	p.Write(Text{Words: "small", Points: 2})
	got := p.Changed(Change{Scale: 0.5, Grey: func(grey int) int { return 255 - grey }, LeastText: 12,
		Pen: func(pen Pen) Pen { pen.Width *= 3; return pen }})
	require.Len(t, got.items, 5)
	line, ok := got.items[1].(stroke)
	require.True(t, ok)
	assert.Equal(t, Pen{Width: 1.5, Grey: 245, Dashes: []float64{2, 1}}, line.pen)
	assert.Equal(t, []orb.Point{{0, 0}, {5, 2}}, line.line)
	assert.Equal(t, 235, got.items[3].(area).grey)
	assert.InDelta(t, 6, got.items[4].(Text).Points, 1e-9)
	first, ok := p.items[1].(stroke)
	require.True(t, ok)
	assert.Equal(t, 1.0, first.pen.Width, "the given one stays")
}
