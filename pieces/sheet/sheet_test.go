package sheet

import (
	"bytes"
	"fmt"
	"image"
	"math"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strconv"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/pieces"
	"ellwand/pieces/drawing"
	"ellwand/pieces/measure"
	"ellwand/pieces/paper"
	"ellwand/pieces/seams"
)

// onto turns a piece drawn with y up onto the plane at a place.
func onto(x, y float64) pieces.Motion { return pieces.MirrorY().Then(pieces.Move(x, y)) }

func figureOf(t testing.TB, sizes ...pieces.Piece) DrawnPiece {
	t.Helper()
	f, err := NewDrawnPiece(sizes...)
	require.NoError(t, err)
	return f
}

func withAllowance(p pieces.Piece, allowance float64) pieces.Piece {
	for i := range p.Edges {
		p.Edges[i].Allowance = allowance
	}
	return p
}

// sleeve has curves at its head and a notch in each.
func sleeve(scale float64) pieces.Piece {
	p := pieces.Rectangle("sleeve", 330, 400)
	p.Edges[2].Path = pieces.Path{
		pieces.Bezier{P0: orb.Point{330, 400}, P1: orb.Point{250, 400}, P2: orb.Point{240, 540},
			P3: orb.Point{165, 540}},
		pieces.Bezier{P0: orb.Point{165, 540}, P1: orb.Point{90, 540}, P2: orb.Point{80, 400}, P3: orb.Point{0, 400}}}
	p.Notches = []pieces.Notch{{Edge: seams.Top, At: 100, Count: 1}, {Edge: seams.Top, At: 400, Count: 2}}
	p.Garment, p.Cloth, p.Cut, p.Pair = "smock", "linen", 2, true
	return withAllowance(p, 10).Map(pieces.Scale(scale))
}

// disc is round: its area is known from geometry.
func disc(radius float64) pieces.Piece {
	half := func(begin float64) pieces.Path {
		return pieces.Path{pieces.Arc{Centre: orb.Point{0, 0}, Radius: radius, Begin: begin, Sweep: math.Pi}}
	}
	return pieces.Piece{Name: "round pocket", Cut: 1,
		Edges: []pieces.Edge{{Name: seams.Called("upper"), Path: half(0)},
			{Name: seams.Called("lower"), Path: half(math.Pi)}},
		Grain: pieces.Grain{From: orb.Point{0, -radius / 2}, To: orb.Point{0, radius / 2}}}
}

func testLayout(t testing.TB, paper paper.Paper) Layout {
	cuff := withAllowance(pieces.Rectangle("cuff", 240, 120), 10)
	right, down := PanelRoom(paper)
	return Layout{Title: "Smock for Ilse Marlow", Paper: paper, Figures: []DrawnPiece{
		figureOf(t, sleeve(1)).Map(onto(right+15, down+560)),
		figureOf(t, disc(110)).Map(onto(right+480, down+130)),
		figureOf(t, cuff).Map(onto(right+390, down+420)),
	}}
}

func named(t testing.TB, name string) paper.Paper {
	t.Helper()
	paper, err := paper.Parse(name, measure.Millimetre)
	require.NoError(t, err)
	return paper
}

// rendered draws pages in pixels, or the part of each from the upper left, of
// so many pixels each way (0: all).
func rendered(t *testing.T, path string, first, last int, dpi float64, part int) []*image.Gray {
	t.Helper()
	dir := t.TempDir()
	args := []string{"-gray", "-r", fmt.Sprint(dpi), "-f", strconv.Itoa(first), "-l", strconv.Itoa(last)}
	if part > 0 {
		args = append(args, "-x", "0", "-y", "0", "-W", strconv.Itoa(part), "-H", strconv.Itoa(part))
	}
	text, err := exec.Command("pdftoppm", append(args, path, filepath.Join(dir, "page"))...).CombinedOutput()
	require.NoError(t, err, string(text))
	names, err := filepath.Glob(filepath.Join(dir, "page*"))
	require.NoError(t, err)
	require.Len(t, names, last-first+1)
	var out []*image.Gray
	for _, name := range names {
		file, err := os.ReadFile(name)
		require.NoError(t, err)
		out = append(out, portableGreymap(t, file))
	}
	return out
}

