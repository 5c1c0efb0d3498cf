package svg

import (
	"bytes"
	"encoding/xml"
	"flag"
	"io"
	"math"
	"os"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/pieces"
	"ellwand/pieces/marks"
	"ellwand/pieces/seams"
)

var update = flag.Bool("update", false, "write the golden files anew")

// document is what the tests read back of a drawing.
type document struct {
	Width   string  `xml:"width,attr"`
	Height  string  `xml:"height,attr"`
	ViewBox string  `xml:"viewBox,attr"`
	Groups  []group `xml:"g"`
	Paths   []line  `xml:"path"`
}

type line struct {
	Data   string `xml:"d,attr"`
	Width  string `xml:"stroke-width,attr"`
	Dashes string `xml:"stroke-dasharray,attr"`
}

// kind of a line by its width and dashes.
func (l line) kind() string {
	switch {
	case l.Width == "0.5" && len(corners(l.Data)) == 2:
		return "notch"
	case l.Width == "0.5":
		return "cutting"
	case l.Width == "0.9":
		return "fold"
	case l.Width == "0.3" && l.Dashes != "":
		return "seam"
	}
	return ""
}

type group struct {
	Title string   `xml:"title"`
	Paths []line   `xml:"path"`
	Texts []string `xml:"text"`
}

// read draws the pieces and reads the document back: a group for each piece,
// and beside them the scale line.
func read(t *testing.T, all ...pieces.Piece) document {
	t.Helper()
	var text bytes.Buffer
	require.NoError(t, Write(&text, all...))
	var doc document
	require.NoError(t, xml.Unmarshal(text.Bytes(), &doc))
	require.Len(t, doc.Groups, len(all))
	return doc
}

// path of a kind; of several the parts one after the other.
func (g group) path(kind string) string {
	all := ""
	for _, p := range g.Paths {
		if p.kind() == kind {
			all += p.Data
		}
	}
	return all
}

// corners are the points of a path of straight lines.
func corners(data string) []string {
	return strings.FieldsFunc(data, func(r rune) bool { return strings.ContainsRune("MLZ", r) })
}

func cuff() pieces.Piece {
	p := pieces.Rectangle("cuff", 240, 100)
	p.Garment, p.Cloth = "blouse", "shell"
	for i := range p.Edges {
		p.Edges[i].Allowance = 10
	}
	return p
}

// bodice is half a front with a curve of each kind, a dart in the waist, a
// notch, a line and a point marked.
func bodice() pieces.Piece {
	line := func(x0, y0, x1, y1 float64) pieces.Path {
		return pieces.Path{pieces.Line{From: orb.Point{x0, y0}, To: orb.Point{x1, y1}}}
	}
	return pieces.Piece{
		Name: "front", Garment: "blouse", Size: "12", Cloth: "shell", Cut: 1, Fold: seams.CentreFront,
		Edges: []pieces.Edge{
			{Name: seams.Called("waist to dart"), Path: line(0, 0, 80, 0), Allowance: 15},
			{Name: seams.Called("dart mouth"), Path: line(80, 0, 110, 0), Allowance: 15},
			{Name: seams.Waist, Path: line(110, 0, 240, 0), Allowance: 15},
			{Name: seams.SideSeam, Path: line(240, 0, 250, 220), Allowance: 15},
			{Name: seams.Armhole, Allowance: 10, Path: pieces.Path{pieces.Bezier{
				P0: orb.Point{250, 220}, P1: orb.Point{180, 220}, P2: orb.Point{170, 280}, P3: orb.Point{190, 400}}}},
			{Name: seams.Shoulder, Path: line(190, 400, 70, 440), Allowance: 15},
			{Name: seams.Neck, Allowance: 10, Path: pieces.Path{pieces.Arc{
				Centre: orb.Point{0, 440}, Radius: 70, Begin: 0, Sweep: -math.Pi / 2}}},
			{Name: seams.CentreFront, Path: line(0, 370, 0, 0)},
		},
		Grain:   pieces.Grain{From: orb.Point{30, 60}, To: orb.Point{30, 330}},
		Notches: []pieces.Notch{{Edge: seams.Armhole, At: 100, Count: 1}},
		Darts: []pieces.Dart{{Name: seams.Waist.Dart(0), Mouth: seams.Called("dart mouth"), Start: orb.Point{80, 0},
			Apex: orb.Point{95, 140}, End: orb.Point{110, 0}}},
		Marks: []pieces.Mark{{Name: marks.BustLine, Path: line(0, 200, 249, 200)},
			{Name: marks.BustPoint, At: orb.Point{95, 165}}},
	}
}

// band is two pairs with two-stroke notches and a hem.
func band() pieces.Piece {
	p := cuff()
	p.Name, p.Cut, p.Pair = "band", 4, true
	p.Edges[0].Allowance, p.Edges[0].Hem = 30, true
	p.Notches = []pieces.Notch{{Edge: seams.Top, At: 80, Count: 2}}
	p.Darts = []pieces.Dart{{Name: seams.Called("tuck"), Start: orb.Point{190, 50}, Apex: orb.Point{195, 80},
		End: orb.Point{200, 50}, OtherApex: orb.Point{195, 20}}}
	p.Grain.Lie = pieces.Bias
	return p
}

func TestWriteGolden(t *testing.T) {
	var got bytes.Buffer
	require.NoError(t, Write(&got, bodice(), band(), cuff()))
	golden := filepath.Join("testdata", "three.svg")
	if *update {
		require.NoError(t, os.MkdirAll("testdata", 0o755))
		require.NoError(t, os.WriteFile(golden, got.Bytes(), 0o644))
	}
	want, err := os.ReadFile(golden)
	require.NoError(t, err)
	assert.Equal(t, string(want), got.String())
}

