package tidy

import (
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/pieces"
	"ellwand/pieces/found"
	"ellwand/pieces/geometry"
	"ellwand/pieces/linework"
)

const head = `<svg xmlns="http://www.w3.org/2000/svg" width="400mm" height="300mm" viewBox="0 0 400 300" ` +
	`fill="none" stroke="black">`

func readSVG(t *testing.T, text string, view found.View) found.Drawing {
	t.Helper()
	o := options
	o.View = view
	out, err := SVG([]byte(head+text+"</svg>"), o)
	require.NoError(t, err, text)
	return out
}

func names(d found.Drawing) []string {
	var out []string
	for _, p := range d.Pieces {
		out = append(out, p.Name)
	}
	return out
}

func TestPiecesOfSVG(t *testing.T) {
	two := `<g id="front"><path id="path12" d="M0 0h100v100h-100z"/><path id="grain" d="M50 80v-60"/>` +
		`<path d="M2 2h8v5h-8z"/></g>
		<g><title>sleeve</title><rect id="rect7" x="200" width="80" height="90"/>` +
		`<text x="220" y="50">Cut 2, a pair</text></g>`
	got := readSVG(t, two, found.View{})
	require.Len(t, got.Pieces, 2)
	assert.Equal(t, []string{"front", "sleeve"}, names(got), "by their groups")
	front := got.Pieces[0]
	require.NotNil(t, front.Grain)
	assert.Equal(t, orb.Point{50, 220}, front.Grain.From)
	assert.Equal(t, orb.Point{50, 280}, front.Grain.To)
	require.Len(t, front.Inner, 1)
	assert.Equal(t, found.Cutout, front.Inner[0].Kind)
	assert.Equal(t, [2]int{1, 1}, [2]int{got.Pieces[1].AsDrawn, got.Pieces[1].Mirrored})
	assert.Equal(t, []string{"front", "sleeve"}, names(readSVG(t, two, found.View{ByGroup: true})))
	nested := `<g id="size 10"><rect width="100" height="100"/></g><g id="size 12"><rect width="120" height="110"/></g>`
	assert.Len(t, readSVG(t, nested, found.View{}).Pieces, 1)
	assert.Equal(t, []string{"size 10", "size 12"}, names(readSVG(t, nested, found.View{ByGroup: true})))
	small := readSVG(t, nested, found.View{Layers: []string{"size 10"}})
	require.Len(t, small.Pieces, 1)
	assert.InDelta(t, 100*100, geometry.Area(outline(small.Pieces[0])), 1e-6)
}

// An outline of separate strokes, and one whose dashes are drawn one by one, with a
// corner in a gap.
func TestDashes(t *testing.T) {
	text := `<path d="M10 10h8M20 10h8M30 10h8M40 10h8M50 10h8M60 12v8M60 22v8M60 32v8M60 42v8M58 52h-8M48 52h-8M38 ` +
		`52h-8M28 52h-8M18 52h-6M10 50v-8M10 40v-8M10 30v-8M10 20v-8"/>`
	got := readSVG(t, text, found.View{})
	require.Len(t, got.Pieces, 1)
	assert.InDelta(t, 50*42, geometry.Area(outline(got.Pieces[0])), 0.01, "with its corners")
	assert.Equal(t, 1, noteOf(t, got, found.DashesJoined).Count)
	assert.Equal(t, []float64{8, 2}, got.Overview.Kinds[0].Dashes)
	// Notches and lone strokes are none.
	lone := []linework.Line{}
	for _, at := range []float64{0, 100, 200} {
		lone = append(lone, linework.Line{Path: polyline(orb.Point{at, 0}, orb.Point{at, 5}),
			Pen: linework.Pen{Colour: "#000000"}})
	}
	out, joined := dashes(lone)
	assert.Len(t, out, 3)
	assert.Zero(t, joined)
}

// Two sizes share three sides of a square, drawn for the larger alone.
func TestShared(t *testing.T) {
	text := `<path d="M0 0h100v100h-100z"/><path stroke="red" d="M0 90h100"/>`
	got := readSVG(t, text, found.View{Lines: []int{2}})
	require.Len(t, got.Pieces, 1)
	assert.InDelta(t, 100*90, geometry.Area(outline(got.Pieces[0])), 1e-6, "the larger way round")
	assert.Equal(t, 1, noteOf(t, got, found.SharedTaken).Count)
	text = `<path d="M0 100V0h100v100"/><path stroke="red" d="M0 90h100"/>`
	got = readSVG(t, text, found.View{Lines: []int{2}})
	require.Len(t, got.Pieces, 1)
	assert.InDelta(t, 100*90, geometry.Area(outline(got.Pieces[0])), 1e-6)
}

