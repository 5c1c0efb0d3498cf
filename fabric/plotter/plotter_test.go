package plotter

import (
	"bytes"
	"encoding/xml"
	"fmt"
	"math"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/fabric/lay"
	"ellwand/pieces/drawing"
	"ellwand/pieces/measure"
	"ellwand/pieces/paper"
)

// TestPlotterDrawsTheOutlines: every cutting line of the plan is drawn in one
// stroke, each of its points within 0.025 mm.
func TestPlotterDrawsTheOutlines(t *testing.T) {
	plan := longPlan(t, 30)
	pages, err := Pages(plan, Options{Paper: roll(0)})
	require.NoError(t, err)
	require.Len(t, pages, 1)
	var file bytes.Buffer
	require.NoError(t, drawing.WriteHPGL(&file, pages[0]))
	assert.True(t, strings.HasPrefix(file.String(), "IN;SP1;"))
	lines := plotted(t, file.String())
	// The plane begins at the upper left, within the margins; the lay begins
	// behind the head, its lowest edge at the foot.
	const left = 10 + headWidth
	top := pages[0].Height - math.Min(16, math.Max(10, (pages[0].Height-1500)/2))
	for _, l := range plan.Pieces {
		assert.True(t, anyFollows(lines, l.Outline, orb.Point{left + 6, top - 1490}, 0.025), "%s %d", l.Name, l.Copy)
	}
	assert.False(t, anyFollows(lines, plan.Pieces[0].Outline, orb.Point{left + 6.05, top - 1490}, 0.025),
		"the test can fail")
}

// TestLongMarkerIsSmall: 5 m with 150 pieces take less than 2 MB; the time is
// that of BenchmarkWrite.
func TestLongMarkerIsSmall(t *testing.T) {
	plan := longPlan(t, 153)
	require.InDelta(t, 5000, plan.Length, 200)
	var file bytes.Buffer
	require.NoError(t, Write(&file, plan, Options{Job: "Smocks", Paper: roll(1520)}))
	assert.Less(t, file.Len(), 2_000_000)
	for _, name := range []string{"a4", "a0"} {
		p, err := paper.Parse(name, measure.Millimetre)
		require.NoError(t, err)
		file.Reset()
		require.NoError(t, Write(&file, plan, Options{Paper: p}))
		assert.Less(t, file.Len(), 2_000_000, name)
	}
}

// TestRollsAreInches: plotter paper is made 24, 36, 42, 60 and 72 in wide and
// sold by the centimetre nearest or the one above it [source.CommonPractice].
func TestRollsAreInches(t *testing.T) {
	for i, inches := range []float64{24, 36, 42, 60, 72} {
		assert.InDelta(t, inches*25.4, Rolls[i], 5, "%g in", inches)
	}
}

// TestRollsTakeTheLay: every usual roll, with one row of frames where the
// cloth fits and more where it does not; no page of a PDF is too long.
func TestRollsTakeTheLay(t *testing.T) {
	plan := longPlan(t, 180)
	for _, width := range Rolls {
		pages, err := Pages(plan, Options{Paper: roll(width), Longest: drawing.LongestPage})
		require.NoError(t, err)
		rows := math.Ceil(1490 / (width - 32))
		if width >= 1510 {
			rows = 1
		}
		assert.Equal(t, int(2*rows), len(pages), "%g", width)
		for _, page := range pages {
			assert.InDelta(t, width, page.Height, 1e-9)
			assert.LessOrEqual(t, page.Width, drawing.LongestPage+1e-6)
		}
	}
	assert.InDelta(t, 1520, RollFor(plan, 10), 0)
	plan.Width = 2000
	assert.InDelta(t, 1830, RollFor(plan, 10), 0)
}

// TestFramesCutWhereFewestPiecesAre: three columns of shapes with a gap
// between the second and the third.
func TestFramesCutWhereFewestPiecesAre(t *testing.T) {
	shapes := []span{{0, 400}, {390, 700}, {395, 690}, {720, 1000}}
	cuts := frames(shapes, 1000, 900, frameCost)
	require.Len(t, cuts, 3)
	assert.True(t, cuts[1] >= 700 && cuts[1] <= 720, "%v", cuts)
	assert.Equal(t, []float64{0, 1000}, frames(shapes, 1000, 1000, frameCost), "no cut when none is needed")
	for _, longest := range []float64{250, 333, 480} {
		cuts := frames(shapes, 1000, longest, frameCost)
		for i := 1; i < len(cuts); i++ {
			assert.LessOrEqual(t, cuts[i]-cuts[i-1], longest+1e-6)
			assert.Greater(t, cuts[i], cuts[i-1])
		}
		assert.InDelta(t, 1000, cuts[len(cuts)-1], 0)
	}
}

