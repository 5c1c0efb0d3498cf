package drawing

import (
	"bytes"
	"encoding/xml"
	"image/png"
	"io"
	"math"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"golang.org/x/text/unicode/norm"
	"pgregory.net/rapid"

	"ellwand/pieces"
	"ellwand/pieces/geometry"
)

// sample has one of everything.
func sample() Page {
	page := Page{Width: 100, Height: 60}
	page.Line(Pen{Width: 0.5}, orb.Point{10, 10}, orb.Point{90, 10}, orb.Point{90, 50})
	page.Line(Pen{Width: 0.3, Grey: 90, Dashes: []float64{4, 2}}, orb.Point{10, 20}, orb.Point{90, 20})
	page.Area(0, orb.Point{10, 30}, orb.Point{20, 30}, orb.Point{15, 40})
	page.Disc(128, orb.Point{70, 40}, 5)
	page.Write(Text{Words: "Žofie ½ <&>", At: orb.Point{30, 35}, Points: 12, Bold: true})
	page.Write(Text{Words: "upwards", At: orb.Point{95, 30}, Points: 8, Align: Centre, Angle: 90})
	other := &Picture{}
	other.Line(Pen{Width: 0.4}, orb.Point{0, 0}, orb.Point{200, 0})
	page.Window(orb.Bound{Min: orb.Point{40, 44}, Max: orb.Point{60, 56}}, other, orb.Point{-20, 50})
	return page
}

func TestSVGKeepsScaleAndWords(t *testing.T) {
	var file bytes.Buffer
	require.NoError(t, WriteSVG(&file, `a "title"`, sample()))
	var doc struct {
		Width   string   `xml:"width,attr"`
		ViewBox string   `xml:"viewBox,attr"`
		Title   string   `xml:"title"`
		Texts   []string `xml:"text"`
	}
	require.NoError(t, xml.Unmarshal(file.Bytes(), &doc))
	assert.Equal(t, "100mm", doc.Width)
	assert.Equal(t, "0 0 100 60", doc.ViewBox)
	assert.Equal(t, `a "title"`, doc.Title)
	assert.Equal(t, []string{"Žofie ½ <&>", "upwards"}, doc.Texts)
	assert.Equal(t, 1, strings.Count(file.String(), `stroke-dasharray="4 2"`))
	file.Reset()
	page := Page{Width: 100, Height: 60}
	page.Line(Pen{Width: 0.5, Dashes: []float64{3}}, orb.Point{10, 10}, orb.Point{90, 10}) // gaps as long as its dashes
	require.NoError(t, WriteSVG(&file, "", page))
	assert.Contains(t, file.String(), `stroke-dasharray="3"`)
}

// TestPNGAgreesWithPoppler paints the page twice, by this package and by
// poppler from the PDF, and compares the ink.
func TestPNGAgreesWithPoppler(t *testing.T) {
	if _, err := exec.LookPath("pdftoppm"); err != nil {
		t.Skip("pdftoppm of poppler-utils is not installed")
	}
	var file bytes.Buffer
	require.NoError(t, WritePDF(&file, "sample", []Page{sample()}))
	folder := t.TempDir()
	require.NoError(t, os.WriteFile(filepath.Join(folder, "page.pdf"), file.Bytes(), 0o600))
	out, err := exec.Command("pdftoppm", "-gray", "-png", "-singlefile", "-r", "254", filepath.Join(folder, "page.pdf"),
		filepath.Join(folder, "page")).CombinedOutput()
	require.NoError(t, err, string(out))
	printed, err := os.Open(filepath.Join(folder, "page.png"))
	require.NoError(t, err)
	defer printed.Close()
	theirs, err := png.Decode(printed)
	require.NoError(t, err)
	ours := Paint(sample(), 10)
	// The ink of each square of 5 mm.
	for y := 0; y < 600; y += 50 {
		for x := 0; x < 1000; x += 50 {
			var a, b float64
			for v := y; v < y+50; v++ {
				for u := x; u < x+50; u++ {
					level, _, _, _ := theirs.At(u, v).RGBA()
					a += 1 - float64(level)/0xffff
					b += 1 - float64(ours.GrayAt(u, v).Y)/255
				}
			}
			assert.InDelta(t, a, b, 40, "the square at %d, %d mm", x/10, y/10)
		}
	}
}

func TestWriteIsSteady(t *testing.T) {
	var a, b bytes.Buffer
	require.NoError(t, WritePDF(&a, "sample", []Page{sample(), sample()}))
	require.NoError(t, WritePDF(&b, "sample", []Page{sample(), sample()}))
	assert.Equal(t, a.Bytes(), b.Bytes())
	assert.ErrorContains(t, WritePDF(io.Discard, "", []Page{{Width: 5100, Height: 100}}), "5080 mm at most")
}

