package pdfin

import (
	"bytes"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/pieces"
	"ellwand/pieces/found"
	"ellwand/pieces/linework"
	"ellwand/testdata/sketch"
)

// options of the tests.
var options = found.Options{Limits: found.Limits{found.Bytes: 8 << 20, found.Things: 50_000, found.Vertices: 100_000,
	found.Nesting: 30, found.Outlines: 1000, found.Words: 1000}}

// file of objects, the first the catalog; each is numbered by its place from 1.
func file(objects ...string) []byte {
	var out bytes.Buffer
	out.WriteString("%PDF-1.6\n")
	var at []int
	for i, o := range objects {
		at = append(at, out.Len())
		fmt.Fprintf(&out, "%d 0 obj\n%s\nendobj\n", i+1, o)
	}
	start := out.Len()
	fmt.Fprintf(&out, "xref\n0 %d\n0000000000 65535 f \n", len(objects)+1)
	for _, a := range at {
		fmt.Fprintf(&out, "%010d 00000 n \n", a)
	}
	fmt.Fprintf(&out, "trailer\n<</Size %d/Root 1 0 R>>\nstartxref\n%d\n%%%%EOF\n", len(objects)+1, start)
	return out.Bytes()
}

func stream(head, content string) string {
	return fmt.Sprintf("<<%s/Length %d>>\nstream\n%s\nendstream", head, len(content), content)
}

// sheet of paper, 100 by 200 points, with more in its dictionary.
func sheet(content, more string, others ...string) []byte {
	return file(append([]string{"<</Type/Catalog/Pages 2 0 R" + cut(more, "catalog:") + ">>",
		"<</Type/Pages/Kids[3 0 R]/Count 1>>",
		"<</Type/Page/Parent 2 0 R/MediaBox[0 0 100 200]/Contents 4 0 R" + cut(more, "page:") + ">>", stream("", content)},
		others...)...)
}

// cut is what stands after a key, up to the next line.
func cut(text, key string) string {
	_, after, _ := strings.Cut(text, key)
	line, _, _ := strings.Cut(after, "\n")
	return line
}

func read(t *testing.T, data []byte) linework.Drawing {
	t.Helper()
	out, err := Lines(data, options)
	require.NoError(t, err)
	return out
}

// inPoints are the corners of a line, in points from the lower left corner.
func inPoints(line linework.Line) string {
	var out []string
	for _, p := range line.Path.Flatten(0.01) {
		out = append(out, fmt.Sprintf("%.4g %.4g", p[0]/point, p[1]/point))
	}
	return strings.Join(out, ", ")
}

func TestPaths(t *testing.T) {
	for content, want := range map[string]string{
		"10 20 m 30 20 l 30 40 l h S":                              "10 20, 30 20, 30 40, 10 20",
		"10 20 m 30 20 l 30 40 l s":                                "10 20, 30 20, 30 40, 10 20",
		"10 20 20 30 re S":                                         "10 20, 30 20, 30 50, 10 50, 10 20",
		"2 0 0 2 5 5 cm 0 0 m 10 0 l S":                            "5 5, 25 5",
		"q 2 0 0 2 5 5 cm Q 1 1 m 10 1 l S":                        "1 1, 10 1",
		"1 0 0 1 5 5 cm 0 1 -1 0 0 0 cm 0 0 m 10 0 l S":            "5 5, 5 15",
		"% a remark\n10 10 m (un)known 5 foo 20 10 l S":            "10 10, 20 10",
		"10 10 m 20 10 l\n/Name (te\\)x(t)) <</A[1 2]>> BDC EMC S": "10 10, 20 10",
		"-5 10 m 50 10 l S":                                        "0 10, 50 10", // the paper ends there
		"10 10 30 30 re W n 0 20 m 90 20 l S":                      "10 20, 40 20",
		"q 10 10 30 30 re W n Q 5 20 m 90 20 l S":                  "5 20, 90 20",
		"BI /W 1 /H 1 ID xx EI 10 10 m 20 10 l S":                  "10 10, 20 10",
		"BI /W 3 /H 1 ID 0 0 m 9 9 l S EI 10 10 m 20 10 l S":       "10 10, 20 10", // dots that read like lines
		"10\x0010\x00m 20\x0010\x00l S":                            "10 10, 20 10",
		"Q Q 10 10 m 20 10 l S":                                    "10 10, 20 10",
		"10 10 m 20 10 l f":                                        "10 10, 20 10",
		"1 1 m 2 2 l n 10 10 m 20 10 l S":                          "10 10, 20 10",
		"1 1 1 rg 0 0 100 200 re f 10 10 m 20 10 l S":              "10 10, 20 10",
	} {
		got := read(t, sheet(content, ""))
		require.Len(t, got.Lines, 1, content)
		assert.Equal(t, want, inPoints(got.Lines[0]), content)
	}
}

func TestCurves(t *testing.T) {
	for content, want := range map[string]pieces.Bezier{
		"0 0 m 10 0 20 10 20 20 c S": {P1: orb.Point{10, 0}, P2: orb.Point{20, 10}, P3: orb.Point{20, 20}},
		"0 0 m 20 10 20 20 v S":      {P1: orb.Point{0, 0}, P2: orb.Point{20, 10}, P3: orb.Point{20, 20}},
		"0 0 m 10 0 20 20 y S":       {P1: orb.Point{10, 0}, P2: orb.Point{20, 20}, P3: orb.Point{20, 20}},
	} {
		got := read(t, sheet(content, ""))
		require.Len(t, got.Lines, 1, content)
		curve, ok := got.Lines[0].Path[0].(pieces.Bezier)
		require.True(t, ok)
		for i, p := range []orb.Point{curve.P0, curve.P1, curve.P2, curve.P3} {
			at := []orb.Point{want.P0, want.P1, want.P2, want.P3}[i]
			assert.InDelta(t, at[0]*point, p[0], 1e-9)
			assert.InDelta(t, at[1]*point, p[1], 1e-9)
		}
	}
}

