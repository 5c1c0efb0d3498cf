package page

import (
	"bytes"
	"regexp"
	"strings"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/pieces/drawing"
	"ellwand/pieces/paper"
)

// drawn is a page as SVG, whose numbers can be read.
func drawn(t *testing.T, page drawing.Page) string {
	t.Helper()
	var out bytes.Buffer
	require.NoError(t, drawing.WriteSVG(&out, "page", page))
	return out.String()
}

var words = regexp.MustCompile(`<text x="([^"]+)" y="([^"]+)"[^>]*>([^<]+)<`)

// wordsOf a page: each with its place.
func wordsOf(t *testing.T, page drawing.Page) []string {
	t.Helper()
	var out []string
	for _, found := range words.FindAllStringSubmatch(drawn(t, page), -1) {
		out = append(out, found[1]+" "+found[2]+" "+found[3])
	}
	return out
}

func TestPages(t *testing.T) {
	p := Pages{Edge: 12}
	p.Add(paper.A4)
	assert.InDelta(t, 186, p.Inner(), 1e-9)
	assert.InDelta(t, 198, p.Right(), 1e-9)
	assert.InDelta(t, 12, p.Y, 1e-9)
	assert.True(t, p.HasRoom(273))
	assert.False(t, p.HasRoom(273.1))
	p.Plain(9)
	p.Text(12, p.Y, "first")
	p.Add(paper.A4.OnItsSide())
	p.Text(12, p.Y, "second")
	p.Add(paper.A4)
	p.Keep(2)
	assert.Equal(t, 2, p.Count())
	p.Foot(func(number int) { p.TextRight(p.Right(), p.Height-8, strings.Repeat("i", number)) })
	pages := p.Done()
	require.Len(t, pages, 2)
	assert.Equal(t, []string{"12 12 first", "198 289 i"}, wordsOf(t, pages[0]))
	assert.Equal(t, []string{"12 12 second", "285 202 ii"}, wordsOf(t, pages[1]))
	assert.InDelta(t, 297, pages[1].Width, 1e-9)
	assert.InDelta(t, 210, pages[1].Height, 1e-9)
}

// TestColumns: 190 mm between the edges make two of 90 mm with 10 mm between.
func TestColumns(t *testing.T) {
	p := Pages{Edge: 10}
	p.Add(paper.A4)
	assert.InDelta(t, 190, p.ColumnWidth(), 1e-9, "without columns the whole width")
	p.Y = 40
	p.Start(Columns{Count: 2, Gap: 10})
	assert.True(t, p.IsAtTop())
	assert.InDelta(t, 90, p.ColumnWidth(), 1e-9)
	assert.InDelta(t, 10, p.X(), 1e-9)
	p.Y = 200
	assert.False(t, p.IsAtTop())
	assert.True(t, p.NextColumn())
	assert.InDelta(t, 110, p.X(), 1e-9)
	assert.InDelta(t, 40, p.Y, 1e-9)
	assert.False(t, p.NextColumn(), "there are two")
}

func TestParagraph(t *testing.T) {
	p := Pages{Edge: 10}
	p.Add(paper.A4)
	p.Plain(10)
	width := p.TextWidth("one two") + 0.01
	p.Paragraph(20, width+5, 4, 5, "–", "one two three")
	assert.InDelta(t, 18, p.Y, 1e-9)
	assert.Equal(t, []string{"20 10 –", "25 10 one two", "25 14 three"}, wordsOf(t, p.Done()[0]))
}

func TestBrush(t *testing.T) {
	p := Pages{Edge: 10}
	p.Add(paper.Paper{Width: 100, Height: 100})
	p.SetPen(0.5, 90, 2, 1)
	p.Fill(200)
	p.Line(1, 2, 3, 4)
	p.Rect(10, 20, 5, 6, Rim)
	p.Rect(30, 20, 5, 6, Inside)
	p.Polygon([]orb.Point{{50, 20}, {60, 20}, {55, 30}}, Whole)
	p.Y = 70
	p.Rule(10, p.Right(), 0.3, 0)
	p.TurnedAbout = &orb.Point{50, 50}
	p.Line(50, 50, 60, 50)
	p.Plain(10)
	p.Ink(70)
	p.TextUp(60, 50, "up")
	p.TurnedAbout = nil
	p.Bold(12)
	p.TextCentred(50, 90, p.TextCut("middle of the road", 20))
	page := drawn(t, p.Done()[0])
	pen := `stroke="#5a5a5a" stroke-width="0.5" stroke-dasharray="2 1"/>`
	for _, want := range []string{
		`<path d="M1 2L3 4" ` + pen,
		`<path d="M10 20L15 20L15 26L10 26Z" ` + pen,
		`<path d="M30 20L35 20L35 26L30 26L30 20Z" fill="#c8c8c8"/>`,
		`<path d="M50 20L60 20L55 30Z" fill="#c8c8c8"/>` + "\n" + `<path d="M50 20L60 20L55 30Z" ` + pen,
		`<path d="M10 70L90 70" stroke="black" stroke-width="0.3" stroke-linecap="butt"/>`,
		`<path d="M50 50L50 40" ` + pen, // what runs to the right reads upwards
		`transform="rotate(-180 50 40)">up<`,
		`font-weight="bold" text-anchor="middle"`,
		`…<`,
	} {
		assert.Contains(t, page, want)
	}
	assert.Equal(t, 1, strings.Count(page, "M30 20"), "no rim about what is only filled")
	assert.Contains(t, page, `fill="#464646"`)
}

func TestWithinShowsWhatTheBoxHolds(t *testing.T) {
	p := Pages{}
	p.Add(paper.A4)
	p.SetPen(0.1, 0)
	whole := p.On
	p.Within(orb.Bound{Min: orb.Point{5, 5}, Max: orb.Point{15, 15}}, func() {
		assert.NotSame(t, whole, p.On)
		p.Hatch([]orb.Point{{0, 0}, {20, 0}, {20, 20}, {0, 20}, {0, 0}}, 5)
		p.CrossHatch([]orb.Point{{0, 0}, {20, 0}, {20, 20}, {0, 20}, {0, 0}}, 5)
		p.Disc(10, 10, 2)
	})
	assert.Same(t, whole, p.On)
	page := drawn(t, p.Done()[0])
	assert.Contains(t, page, `<clipPath id="window1"><path d="M5 5L15 5L15 15L5 15Z"/>`)
	assert.Greater(t, strings.Count(page, "<path"), 10)
}