// By SVG 1.1, section 7.2, a width in mm and a viewBox of as many units make
// a unit a millimetre.
func TestWriteIsToScale(t *testing.T) {
	doc := read(t, cuff())
	assert.Equal(t, "284mm", doc.Width)
	assert.Equal(t, "162mm", doc.Height)
	assert.Equal(t, "0 0 284 162", doc.ViewBox)
	assert.ElementsMatch(t, []string{"12 132", "272 132", "272 12", "12 12"}, corners(doc.Groups[0].path("cutting")))
	assert.Equal(t, "M12 152L112 152", doc.Paths[0].Data, "100 mm long")
}

func TestWriteKeepsCurvesExact(t *testing.T) {
	seams := read(t, bodice()).Groups[0].path("seam")
	assert.Regexp(t, regexp.MustCompile(`C[\d. ]+`), seams)
	assert.Contains(t, seams, "A70 70 0 0 ")
}

func TestWriteSaysWhatToCut(t *testing.T) {
	assert.Contains(t, read(t, cuff()).Groups[0].Texts, "cut 1, from shell")
	assert.Contains(t, read(t, band()).Groups[0].Texts, "cut 4, 2 pairs, from shell")
	p := cuff()
	p.Cut, p.Pair, p.Size = 2, true, "12"
	texts := read(t, p).Groups[0].Texts
	assert.Subset(t, texts, []string{"cuff", "blouse, size 12", "cut 2, a pair, from shell",
		"straight grain, this end up"})
	p.Garment, p.Cloth = "", ""
	assert.Subset(t, read(t, p).Groups[0].Texts, []string{"cuff", "size 12", "cut 2, a pair"})
}

func TestWriteLeavesTheFoldUncut(t *testing.T) {
	p := cuff()
	p.Fold, p.Edges[3].Allowance = seams.Left, 0
	g := read(t, p).Groups[0]
	assert.Subset(t, g.Texts, []string{"cut 1 on fold, from shell", "on the fold"})
	// 120 mm: the fold edge and the allowances above and below it.
	assert.ElementsMatch(t, []string{"12 12", "12 132"}, corners(g.path("fold")))
	assert.Len(t, corners(g.path("cutting")), 4)
	assert.NotContains(t, g.path("cutting"), "Z", "open along the fold")
}

func TestWriteNotches(t *testing.T) {
	p := cuff()
	p.Notches = []pieces.Notch{{Edge: seams.Bottom, At: 100, Count: 2}}
	assert.ElementsMatch(t, []string{"119 122", "119 132", "125 122", "125 132"},
		corners(read(t, p).Groups[0].path("notch")), "from the seam line out to the cutting line, 6 mm apart")
	p.Edges[0].Allowance = 0
	p.Notches[0].Count = 1
	assert.ElementsMatch(t, []string{"122 122", "122 117"}, corners(read(t, p).Groups[0].path("notch")),
		"inward, as there is no allowance")
}

// Every drawing keeps to its own box, and boxes do not overlap.
func TestWriteLaysPiecesApart(t *testing.T) {
	all := []pieces.Piece{bodice(), cuff(), band(), bodice(), cuff(), bodice(), bodice(), bodice()}
	doc := read(t, all...)
	var boxes []orb.Bound
	for _, g := range doc.Groups {
		points := orb.MultiPoint{}
		for _, c := range append(corners(g.path("cutting")), corners(g.path("fold"))...) {
			x, y, ok := strings.Cut(c, " ")
			require.True(t, ok)
			points = append(points, orb.Point{parse(t, x), parse(t, y)})
		}
		boxes = append(boxes, points.Bound())
	}
	width, height := parse(t, strings.TrimSuffix(doc.Width, "mm")), parse(t, strings.TrimSuffix(doc.Height, "mm"))
	rows := map[float64]bool{}
	for i, a := range boxes {
		rows[a.Min[1]] = true
		assert.True(t, a.Min[0] >= margin-0.001 && a.Min[1] >= margin-0.001 && a.Max[0] <= width &&
			a.Max[1] <= height-rulerHeight+1, "box %d on the sheet", i)
		for _, b := range boxes[:i] {
			assert.False(t, a.Intersects(b))
		}
	}
	assert.Greater(t, len(rows), 1, "more than one row")
}

func parse(t *testing.T, text string) float64 {
	t.Helper()
	x, err := strconv.ParseFloat(text, 64)
	require.NoError(t, err)
	return x
}

func TestWriteEscapesNames(t *testing.T) {
	p := cuff()
	p.Name = "<cuff & \"band\">\x00\ufffe"
	assert.Contains(t, read(t, p).Groups[0].Texts, `<cuff & "band">`)
}

func TestWriteRefuses(t *testing.T) {
	assert.ErrorContains(t, Write(io.Discard), "there is no piece to draw")
	bad := cuff()
	bad.Edges[1].Allowance = -20
	var out bytes.Buffer
	err := Write(&out, cuff(), bad)
	assert.EqualError(t, err, `cuff: the seam allowance on "right" is -2 cm; it cannot be negative`)
	assert.Zero(t, out.Len(), "nothing is written")
}

func BenchmarkWrite(b *testing.B) {
	for b.Loop() {
		var out bytes.Buffer
		if err := Write(&out, bodice()); err != nil || out.Len() < 2000 {
			b.Fatal(err, out.Len())
		}
	}
}