func TestPens(t *testing.T) {
	got := read(t, sheet("2 w [3 1] 0 d 1 0 0 RG 0 0 m 9 0 l S q 2 0 0 2 0 0 cm 0.5 g 0 0 m 9 9 l 9 0 l B Q "+
		"[] 0 d 0 0 0 1 K 0 0 m 9 0 l S /Cs CS 0 0 m 9 0 l S /Cs cs 0 1 0 sc 0 0 9 9 re f*", ""))
	require.Len(t, got.Lines, 5)
	pens := []linework.Pen{
		{Colour: "#ff0000", Width: 2 * point, Dashes: []float64{3 * point, point}},
		{Colour: "#ff0000", Fill: "#808080", Width: 4 * point, Dashes: []float64{6 * point, 2 * point}},
		{Colour: "#000000", Width: 2 * point}, {Colour: "#000000", Width: 2 * point}, {Fill: "#00ff00"},
	}
	for i, pen := range pens {
		assert.Equal(t, pen, got.Lines[i].Pen, "%d", i)
	}
}

func TestPageBoxes(t *testing.T) {
	for more, want := range map[string]string{
		"": "0 0 100 200: 10 20, 30 20", "page:/CropBox[5 5 95 195]": "0 0 90 190: 5 15, 25 15",
		"page:/Rotate 90": "0 0 200 100: 20 90, 20 70", "page:/Rotate 180": "0 0 100 200: 90 180, 70 180",
		"page:/Rotate -90": "0 0 200 100: 180 10, 180 30", "page:/UserUnit 2": "0 0 200 400: 20 40, 60 40",
	} {
		got := read(t, sheet("10 20 m 30 20 l S", more))
		box := got.Pages[0].Box
		head := fmt.Sprintf("%.4g %.4g %.4g %.4g: ", box.Min[0]/point, box.Min[1]/point, box.Max[0]/point, box.Max[1]/point)
		assert.Equal(t, want, head+inPoints(got.Lines[0]), more)
	}
}

func TestFormsAndLayers(t *testing.T) {
	got := read(t, sheet("/OC /L1 BDC /F Do EMC 1 1 m 2 2 l S /OC /L2 BDC 3 3 m 4 4 l S EMC",
		"page:/Resources<</XObject<</F 5 0 R>>/Properties<</L1 6 0 R/L2 7 0 R>>>>\n"+
			"catalog:/OCProperties<</OCGs[6 0 R 7 0 R]/D<</OFF[7 0 R]>>>>",
		stream("/Type/XObject/Subtype/Form/BBox[0 0 50 50]/Matrix[2 0 0 2 10 10]", "0 0 m 100 0 l S"),
		"<</Type/OCG/Name(size 12)>>", "<</Type/OCG/Name(size 14)>>"))
	require.Len(t, got.Lines, 3)
	assert.Equal(t, "10 10, 100 10", inPoints(got.Lines[0]), "through the matrix, in the box, on the paper")
	assert.Equal(t, "size 12", got.Lines[0].Layer)
	assert.Empty(t, got.Lines[1].Layer)
	assert.Equal(t, "size 14", got.Lines[2].Layer)
	assert.True(t, got.Lines[2].Hidden)
	assert.False(t, got.Lines[0].Hidden)
}

func TestWords(t *testing.T) {
	table := "1 begincodespacerange <00> <ff> endcodespacerange 2 beginbfchar <01> <0046> <02> <00660066> endbfchar " +
		"1 beginbfrange <10> <12> <0061> endbfrange 1 beginbfrange <20> <21> [<0058> <0059>] endbfrange"
	got := read(t, sheet("BT /A 10 Tf 10 50 Td (Front) Tj 0 -12 Td [(Cu) -20 (t) -300 (2)] TJ ET "+
		"BT /B 10 Tf 2 0 0 2 10 100 Tm <0102101112> Tj <2021> Tj ET",
		"page:/Resources<</Font<</A<</Type/Font/Subtype/Type1/BaseFont/Helvetica>>/B<</Type/Font/Subtype/Type1/ToUnicode "+
			"5 0 R>>>>>>",
		stream("", table)))
	var words []string
	for _, w := range got.Words {
		words = append(words, fmt.Sprintf("%s at %.4g %.4g, %.4g", w.Text, w.At[0]/point, w.At[1]/point, w.Size/point))
	}
	assert.Equal(t, []string{"Front at 10 50, 10", "Cut 2 at 10 38, 10", "FffabcXY at 10 100, 20"}, words)
}

// The drawings of other programs hold what the reader of SVG's testdata/drawn.py drew.
func TestDrawnByOthers(t *testing.T) {
	for _, name := range []string{"cairo.pdf", "inkscape.pdf"} {
		data, err := os.ReadFile(filepath.Join("testdata", name))
		require.NoError(t, err)
		got := read(t, data).Lines
		all := sketch.Lines()
		require.Len(t, got, len(all), name)
		for i, want := range all {
			if want.Name != sketch.Circle { // which is none in PDF
				assert.Less(t, sketch.Apart(got[i].Path.Flatten(0.0005), want.Points), want.Within, "%s: %s", name, want.Name)
			}
		}
	}
}

func BenchmarkLines(b *testing.B) {
	data := sheet(strings.Repeat("1 1 m 20 20 l 30 30 40 40 50 20 c S ", 10_000), "")
	for b.Loop() {
		if out, err := Lines(data, options); err != nil || len(out.Lines) != 10_000 {
			b.Fatal(err)
		}
	}
}