func TestHPGLCommands(t *testing.T) {
	page := Page{Width: 100, Height: 60}
	page.Line(Pen{}, orb.Point{10, 10}, orb.Point{90, 10})
	page.Line(Pen{Dashes: []float64{4, 2}}, orb.Point{0, 20}, orb.Point{10, 20})
	page.Line(Pen{}, orb.Point{-10, 30}, orb.Point{110, 30})
	page.Area(200, orb.Point{0, 0}, orb.Point{10, 0}, orb.Point{10, 10})
	page.Line(Pen{}, orb.Point{10, 40}, orb.Point{10.001, 40}) // a dot: the pen comes down for it
	var file bytes.Buffer
	require.NoError(t, WriteHPGL(&file, page))
	// 40 units a mm, 1016 an inch (HP-GL/2 and HP RTL Reference Guide, from
	// memory [source.HPGL2]), y up.
	assert.Equal(t, strings.Join([]string{"IN;SP1;PA;", "PU400,2000;PD3600,2000;",
		"PU0,1600;PD160,1600;", "PU240,1600;PD400,1600;", "PU0,1200;PD4000,1200;", "PU400,800;PD400,800;",
		"PU;PU0,0;SP0;", ""}, "\n"),
		file.String())
}

// TestDashes: strokes and gaps in turn make up the whole line, whatever its
// corners.
func TestDashes(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		coordinate := rapid.Float64Range(-50, 50)
		var line []orb.Point
		for range rapid.IntRange(2, 6).Draw(t, "points") {
			line = append(line, orb.Point{coordinate.Draw(t, "x"), coordinate.Draw(t, "y")})
		}
		stroke, space := rapid.Float64Range(0.5, 20).Draw(t, "stroke"), rapid.Float64Range(0.5, 20).Draw(t, "space")
		whole, inked := length(line), 0.0
		parts := dashed(line, []float64{stroke, space})
		for i, part := range parts {
			inked += length(part)
			if i < len(parts)-1 {
				assert.InDelta(t, stroke, length(part), 1e-6)
			}
		}
		turns := math.Floor(whole / (stroke + space))
		assert.InDelta(t, turns*stroke+math.Min(stroke, whole-turns*(stroke+space)), inked, 1e-6)
	})
}

func length(line []orb.Point) float64 {
	sum := 0.0
	for i := 1; i < len(line); i++ {
		sum += geometry.Distance(line[i-1], line[i])
	}
	return sum
}

// TestHatching: lines so far apart, of which the length within a square is
// its area over their distance.
func TestHatching(t *testing.T) {
	square := []orb.Point{{0, 0}, {100, 0}, {100, 100}, {0, 100}, {0, 0}}
	sum := 0.0
	for _, line := range hatching(square, 2) {
		sum += geometry.Distance(line[0], line[1])
	}
	assert.InDelta(t, 100*100/(2/math.Sqrt2), sum, 200)
}

func TestPrintable(t *testing.T) {
	assert.Equal(t, "été ½ рукав μ ? ? ", Printable("été ½ рукав μ 袖 \U0001F9F5\n"))
	assert.Equal(t, "Nguyễn Thị, é", Printable("Nguyễn Thị, e\u0301"), "accents are joined to their letters")
	assert.Equal(t, "ẹ̀kọ́", Printable("ẹ\u0300ko\u0323\u0301"),
		"those with which no letter comes joined stand over it")
	assert.Equal(t, "red", Printable("\x1b[31mred\x1b[0m\x07"), "what steers a terminal stays off paper")
	assert.Equal(t, "zero width", Printable("zero\u200b width\u200e"))
	for _, name := range []string{"Nguyễn Thị Hà", "Łódź, Þórður, İğdır", "Adéọlá", "Ελένη, Ἀθηνᾶ", "Ґалина",
		"Հայաստան", "თბილისი", "½ ⅓ ¼ ⅛ ⅜ ⅝ ⅞"} {
		assert.True(t, IsPrintable(name), name)
		assert.Equal(t, norm.NFC.String(name), Printable(norm.NFD.String(name)))
		for _, r := range name {
			ems, ok := bold().advance(r)
			assert.True(t, ok && (ems > 0.1), "%q in bold", r)
		}
	}
	for _, name := range []string{"袖", "שלום", "محمد", "ศรี", "अनुष्का", "🧵"} {
		assert.False(t, IsPrintable(name), name)
	}
	assert.InDelta(t, 2*Width("sleeve", 9, false), Width("sleeve", 18, false), 1e-9)
	assert.Equal(t, "a lo…", Shortened("a long name", 10, false, Width("a lo…", 10, false)+0.01))
	assert.Equal(t, []string{"one two", "three"}, Wrapped("one two three", 10, false, Width("one two t", 10, false)))
}