// portableGreymap reads the plain picture that pdftoppm writes.
func portableGreymap(t *testing.T, file []byte) *image.Gray {
	var width, height, most int
	n, err := fmt.Sscanf(string(file[:min(40, len(file))]), "P5\n%d %d\n%d\n", &width, &height, &most)
	require.NoError(t, err)
	require.True(t, n == 3 && most == 255)
	img := image.NewGray(image.Rect(0, 0, width, height))
	copy(img.Pix, file[len(file)-width*height:])
	return img
}

func written(t *testing.T, layout Layout) string {
	t.Helper()
	if _, err := exec.LookPath("pdftoppm"); err != nil {
		t.Skip("pdftoppm of poppler-utils is not installed")
	}
	var file bytes.Buffer
	pages, err := layout.Pages()
	require.NoError(t, err)
	require.NoError(t, drawing.WritePDF(&file, layout.Title, pages))
	path := filepath.Join(t.TempDir(), "pieces.pdf")
	require.NoError(t, os.WriteFile(path, file.Bytes(), 0o600))
	return path
}

// strokes are the middles of the dark stretches of a row of pixels, weighed
// by their ink.
func strokes(n int, at func(int) uint8) []float64 {
	var out []float64
	var ink, sum float64
	for i := range n + 1 {
		v := 0.0
		if i < n {
			v = 255 - float64(at(i))
		}
		if v > 40 {
			ink, sum = ink+v, sum+v*(float64(i)+0.5)
			continue
		}
		if ink > 0 {
			out = append(out, sum/ink)
		}
		ink, sum = 0, 0
	}
	return out
}

// TestSquaresOnEverySheet measures both squares, both ways, as poppler prints
// them, at 10 pixels a mm.
func TestSquaresOnEverySheet(t *testing.T) {
	for _, name := range append(paper.Names(), "140mmx170mm", "24inx36in") {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			paper := named(t, name)
			img := rendered(t, written(t, testLayout(t, paper)), 1, 1, 254, 1500)[0]
			for _, row := range []int{450, 1100} {
				all := strokes(img.Rect.Dx(), func(x int) uint8 { return img.GrayAt(x, row).Y })
				require.GreaterOrEqual(t, len(all), 3, "row %d", row)
				assert.InDelta(t, 1000, all[1]-all[0], 1, "10 cm across, in row %d", row)
				assert.InDelta(t, 1016, all[2]-all[0], 1, "4 in across, in row %d", row)
			}
			left := strokes(img.Rect.Dx(), func(x int) uint8 { return img.GrayAt(x, 450).Y })[0]
			column := int(left) + 60
			all := strokes(img.Rect.Dy(), func(y int) uint8 { return img.GrayAt(column, y).Y })
			lines := longStrokes(img, all, column)
			require.GreaterOrEqual(t, len(lines), 3)
			assert.InDelta(t, 1000, lines[2]-lines[1], 1, "10 cm high")
			assert.InDelta(t, 1016, lines[2]-lines[0], 1, "4 in high")
		})
	}
}

// longStrokes keeps what is dark 90 mm on as well: lines, not letters; without
// the line under the title, which is the first.
func longStrokes(img *image.Gray, all []float64, column int) []float64 {
	var out []float64
	for _, y := range all {
		dark := true
		for x := column; x < column+900; x += 30 {
			dark = dark && img.GrayAt(x, int(y)).Y < 200
		}
		if dark {
			out = append(out, y)
		}
	}
	return out[min(1, len(out)):]
}

func TestTilesSayWhatTheyAre(t *testing.T) {
	path := written(t, testLayout(t, named(t, "a4")))
	text, err := exec.Command("pdftotext", "-layout", path, "-").Output()
	require.NoError(t, err)
	for _, want := range []string{"Smock for Ilse Marlow", "the inner square is 10 cm", "the outer square 4 in",
		"How the sheets lie",
		"A1", "B2", "joins here", "sheet 1 of", "cut 2, a pair, from linen", "this end up", "round pocket"} {
		assert.Contains(t, string(text), want)
	}
}