func TestSVGRefuses(t *testing.T) {
	_, err := SVG([]byte(`<svg viewBox="0 0 50 40"><rect width="20" height="20"/></svg>`), options)
	var unit *found.NeedUnit
	require.ErrorAs(t, err, &unit)
	assert.InDelta(t, 50, unit.Across, 1e-9)
	_, err = SVG([]byte(head+`<image href="a.png"/></svg>`), options)
	assert.Equal(t, &linework.Fault{Of: linework.DotsOnly}, err)
	_, err = SVG([]byte(head+"</svg>"), options)
	assert.Equal(t, &linework.Fault{Of: linework.NoLines}, err)
	got, err := SVG([]byte(`<svg width="960" height="960"><rect width="480" height="480"/></svg>`), options)
	require.NoError(t, err)
	noteOf(t, got, found.PixelsAssumed)
	assert.True(t, IsSVG([]byte("\ufeff <?xml?>\n<svg>")))
	assert.False(t, IsSVG([]byte("<html>")))
	assert.True(t, IsPDF([]byte("%PDF-1.4")))
}

func TestLabels(t *testing.T) {
	for text, want := range map[string]spot{"B3": {1, 2}, "b3": {}, "2-3": {1, 2}, "3 of 12": {}, "12C": {11, 2},
		"Row 2, column 10": {1, 9},
		"row 2 / col. 1":   {1, 0}, "A 1": {0, 0}} {
		got, ok := spotOf(text)
		assert.Equal(t, want, got, text)
		assert.Equal(t, want != spot{} || text == "A 1", ok, text)
	}
	words := []linework.Words{{Text: "A1", Page: 0, Size: 5}, {Text: "B7", Page: 0, Size: 2},
		{Text: "A2", Page: 1, Size: 5}}
	assert.Equal(t, map[int]spot{0: {0, 0}, 1: {0, 1}}, labelled(words, []int{0, 1}))
	assert.Nil(t, labelled(words, []int{0, 1, 2}), "a page has none")
	words[2].Text = "A1"
	assert.Nil(t, labelled(words, []int{0, 1}), "two are alike")
}

// Where it cannot be found how sheets lie, it is asked for; said, it is done so.
func TestRowsAreAskedFor(t *testing.T) {
	sheets := linework.Drawing{}
	for page := range 2 {
		sheets.Pages = append(sheets.Pages, linework.Page{Box: orb.Bound{Max: orb.Point{200, 280}}})
		x := 100.0 - 200*float64(page)
		sheets.Lines = append(sheets.Lines, linework.Line{Group: -1, Page: page, Pen: linework.Pen{Colour: "#000000"},
			Closed: false,
			Path:   clippedSquare(x, page)})
	}
	_, err := Drawing(sheets, options)
	assert.Equal(t, &linework.Fault{Of: linework.SheetsUnjoined, Number: 2}, err)
	o := options
	o.View = found.View{Rows: [][]int{{1, 2}}, OverlapSaid: true}
	got, err := Drawing(sheets, o)
	require.NoError(t, err)
	require.Len(t, got.Pieces, 1)
	assert.InDelta(t, 200*100, geometry.Area(outline(got.Pieces[0])), 1e-6)
	o.View.Rows = [][]int{{1, 3}}
	_, err = Drawing(sheets, o)
	assert.Equal(t, &linework.Fault{Of: linework.NoSuchPage, Number: 3, Known: 2}, err)
}

// clippedSquare of 200 by 100 mm, half on each of two sheets.
func clippedSquare(x float64, page int) pieces.Path {
	if page == 0 {
		return polyline(orb.Point{200, 50}, orb.Point{x, 50}, orb.Point{x, 150}, orb.Point{200, 150})
	}
	return polyline(orb.Point{0, 150}, orb.Point{x + 200, 150}, orb.Point{x + 200, 50}, orb.Point{0, 50})
}

// Pages that do not go on from each other are read each by itself.
func TestPagesApart(t *testing.T) {
	sheets := linework.Drawing{}
	for page := range 2 {
		sheets.Pages = append(sheets.Pages, linework.Page{Box: orb.Bound{Max: orb.Point{200, 280}}})
		sheets.Lines = append(sheets.Lines, linework.Line{Group: -1, Page: page, Pen: linework.Pen{Colour: "#000000"},
			Closed: true,
			Path:   polyline(orb.Point{50, 50}, orb.Point{150, 50}, orb.Point{150, 90 + 20*float64(page)}, orb.Point{50, 50})})
	}
	got, err := Drawing(sheets, options)
	require.NoError(t, err)
	assert.Len(t, got.Pieces, 2)
	assert.Len(t, got.Overview.Sheets, 2)
}

func polyline(points ...orb.Point) pieces.Path {
	var out pieces.Path
	for i := 1; i < len(points); i++ {
		out = append(out, pieces.Line{From: points[i-1], To: points[i]})
	}
	return out
}
