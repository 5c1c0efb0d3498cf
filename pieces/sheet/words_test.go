package sheet

import (
	"bytes"
	"fmt"
	"math"
	"regexp"
	"strconv"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/pieces"
	"ellwand/pieces/drawing"
	"ellwand/pieces/geometry"
)

// written word of a picture, as it stands in SVG.
type word struct {
	text  string
	at    orb.Point // in the middle of the line it stands on
	size  float64   // mm
	angle float64   // clockwise, degrees
}

func wordsOf(t *testing.T, f DrawnPiece) []word {
	t.Helper()
	page := drawing.Page{Width: 2000, Height: 2000}
	f.Draw(&page.Picture)
	var file bytes.Buffer
	require.NoError(t, drawing.WriteSVG(&file, "figure", page))
	var out []word
	number := func(s []byte) float64 {
		v, err := strconv.ParseFloat(string(s), 64)
		require.NoError(t, err)
		return v
	}
	texts := regexp.MustCompile(`<text x="([-\d.]+)" y="([-\d.]+)" font-size="([\d.]+)"([^>]*)>([^<]*)<`)
	for _, m := range texts.FindAllSubmatch(file.Bytes(), -1) {
		w := word{text: string(m[5]), at: orb.Point{number(m[1]), number(m[2])}, size: number(m[3])}
		if turn := regexp.MustCompile(`rotate\(([-\d.]+)`).FindSubmatch(m[4]); turn != nil {
			w.angle = number(turn[1])
		}
		out = append(out, w)
	}
	return out
}

// middle of the letters, 0.35 heights above their line.
func (w word) middle() orb.Point {
	sin, cos := math.Sincos(w.angle * math.Pi / 180)
	return orb.Point{w.at[0] + 0.35*w.size*sin, w.at[1] - 0.35*w.size*cos}
}

func away(p orb.Point, line []orb.Point) float64 {
	least := math.Inf(1)
	for i := 1; i < len(line); i++ {
		a, d := line[i-1], geometry.Sub(line[i], line[i-1])
		k := math.Max(0, math.Min(1, geometry.Dot(geometry.Sub(p, a), d)/math.Max(1e-12, geometry.Dot(d, d))))
		least = math.Min(least, geometry.Distance(p, geometry.Add(a, geometry.Times(d, k))))
	}
	return least
}

// TestNamesOfSizesStandOnTheirLines: half a letter and more from the lines of
// other sizes, and on or beside their own.
func TestNamesOfSizesStandOnTheirLines(t *testing.T) {
	var sizes []pieces.Piece
	for i := range 8 {
		p := sleeve(1 + 0.02*float64(i))
		p.Size = fmt.Sprint(8 + 2*i)
		sizes = append(sizes, p)
	}
	f := figureOf(t, sizes...).Map(onto(100, 1000))
	f.Seams = 3
	words := wordsOf(t, f)
	named := 0
	for i, d := range f.Sizes {
		for _, w := range words {
			if w.text != d.Piece.Size || w.size > 3 { // in the key they are larger
				continue
			}
			named++
			assert.Less(t, away(w.middle(), d.Cutting), w.size)
			for k, other := range f.Sizes {
				if k != i {
					assert.Greater(t, away(w.middle(), other.Cutting), 0.35*w.size, "%s and %s", w.text,
						other.Piece.Size)
				}
			}
		}
	}
	assert.GreaterOrEqual(t, named, 20)
	assert.Contains(t, fmt.Sprint(words), "seam line of 14")
}

// TestPieceThatIsTheSameInEverySize is drawn once, without a key.
func TestPieceThatIsTheSameInEverySize(t *testing.T) {
	small, large := withAllowance(pieces.Rectangle("pocket", 120, 140),
		10), withAllowance(pieces.Rectangle("pocket", 120, 140), 10)
	small.Size, large.Size = "8", "22"
	f := figureOf(t, small, large)
	assert.Len(t, f.Sizes, 1)
	assert.Contains(t, f.Label, "all sizes")
	large.Edges[0].Allowance = 20
	assert.Len(t, figureOf(t, small, large).Sizes, 2)
}

// TestLabelsOfSmallPieces are large enough to be read, and keep off the seam
// line: where there is no room within it, they stand on the allowance.
func TestLabelsOfSmallPieces(t *testing.T) {
	for _, c := range []struct{ width, height, allowance, least float64 }{
		{10, 50, 15, 3}, {13, 50, 15, 3}, {6, 30, 10, 2}, {25, 25, 0, 2}, {12, 400, 6, 3}, {36, 900, 0, 5},
	} {
		p := withAllowance(pieces.Rectangle("loop", c.width, c.height), c.allowance)
		p.Garment = "apron"
		f := figureOf(t, p).Map(onto(100, 1100))
		for _, w := range wordsOf(t, f) {
			assert.Greater(t, away(w.middle(), f.Sizes[0].Piece.SeamOutline(1)), 0.3*w.size, "%v in %v", w, c)
			assert.Greater(t, away(w.middle(), f.Sizes[0].Cutting), 0.3*w.size, "%v in %v", w, c)
			if w.text == "loop" || w.text == "loop, apron, cut 1" {
				assert.GreaterOrEqual(t, w.size, c.least, "%v", c)
			}
		}
	}
}

// TestLabelKeepsOffWhatLiesBeneath where there is room beside it.
func TestLabelKeepsOffWhatLiesBeneath(t *testing.T) {
	f := figureOf(t, sleeve(1))
	for x := 0.0; x < 400; x += 80 {
		f.Beneath = append(f.Beneath, [2]orb.Point{{x, -50}, {x, 600}})
	}
	f = f.Map(onto(100, 1000))
	for _, w := range wordsOf(t, f) {
		for _, line := range f.Beneath {
			if w.text != "straight grain, this end up" {
				assert.Greater(t, away(w.middle(), line[:]), 1.0, "%v", w)
			}
		}
	}
}