// TestNamesInOtherScripts: the typeface has Latin letters, Greek and Cyrillic;
// gofpdf panics on runes beyond U+FFFF.
func TestNamesInOtherScripts(t *testing.T) {
	p := sleeve(1)
	p.Name = "Ärmel рукав μανίκι tay áo sườn xám 袖 🧵 𝒳"
	layout := Layout{Title: "Žofie \U0001F9F5", Paper: named(t, "a3"),
		Figures: []DrawnPiece{figureOf(t, p).Map(onto(220, 770))}}
	text, err := exec.Command("pdftotext", "-layout", written(t, layout), "-").Output()
	require.NoError(t, err)
	assert.Contains(t, string(text), "Ärmel рукав μανίκι tay áo sườn xám ? ? ?")
	assert.Contains(t, string(text), "Žofie ?")
}

func TestBlankTilesAreLeftOut(t *testing.T) {
	paper := named(t, "a4")
	layout := Layout{Title: "far apart", Paper: paper, Figures: []DrawnPiece{
		figureOf(t, disc(40)).Map(onto(50, 50)), figureOf(t, disc(40)).Map(onto(440, 700))}}
	plane, tiling := layout.Plane()
	assert.Equal(t, 2, tiling.Sheets(plane))
	assert.Equal(t, 9, len(tiling.Tiles(plane)))
	pages, err := layout.Pages()
	require.NoError(t, err)
	assert.Equal(t, 3, len(pages), "one for the panel")
	// A sheet in the middle of a large piece has no line on it, but it is
	// part of the piece.
	large := Layout{Title: "large", Paper: paper,
		Figures: []DrawnPiece{figureOf(t, pieces.Rectangle("cape", 560, 800)).Map(onto(1, 801))}}
	plane, tiling = large.Plane()
	assert.Equal(t, len(tiling.Tiles(plane)), tiling.Sheets(plane))
}

func TestRowLetter(t *testing.T) {
	for row, want := range map[int]string{0: "A", 25: "Z", 26: "AA", 51: "AZ", 52: "BA", 701: "ZZ", 702: "AAA"} {
		assert.Equal(t, want, rowLetter(row))
	}
}

func TestRefusals(t *testing.T) {
	_, err := NewDrawnPiece()
	assert.ErrorContains(t, err, "no piece to print")
	bad := sleeve(1)
	bad.Edges[0].Allowance = -20
	_, err = NewDrawnPiece(bad)
	assert.ErrorContains(t, err, string(pieces.AllowanceNegative))
	_, err = Layout{Paper: named(t, "a4")}.Pages()
	assert.ErrorContains(t, err, "no piece to print")
	_, err = Layout{Paper: named(t, "100mmx100mm")}.Pages()
	assert.ErrorContains(t, err, "squares by which the print is measured")
}

func BenchmarkPages(b *testing.B) {
	for _, name := range []string{"a4", "a0"} {
		layout := testLayout(b, named(b, name))
		b.Run("paper="+name, func(b *testing.B) {
			for b.Loop() {
				var file bytes.Buffer
				pages, err := layout.Pages()
				require.NoError(b, err)
				require.NoError(b, drawing.WritePDF(&file, layout.Title, pages))
				require.True(b, file.Len() >= 20_000 && file.Len() <= 500_000, "%d bytes", file.Len())
			}
		})
	}
}

// TestNameOfASheetKeepsOffThePieces: in the lower left corner, or in
// the upper one where a line runs along the foot.
func TestNameOfASheetKeepsOffThePieces(t *testing.T) {
	paper := named(t, "a4")
	width, height := paper.Cell()
	for _, c := range []struct {
		ring  orb.Ring
		upper bool
	}{
		{orb.Ring{{1, height - 12}, {width - 1, height - 12}, {width - 1, height - 1}, {1, height - 1},
			{1, height - 12}}, true},
		{orb.Ring{{60, 60}, {100, 60}, {100, 90}, {60, 60}}, false},
	} {
		plane := Plane{Title: "smock", Picture: &drawing.Picture{},
			Shapes: []orb.Ring{c.ring, paperOutline(width, height)}}
		plane.Picture.Line(LineOf(0), c.ring...)
		page := EvenTiling(plane, paper).Pages(plane)[0]
		var file bytes.Buffer
		require.NoError(t, drawing.WriteSVG(&file, "smock", page))
		found := regexp.MustCompile(`y="([0-9.]+)"[^>]*>A1<`).FindStringSubmatch(file.String())
		require.NotEmpty(t, found)
		y, err := strconv.ParseFloat(found[1], 64)
		require.NoError(t, err)
		assert.Equal(t, c.upper, y < paper.Height/2, "%g", y)
	}
}
