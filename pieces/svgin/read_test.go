package svgin

import (
	"math"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/pieces/found"
	"ellwand/pieces/geometry"
	"ellwand/pieces/linework"
	"ellwand/testdata/sketch"
)

// options of the tests.
var options = found.Options{Limits: found.Limits{found.Bytes: 1 << 20, found.Things: 100_000, found.Vertices: 100_000,
	found.Nesting: 60, found.Outlines: 1000, found.Words: 1000}}

func read(t *testing.T, text string) linework.Drawing {
	t.Helper()
	found, err := Lines([]byte(text), options)
	require.NoError(t, err, text)
	return found
}

// inside a drawing of 100 by 100 mm, a unit a mm.
func inside(text string) string {
	return `<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" width="100mm" ` +
		`height="100mm" viewBox="0 0 100 100" stroke="black" fill="none">` + text + "</svg>"
}

func polygon(line linework.Line) orb.Ring { return orb.Ring(line.Path.Flatten(0.0005)) }

// What a drawing of one line encloses, and the box about it (y up), by reckoning.
func TestShapes(t *testing.T) {
	const k = math.Pi
	for _, c := range []struct {
		name, text string
		area       float64 // 0 for an open line
		box        orb.Bound
		length     float64
	}{
		{"lines", `<path d="M10 10 L30 10 L30 30 L10 30 Z"/>`, 400, box(10, 70, 30, 90), 80},
		{"relative lines, no spaces", `<path d="m10,10h20v20h-20z"/>`, 400, box(10, 70, 30, 90), 80},
		{"pairs after a move", `<path d="M10-10 30-10 30 10-.1e2 10z" transform="translate(0 20)"/>`, 600, orb.Bound{}, -1},
		{"absolute H and V", `<path d="M10 10H30V30H10V10"/>`, 400, box(10, 70, 30, 90), 80},
		{"half a circle and its chord", `<path d="M10 50A20 20 0 0 1 50 50Z"/>`, 200 * k, box(10, 50, 50, 70), 40 + 20*k},
		{"the other way", `<path d="M10 50a20 20 0 0 0 40 0z"/>`, 200 * k, box(10, 30, 50, 50), 40 + 20*k},
		{"three quarters", `<path d="M50 30A20 20 0 1 1 30 50L50 50z"/>`, 300 * k, orb.Bound{}, -1},
		{"flags in one", `<path d="M10 50a20 20 0 0140 0z"/>`, 200 * k, box(10, 50, 50, 70), 40 + 20*k},
		{"too small a radius", `<path d="M10 50a1 1 0 0 1 40 0z"/>`, 200 * k, box(10, 50, 50, 70), 40 + 20*k},
		{"no radius", `<path d="M10 50A0 20 0 0 1 50 50"/>`, 0, box(10, 50, 50, 50), 40},
		{"an ellipse of arcs, turned", `<path d="M50 20A30 10 90 0 1 50 80A30 10 90 0 1 50 20"/>`, 300 * k,
			box(40, 20, 60, 80), -1},
		{"quadratic", `<path d="M0 50Q50 0 100 50z"/>`, 100 * 50 * 2 / 6.0, box(0, 50, 100, 75), -1},
		{"quadratic, relative", `<path d="m0 50q50-50 100 0z"/>`, 100 * 50 * 2 / 6.0, box(0, 50, 100, 75), -1},
		{"smooth quadratic", `<path d="M0 50Q25 0 50 50T100 50"/>`, 0, box(0, 25, 100, 75), -1},
		{"smooth cubic", `<path d="M0 50C0 30 50 30 50 50S100 70 100 50"/>`, 0, box(0, 35, 100, 65), -1},
		{"smooth after a line is straight", `<path d="M0 50L50 50T100 50"/>`, 0, box(0, 50, 100, 50), 100},
		{"rectangle", `<rect x="10" y="10" width="20" height="20"/>`, 400, box(10, 70, 30, 90), 80},
		{"rounded", `<rect x="10" y="10" width="40" height="20" rx="5"/>`, 800 - (100 - 25*k), box(10, 70, 50, 90),
			80 + 10*k},
		{"rounded too much", `<rect x="10" y="10" width="20" height="20" rx="50"/>`, 100 * k, box(10, 70, 30, 90), 20 * k},
		{"circle", `<circle cx="50" cy="50" r="20"/>`, 400 * k, box(30, 30, 70, 70), 40 * k},
		{"circle in percent", `<circle cx="50%" cy="50%" r="20%"/>`, 400 * k, box(30, 30, 70, 70), 40 * k},
		{"ellipse", `<ellipse cx="50" cy="50" rx="30" ry="10"/>`, 300 * k, box(20, 40, 80, 60), -1},
		{"line", `<line x1="10" y1="20" x2="40" y2="60"/>`, 0, box(10, 40, 40, 80), 50},
		{"polyline", `<polyline points="10,10 30,10 30,30"/>`, 0, box(10, 70, 30, 90), 40},
		{"polygon", `<polygon points="10 10,30 10,30 30,10 30"/>`, 400, box(10, 70, 30, 90), 80},
		{"millimetres inside", `<rect x="1in" width="25.4mm" height="96"/>`, 9216, orb.Bound{}, -1},
		{"slanted circle", `<g transform="skewX(45)"><circle cx="20" cy="20" r="10"/></g>`, 100 * k, orb.Bound{}, -1},
		{"stretched circle", `<g transform="scale(2 1)"><circle cx="20" cy="20" r="10"/></g>`, 200 * k, box(20, 70, 60, 90),
			-1},
		{"nested transforms", `<g transform="translate(50,50)"><g transform="rotate(90) scale(.5)"><rect width="40" ` +
			`height="20"/></g></g>`,
			200, box(40, 30, 50, 50), 60},
		{"turned about a point", `<rect transform="rotate(180 20 20)" x="10" y="10" width="20" height="10"/>`, 200,
			box(10, 70, 30, 80), 60},
		{"steps in one", `<rect transform="translate(50 50),matrix(0 1 -1 0 0 0) skewY(0)" width="40" height="20"/>`, 800,
			box(30, 10, 50, 50), 120},
		{"used", `<defs><rect id="a" width="10" height="20"/></defs><use xlink:href="#a" x="30" y="40"/>`, 200,
			box(30, 40, 40, 60), 60},
		{"used by href", `<use href="#a" transform="scale(2)"/><defs><rect id="a" width="10" height="20"/></defs>`, 800,
			box(0, 60, 20, 100), 120},
		{"a symbol in its box", `<symbol id="a" viewBox="0 0 10 10"><rect width="10" height="10"/></symbol>` +
			`<use href="#a" x="10" y="10" width="40" height="20"/>`, 400, box(20, 70, 40, 90), 80},
		{"a drawing in the drawing", `<svg x="10" y="10" width="40" height="20" viewBox="0 0 10 10" ` +
			`preserveAspectRatio="xMaxYMin">` +
			`<rect width="10" height="10"/></svg>`, 400, box(30, 70, 50, 90), 80},
		{"stretched to its box", `<svg x="10" y="10" width="40" height="20" viewBox="0 0 10 10" preserveAspectRatio="none">` +
			`<rect width="10" height="10"/></svg>`, 800, box(10, 70, 50, 90), 120},
		{"the first of a switch", `<switch><rect width="10" height="10"/><rect width="20" height="20"/></switch>`, 100,
			box(0, 90, 10, 100), 40},
		{"filled alone", `<rect fill="#eee" stroke="none" width="10" height="10"/>`, 100, box(0, 90, 10, 100), 40},
	} {
		lines := read(t, inside(c.text)).Lines
		require.Len(t, lines, 1, c.name)
		ring := polygon(lines[0])
		assert.Equal(t, c.area != 0, lines[0].Closed, c.name)
		if c.area != 0 {
			assert.InEpsilon(t, c.area, math.Abs(geometry.Area(ring)), 1e-4, c.name)
		}
		if c.box != (orb.Bound{}) {
			assert.InDeltaSlice(t, []float64{c.box.Min[0], c.box.Min[1], c.box.Max[0], c.box.Max[1]},
				[]float64{ring.Bound().Min[0], ring.Bound().Min[1], ring.Bound().Max[0], ring.Bound().Max[1]}, 1e-3, c.name)
		}
		if c.length >= 0 && c.area == 0 {
			assert.InDelta(t, c.length, lines[0].Path.Length(), 1e-6, c.name)
		}
		if c.length > 0 {
			assert.InDelta(t, c.length, lines[0].Path.Length(), 1e-5, c.name)
		}
	}
}