// TestNarrowRollCutsBetweenPieces: across, the pieces of longPlan lie every
// 160 mm, and a roll of 914 mm has room for 882 mm between its trim lines: two
// rows, cut where no piece is cut, although the even cut goes through pieces.
func TestNarrowRollCutsBetweenPieces(t *testing.T) {
	plan := longPlan(t, 27)
	across := spans(draw(plan, Options{}).Shapes, 1)
	require.Positive(t, cutThrough(across, 882), "the even cut is a bad one")
	rows := frames(across, 1500, 882, float64(len(across))+1)
	require.Len(t, rows, 3)
	assert.Zero(t, cutThrough(across, rows[1]))
	pages, err := Pages(plan, Options{Paper: roll(914)})
	require.NoError(t, err)
	assert.Len(t, pages, 2)
	// A row more is never made: here each of two cuts goes through them all.
	assert.Equal(t, []float64{0, 578, 1150}, frames([]span{{0, 1150}, {10, 1140}, {20, 1130}}, 1150, 578, 4)[:3])
}

// TestSheetsAreTurnedWhereFewerDo: the lay and its head are 297 mm by 1490 mm.
// Sheets of 500 mm by 350 mm, 468 mm by 318 mm between their trim lines, take
// five rows of one on their side, and four upright.
func TestSheetsAreTurnedWhereFewerDo(t *testing.T) {
	paper, err := paper.Parse("500mmx350mm", measure.Millimetre)
	require.NoError(t, err)
	plan := longPlan(t, 9)
	width, height := draw(plan, Options{}).Extent()
	require.True(t, width < 318 && height > 3*468 && height < 4*468, "%g by %g", width, height)
	pages, err := Pages(plan, Options{Paper: paper})
	require.NoError(t, err)
	assert.Len(t, pages, 4)
	assert.Less(t, pages[0].Width, pages[0].Height)
}

// TestRepeatLinesAtFullSize: a dotted line every 240 mm along the warp, where
// the plotter begins a stroke at the foot of the lay.
func TestRepeatLinesAtFullSize(t *testing.T) {
	plan := longPlan(t, 18)
	plan.Cloth.Repeat.Along = 240
	pages, err := Pages(plan, Options{Paper: roll(0)})
	require.NoError(t, err)
	var file bytes.Buffer
	require.NoError(t, drawing.WriteHPGL(&file, pages[0]))
	dots := map[float64]int{}
	for _, line := range plotted(t, file.String()) {
		if len(line) == 2 && math.Abs(line[0][0]-line[1][0]) < 0.01 &&
			math.Abs(segmentDistance(line[0], line[1], line[1])-1) < 0.05 {
			dots[math.Round(line[0][0]-(10+6+headWidth))]++
		}
	}
	for x := 0.0; x < plan.Length; x += 240 {
		assert.Greater(t, dots[x], 150, "the line at %g mm", x)
	}
}

// TestPageSizesInThePDF reads the size of the page back: the width of the
// roll, and the length of the lay with its head and margins.
func TestPageSizesInThePDF(t *testing.T) {
	if _, err := exec.LookPath("pdfinfo"); err != nil {
		t.Skip("pdfinfo of poppler-utils is not installed")
	}
	var file bytes.Buffer
	plan := longPlan(t, 18)
	require.NoError(t, Write(&file, plan, Options{Job: "Žofie \U0001F9F5", Paper: roll(1520)}))
	path := filepath.Join(t.TempDir(), "marker.pdf")
	require.NoError(t, os.WriteFile(path, file.Bytes(), 0o600))
	out, err := exec.Command("pdfinfo", path).Output()
	require.NoError(t, err)
	var width, height float64
	_, after, _ := strings.Cut(string(out), "Page size:")
	_, err = fmt.Sscanf(after, "%f x %f", &width, &height)
	require.NoError(t, err)
	assert.InDelta(t, 1520, height*25.4/72, 0.1)
	assert.InDelta(t, headWidth+plan.Length+32, width*25.4/72, 0.1)
	text, err := exec.Command("pdftotext", path, "-").Output()
	require.NoError(t, err)
	assert.Contains(t, string(text), "18 sleeve")
	assert.Contains(t, string(text), "face down")
}

