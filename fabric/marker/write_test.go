package marker

import (
	"bytes"
	"image/png"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/fabric/lay"
	"ellwand/pieces/paper"
)

func written(t testing.TB, plan lay.Plan, options Options) []byte {
	t.Helper()
	var file bytes.Buffer
	require.NoError(t, Write(&file, plan, options))
	return file.Bytes()
}

// poppler runs one of the poppler tools on a file; it skips the test where
// poppler is not installed.
func poppler(t *testing.T, tool string, file []byte, arguments ...string) string {
	t.Helper()
	if _, err := exec.LookPath(tool); err != nil {
		t.Skip(tool + " of poppler-utils is not installed")
	}
	dir := t.TempDir()
	path := filepath.Join(dir, "plan.pdf")
	require.NoError(t, os.WriteFile(path, file, 0o600))
	out, err := exec.Command(tool, append(arguments, path, filepath.Join(dir, "out"))...).CombinedOutput()
	require.NoError(t, err, string(out))
	return dir
}

func textOf(t *testing.T, file []byte) string {
	t.Helper()
	dir := poppler(t, "pdftotext", file, "-layout")
	text, err := os.ReadFile(filepath.Join(dir, "out"))
	require.NoError(t, err)
	return string(text)
}

func TestTextsOfThePlan(t *testing.T) {
	text := textOf(t, written(t, openPlan(), Options{Job: "Smock for Ilse Marlow"}))
	for _, want := range []string{
		"Smock for Ilse Marlow", "cloth linen, lay open", "buy 1.20 m", "102 cm", "100 cm", "116 cm", "85.0 %", "either way",
		"selvedge nearest to you", "cut end", "the pieces end here, 116 cm", "end of the cloth, 1.20 m",
		"front", "back", "belt", "sleeve", "smock, 1 of 1", "face down",
		"check the print: this ruler is exactly 100 mm", "Near end from", "to the cut end", "1, mirrored",
		"Spread the cloth in one layer, right side up", "Measure twice, cut once", "Check the true width",
		"Wash or steam the cloth",
		"rotary cutter", "Irons", "page 1 of",
	} {
		assert.True(t, strings.Contains(text, want), "%q is not in the plan", want)
	}
}

func TestTextsOfAFoldedPlanInInches(t *testing.T) {
	text := textOf(t, written(t, foldedPlan(), Options{Inches: true, Paper: paper.Letter}))
	for _, want := range []string{
		"cloth velvet, lay folded along the warp", "2, right sides together", "one way", "fold", "both selvedges",
		"1, on the fold", "a pair",
		"ruler in inches from the cut end", "Fold the cloth in half along its length",
		"arrow along the warp point to the same end", "from the fold to the selvedges",
		"only 4 cm more",
		// 800 mm are 0.875 yd less 0.1 mm: what is to be bought is never
		// rounded down.
		"buy 7/8 yd",
	} {
		assert.True(t, strings.Contains(text, want), "%q is not in the plan", want)
	}
}

// TestTestRulerIs100mm prints the first page at 254 dpi, which is 10 pixels a
// mm, and measures the row of the ruler.
func TestTestRulerIs100mm(t *testing.T) {
	for _, sheet := range []paper.Paper{paper.A4, paper.Letter} {
		dir := poppler(t, "pdftoppm", written(t, openPlan(), Options{Paper: sheet}), "-r", "254", "-png", "-f", "1", "-l",
			"1", "-aa", "no")
		files, err := filepath.Glob(filepath.Join(dir, "out*.png"))
		require.NoError(t, err)
		require.Len(t, files, 1)
		f, err := os.Open(files[0])
		require.NoError(t, err)
		defer f.Close()
		page, err := png.Decode(f)
		require.NoError(t, err)
		size := page.Bounds().Size()
		longest := 0
		for y := size.Y - 200; y < size.Y-100; y++ {
			run := 0
			for x := size.X / 3; x < size.X; x++ {
				if r, _, _, _ := page.At(x, y).RGBA(); r > 0x8000 {
					run = 0
					continue
				}
				run++
				longest = max(longest, run)
			}
		}
		// One pixel, 0.1 mm, at each end for the ends of the line.
		assert.InDelta(t, 1000, longest, 3, "paper %g", sheet.Width)
	}
}