func box(x0, y0, x1, y1 float64) orb.Bound {
	return orb.Bound{Min: orb.Point{x0, y0}, Max: orb.Point{x1, y1}}
}

// How large a drawing is by its size, its viewBox and how they fit.
func TestSizes(t *testing.T) {
	for _, c := range []struct {
		head      string
		width     float64 // of a rectangle of 10 units, mm
		unsized   bool
		inPixels  bool
		left, top float64
	}{
		{`width="100mm" height="100mm" viewBox="0 0 100 100"`, 10, false, false, 0, 0},
		{`width="10cm" height="10cm" viewBox="0 0 1000 1000"`, 1, false, false, 0, 0},
		{`width="1in" height="1in" viewBox="0 0 96 96"`, 10 * Pixel, false, false, 0, 0},
		{`width="72pt" height="6pc"`, 10 * Pixel, false, false, 0, 0},
		{`width="96" height="96px"`, 10 * Pixel, false, true, 0, 0},
		{`width="200" height="100" viewBox="0 0 100 100"`, 10 * Pixel, false, true, 50 * Pixel, 0},
		{`width="100mm" viewBox="0 0 50 50"`, 20, false, false, 0, 0},
		{`height="100mm" viewBox="0 0 50 50"`, 20, false, false, 0, 0},
		{`viewBox="0 0 50 50"`, 10 * Pixel, true, false, 0, 0},
		{`width="100%" height="100%" viewBox="0 0 50 50"`, 10 * Pixel, true, false, 0, 0},
		{``, 10 * Pixel, true, false, 0, 0},
		{`width="100mm" height="200mm" viewBox="0 0 100 100"`, 10, false, false, 0, 50},
		{`width="100mm" height="200mm" viewBox="0 0 100 100" preserveAspectRatio="xMidYMax"`, 10, false, false, 0, 100},
		{`width="100mm" height="200mm" viewBox="0 0 100 100" preserveAspectRatio="xMinYMid slice"`, 20, false, false, 0, 0},
		{`width="100mm" height="100mm" viewBox="-5 -20 100 100"`, 10, false, false, 5, 20},
	} {
		found := read(t, `<svg `+c.head+`><rect width="10" height="10"/></svg>`)
		require.Len(t, found.Lines, 1, c.head)
		ring := polygon(found.Lines[0])
		assert.InDelta(t, c.width, ring.Bound().Max[0]-ring.Bound().Min[0], 1e-9, c.head)
		assert.InDelta(t, c.left, ring.Bound().Min[0], 1e-9, c.head)
		assert.InDelta(t, c.top, found.Pages[0].Box.Max[1]-ring.Bound().Max[1], 1e-9, c.head)
		assert.Equal(t, c.unsized, found.Unsized, c.head)
		assert.Equal(t, c.inPixels, found.InPixels, c.head)
	}
	found, err := Lines([]byte(`<svg viewBox="0 0 50 50"><rect width="10" height="10"/></svg>`),
		found.Options{Limits: options.Limits, Unit: 25.4})
	require.NoError(t, err)
	assert.InDelta(t, 254, polygon(found.Lines[0]).Bound().Max[0], 1e-9, "as somebody said")
}