func TestSVGIsWellFormed(t *testing.T) {
	pages, err := Pages(longPlan(t, 9), Options{Job: `<"&>`, Paper: roll(0)})
	require.NoError(t, err)
	var file bytes.Buffer
	require.NoError(t, drawing.WriteSVG(&file, "marker", pages[0]))
	decoder := xml.NewDecoder(&file)
	for {
		if _, err := decoder.Token(); err != nil {
			assert.Equal(t, "EOF", err.Error())
			break
		}
	}
}

func TestRefusals(t *testing.T) {
	_, err := Pages(lay.Plan{Why: []lay.Reason{{Of: lay.OddCount, Piece: "yoke", Count: 1}}}, Options{})
	assert.ErrorContains(t, err, "it is not possible")
	_, err = Pages(lay.Plan{}, Options{})
	assert.ErrorContains(t, err, "no pieces to draw")
	_, err = Pages(longPlan(t, 3), Options{Paper: roll(90)})
	assert.ErrorContains(t, err, "for the pieces")
	short := Options{Paper: roll(914), Longest: 100}
	assert.ErrorContains(t, short.Check(), "frames of 100 mm with their margins are too short; take 232 mm or more")
	short.Paper.Unit = measure.Inch
	assert.ErrorContains(t, short.Check(), "frames of 3 15/16 in with their margins are too short; take 9 1/8 in or more")
	short.Longest = 9.125 * 25.4
	assert.NoError(t, short.Check(), "what the message says is enough")
}

func BenchmarkWrite(b *testing.B) {
	for _, count := range []int{15, 150} {
		plan := longPlan(b, count)
		b.Run(fmt.Sprintf("pieces=%d", count), func(b *testing.B) {
			for b.Loop() {
				var file bytes.Buffer
				if err := Write(&file, plan, Options{Paper: roll(1520)}); err != nil || file.Len() < 20000 ||
					file.Len() > 2_000_000 {
					b.Fatal(err, file.Len())
				}
			}
		})
	}
}

// TestEdgesAreNamed: what the cutter sees at each edge, where the pieces end,
// and where the cloth is cut between two lengths.
func TestEdgesAreNamed(t *testing.T) {
	for _, c := range []struct {
		lay  lay.Kind
		want []string
	}{
		{lay.Open, []string{">cut end<", ">selvedge<", ">selvedge nearest to you<", "the pieces end here, "}},
		{lay.FoldedAlong, []string{">cut end<", ">both selvedges<", ">fold<"}},
		{lay.FoldedAcross, []string{">fold<", ">both selvedges<", "both selvedges nearest to you"}},
		{lay.CutAcross, []string{">two cut ends<"}},
		{lay.BothSelvedgesIn, []string{"selvedges meet"}},
		{lay.InStretches, []string{"fold, then selvedge nearest to you", "cut across here, 29 cm"}},
	} {
		plan := longPlan(t, 14)
		plan.Lay, plan.Plies = c.lay, c.lay.Plies()
		plan.Beds = []lay.Bed{{Length: 290, Width: 745, Plies: 2, FoldLow: true},
			{X: 290, Y: -10, Length: 290, Width: 1480, Plies: 1}}
		pages, err := Pages(plan, Options{Paper: roll(1830)})
		require.NoError(t, err)
		var file bytes.Buffer
		require.NoError(t, drawing.WriteSVG(&file, "marker", pages[0]))
		for _, want := range c.want {
			assert.Contains(t, file.String(), want, "%s", c.lay)
		}
	}
}

// TestWholeLayIsOnThePaper: the near edge too, which no piece reaches.
func TestWholeLayIsOnThePaper(t *testing.T) {
	plan := longPlan(t, 4)
	width, height := draw(plan, Options{}).Extent()
	assert.InDelta(t, headWidth+plan.Length, width, 1e-6)
	assert.InDelta(t, 1500, height, 1e-6)
}