func TestNumber(t *testing.T) {
	for x, want := range map[float64]string{0: "0", -0.0001: "0", 1.5: "1.5", 1234.5678: "1234.568", 100: "100"} {
		assert.Equal(t, want, number(x))
	}
}

// TestWholeCircle is written as arcs of less than half a circle: as by SVG
// 1.1, section F.6.2, an arc that ends where it begins is left out.
func TestWholeCircle(t *testing.T) {
	circle := pieces.Path{pieces.Arc{Radius: 10, Sweep: 2 * math.Pi}}
	assert.Equal(t, "M10 0A10 10 0 0 1 -5 8.66A10 10 0 0 1 -5 -8.66A10 10 0 0 1 10 0", curvesOf(circle))
}

// TestGroups: one element about what belongs together, with its title; curves
// stay exact where the group is seen through a window.
func TestGroups(t *testing.T) {
	part, whole, page := &Picture{}, &Picture{}, Page{Width: 100, Height: 60}
	part.Curve(Pen{Width: 0.3}, pieces.Path{pieces.Bezier{P0: orb.Point{0, 0}, P1: orb.Point{10, 0},
		P2: orb.Point{20, 10}, P3: orb.Point{20, 20}}})
	whole.Group("yoke & band", part)
	whole.Group("nothing", &Picture{})
	page.Window(orb.Bound{Max: orb.Point{60, 60}}, whole, orb.Point{5, 7})
	var file bytes.Buffer
	require.NoError(t, WriteSVG(&file, "groups", page))
	assert.Contains(t, file.String(), "<g>\n<title>yoke &amp; band</title>\n"+`<path d="M5 7C15 7 25 17 25 27"`)
	assert.NotContains(t, file.String(), "nothing")
	assert.Equal(t, strings.Count(file.String(), "<g"), strings.Count(file.String(), "</g>"))
	require.NoError(t, WritePDF(&file, "groups", []Page{page}))
}

func BenchmarkWrite(b *testing.B) {
	page := Page{Width: 1000, Height: 1000}
	for i := range 1000 {
		page.Line(Pen{Width: 0.3}, orb.Point{float64(i), 0}, orb.Point{0, float64(i)})
		page.Write(Text{Words: "name", At: orb.Point{float64(i), 500}, Points: 8})
	}
	for name, write := range map[string]func(io.Writer) error{
		"pdf":  func(w io.Writer) error { return WritePDF(w, "", []Page{page}) },
		"svg":  func(w io.Writer) error { return WriteSVG(w, "", page) },
		"hpgl": func(w io.Writer) error { return WriteHPGL(w, page) },
		"png":  func(w io.Writer) error { return WritePNG(w, page, 2) },
	} {
		b.Run("kind="+name, func(b *testing.B) {
			for b.Loop() {
				var file bytes.Buffer
				if err := write(&file); err != nil || file.Len() < 5000 {
					b.Fatal(err, file.Len())
				}
			}
		})
	}
}

// TestHostileTitle: names that would steer a terminal or turn the reading round
// are clean in the titles of documents, in their words and in the groups of an
// SVG.
func TestHostileTitle(t *testing.T) {
	const hostile = "a\x1b]0;b\x07\u202ec"
	page := Page{Width: 50, Height: 50}
	inner := &Picture{}
	inner.Write(Text{Words: hostile, At: orb.Point{5, 20}, Points: 9})
	page.Group(hostile, inner)
	var file bytes.Buffer
	require.NoError(t, WriteSVG(&file, hostile, page))
	assert.Equal(t, 2, strings.Count(file.String(), "<title>ac</title>"))
	assert.Contains(t, file.String(), ">ac</text>")
	assert.Equal(t, "ac", Printable(hostile))
	file.Reset()
	require.NoError(t, WritePDF(&file, hostile, []Page{page}))
	assert.Contains(t, file.String(), "/Title (\xfe\xff\x00a\x00c)")
}

// TestWrapped: lines break at soft blanks, and in a word that has no other
// place for it.
func TestWrapped(t *testing.T) {
	width := func(words string) float64 { return Width(words, 10, false) + 0.01 }
	assert.Equal(t, []string{"one two", "three"}, Wrapped("one  two\nthree", 10, false, width("one two")))
	assert.Equal(t, []string{"one", "two\u00a0three"},
		Wrapped("one two\u00a0three", 10, false, width("two\u00a0three")))
	assert.Equal(t, []string{"a", "bbb", "bbb", "b c"}, Wrapped("a bbbbbbb c", 10, false, width("bbb")))
	assert.Equal(t, []string{"a", "b"}, Wrapped("ab", 10, false, 0.1), "at least a letter")
	assert.Equal(t, []string{""}, Wrapped(" ", 10, false, 20))
}