func TestWhatIsNotShown(t *testing.T) {
	for _, text := range []string{
		`<rect width="10" height="10" style="display:none"/>`, `<g display="none"><rect width="10" height="10"/></g>`,
		`<rect width="10" height="10" visibility="hidden"/>`, `<rect width="10" height="10" style="stroke:none;fill:none"/>`,
		`<defs><rect width="10" height="10"/></defs>`, `<clipPath><rect width="10" height="10"/></clipPath>`,
		`<style>.away{display:none}</style><rect class="on away" width="10" height="10"/>`,
		`<rect width="0" height="10"/>`, `<path d=""/>`, `<path d="M10 10"/>`, `<circle r="0"/>`,
		`<x:rect xmlns:x="urn:x" width="10" height="10"/>`, `<rect fill="white" stroke="none" width="100" height="100"/>`,
	} {
		assert.Empty(t, read(t, inside(text)).Lines, text)
	}
}

func TestPens(t *testing.T) {
	found := read(t, inside(`<style>/* sizes */ .small, #b { stroke: #F00; stroke-dasharray: 4 2 }
		rect { stroke-width: 2 }</style>
		<g transform="scale(2)" style="stroke:rgb(0%,0%,100%) !important">
		<rect class="small" width="1" height="1"/><path id="b" d="M0 0h1"/><path d="M0 0h1" stroke-dasharray="0,0"/></g>`))
	require.Len(t, found.Lines, 3)
	assert.Equal(t, linework.Pen{Colour: "#ff0000", Width: 4, Dashes: []float64{8, 4}}, found.Lines[0].Pen)
	assert.Equal(t, linework.Pen{Colour: "#ff0000", Width: 2, Dashes: []float64{8, 4}}, found.Lines[1].Pen)
	assert.Equal(t, linework.Pen{Colour: "#0000ff", Width: 2}, found.Lines[2].Pen)
}