func TestWriteIsSteady(t *testing.T) {
	assert.Equal(t, written(t, openPlan(), Options{}), written(t, openPlan(), Options{}))
}

func TestWriteRefuses(t *testing.T) {
	impossible := lay.Plan{Lay: lay.FoldedAlong, Why: []lay.Reason{{Of: lay.OddCount, Piece: "yoke", Count: 1}}}
	assert.ErrorContains(t, Write(&bytes.Buffer{}, impossible, Options{}), "yoke: a single piece")
	assert.ErrorContains(t, Write(&bytes.Buffer{}, lay.Plan{}, Options{}), "no pieces")
}

// TestRunesThatTheFontLacks: gofpdf panics on runes beyond U+FFFF.
func TestRunesThatTheFontLacks(t *testing.T) {
	plan := openPlan()
	plan.Pieces[0].Name = "été ½ 袖 𝒳 🧵\n"
	plan.Cloth.Name = "\U0001F9F5"
	text := textOf(t, written(t, plan, Options{Job: "Žofie Δ Ω 𝒳"}))
	assert.Contains(t, text, "Žofie Δ Ω ?")
	assert.Contains(t, text, "été ½ ? ? ?")
}

func TestLongPlanTakesSeveralPages(t *testing.T) {
	plan := longPlan(t, 500)
	file := written(t, plan, Options{})
	text := textOf(t, file)
	for _, want := range []string{"The lay, part 2 of 2", "patch 500", "How to lay it, continued", "page 19 of"} {
		assert.True(t, strings.Contains(text, want), "%q is not in the plan", want)
	}
	assert.Less(t, len(file), 2_000_000)
}

// TestLongLengthsInMetres: headings give 2 m and more in metres, and in an
// inch job in inches; the bound is that of the cloth, two plies of it where it
// is folded across.
func TestLongLengthsInMetres(t *testing.T) {
	plan := longPlan(t, 210)
	plan.Bound = 1990
	text := textOf(t, written(t, plan, Options{}))
	for _, want := range []string{"the pieces end here, 2.10 m", "2.10 m", "199 cm"} {
		assert.Contains(t, text, want)
	}
	plan.Lay, plan.Plies, plan.Taken, plan.Buy = lay.FoldedAcross, 2, 4200, 4300
	text = textOf(t, written(t, plan, Options{}))
	for _, want := range []string{"4.20 m", "3.98 m"} {
		assert.Contains(t, text, want)
	}
	assert.Contains(t, textOf(t, written(t, plan, Options{Inches: true})), "165 3/8 in")
}

func TestScales(t *testing.T) {
	for _, c := range []struct {
		across, along float64
		pages         int
	}{{1500, 800, 1}, {1500, 3500, 1}, {750, 1900, 1}, {1500, 9000, 3}, {20000, 100, 1}} {
		for _, sheet := range []paper.Paper{paper.A4, paper.Letter} {
			s := pagingFor(sheet, c.across, c.along)
			assert.LessOrEqual(t, s.pages, c.pages, "%+v", c)
			across, along := roomOn(s.Paper)
			assert.LessOrEqual(t, c.across/s.denominator, across+1e-9, "%+v", c)
			assert.LessOrEqual(t, c.along/s.denominator, along*float64(s.pages)+1e-6, "%+v", c)
		}
	}
}

func BenchmarkWrite(b *testing.B) {
	for _, count := range []int{15, 150} {
		plan := longPlan(b, count)
		b.Run("pieces="+strconv.Itoa(count), func(b *testing.B) {
			for b.Loop() {
				if len(written(b, plan, Options{})) < 10000 {
					b.Fatal("hardly a plan")
				}
			}
		})
	}
}