func TestNames(t *testing.T) {
	found := read(t, inside(`<g id="cut" data-allowance="10"><path id="p1" d="M0 0h9v9z"><title> front
		skirt </title></path><path id="grain" d="M1 1v5" data-lie="bias"/><g id="g2"><path id="sleeve" d="M0 0h9v9z"/></g></g>
		<text x="10" y="20" font-size="4">cut <tspan>2</tspan></text><image href="data:x"/>`))
	require.Len(t, found.Lines, 3)
	assert.Equal(t, []string{"front skirt", "grain", "sleeve"},
		[]string{found.Lines[0].Name, found.Lines[1].Name, found.Lines[2].Name})
	assert.Equal(t, []string{"cut", "cut", "cut"}, []string{found.Lines[0].Layer, found.Lines[1].Layer,
		found.Lines[2].Layer})
	assert.Equal(t, 1, found.Lines[2].Group)
	assert.Equal(t, []linework.Group{{Name: "cut", Parent: -1, About: map[string]string{"allowance": "10"}},
		{Name: "g2", Parent: 0}},
		found.Groups)
	assert.Equal(t, "bias", found.Lines[1].About["lie"])
	assert.Equal(t, []linework.Words{{Text: "cut 2", At: orb.Point{10, 80}, Size: 4, Group: -1}}, found.Words)
	assert.Equal(t, 1, found.Pictures)
}

// What is shown again is called by the name that it is given there, if a person gave it
// one, and else by its own.
func TestNamesOfUsed(t *testing.T) {
	found := read(t, inside(`<defs><path id="front" d="M0 0h9v9z"/><g id="half"><path id="side" d="M0 0h9v9z"/></g>
		<symbol id="mark"><path id="cross" d="M0 0h9v9z"/></symbol><use id="outer" href="#front"/></defs>
		<use href="#front"/><use id="use12" href="#front"/><use id="back" href="#front"/><use id="b"
		href="#front"><title>yoke</title></use><use id="sleeve" href="#half"/><use id="cuff" href="#mark"/>
		<use id="pocket" href="#outer"/><use href="#outer"/>`))
	var names []string
	for _, line := range found.Lines {
		names = append(names, line.Name)
	}
	assert.Equal(t, []string{"front", "front", "back", "yoke", "side", "cross", "pocket", "outer"}, names)
	var groups []string
	for _, g := range found.Groups {
		groups = append(groups, g.Name)
	}
	assert.Equal(t, []string{"sleeve", "cuff"}, groups)
}

// The drawings of other programs hold what testdata/drawn.py drew.
func TestDrawnByOthers(t *testing.T) {
	for _, name := range []string{"cairo.svg", "inkscape.svg"} {
		data, err := os.ReadFile(filepath.Join("testdata", name))
		require.NoError(t, err)
		got := read(t, string(data)).Lines
		all := sketch.Lines()
		require.Len(t, got, len(all), name)
		for i, want := range all {
			assert.Less(t, sketch.Apart(got[i].Path.Flatten(0.0005), want.Points), want.Within, "%s: %s", name, want.Name)
			assert.Equal(t, i < len(all)-1, got[i].Closed)
		}
	}
}

func BenchmarkLines(b *testing.B) {
	text := inside(strings.Repeat(`<g><path d="M0 0h9v9q-4 5-9 0z"/></g>`, 1000))
	for b.Loop() {
		if found, err := Lines([]byte(text), options); err != nil || len(found.Lines) != 1000 {
			b.Fatal(err)
		}
	}
}
