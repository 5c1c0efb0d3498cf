package plan_test

import (
	"fmt"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/require"

	"ellwand/fabric/cloth"
	"ellwand/fabric/internal/fabrictest"
	"ellwand/fabric/lay"
	"ellwand/fabric/plan"
	"ellwand/pieces"
	"ellwand/pieces/seams"
	"ellwand/testdata/sample"
)

// cutFrom makes the pieces that a jigsaw on one bed of a lay gives, by the
// rules of the lay: what lies on a fold is a half or its own mirror image, what
// lies on two plies is a pair or two single pieces.
func cutFrom(r *rand.Rand, kind lay.Kind, tiles []fabrictest.Tile, prefix string, gap float64) []pieces.Piece {
	var all []pieces.Piece
	for i, t := range tiles {
		p := fabrictest.Rectangle(fmt.Sprintf("%s %d", prefix, i), t.Across-gap, t.Along-gap, 1)
		double := kind != lay.Open
		hasFold := kind == lay.FoldedAlong && t.Y == 0 && gap == 0
		switch {
		case hasFold && r.IntN(2) == 0:
			p.Fold = seams.Left
		case double:
			p.Cut, p.Pair = 2, r.IntN(2) == 0
		}
		p.Garment = []string{"blouse", "skirt"}[r.IntN(2)]
		all = append(all, p)
	}
	return all
}

// TestBoundNeverAboveJigsaws cuts pieces from a cloth of known length in every
// lay, so that a layout of that length exists, and asks for the bound. Without
// a gap nothing is wasted, so that the layout is the shortest, and the bound is
// mostly the whole of it. The bound is not the length of what a search found:
// that is stopped after one pass.
func TestBoundNeverAboveJigsaws(t *testing.T) {
	const unitX, unitY = 40.0, 50.0
	tight, count := 0, 0
	jigsaws := sample.Of(75, 300)
	for number := range uint64(jigsaws) {
		r := rand.New(rand.NewPCG(number, 9))
		length, width := unitX*float64(8+r.IntN(20)), unitY*float64(8+r.IntN(12))
		c := cloth.Cloth{Selvedge: 10, Nap: cloth.Nap(r.IntN(3))}
		if r.IntN(3) == 0 {
			c.Repeat = cloth.Repeat{Along: unitX, Across: unitY}
		}
		if r.IntN(3) == 0 {
			c.Gap = 5 * r.Float64()
		}
		kind := lay.Kinds()[r.IntN(7)]
		on := func(kind lay.Kind, prefix string, length, width float64) []pieces.Piece {
			return cutFrom(r, kind, fabrictest.Guillotine(r, fabrictest.Tile{X: 0, Y: 0, Along: length, Across: width}, unitX,
				unitY, 1+r.IntN(8)), prefix, c.Gap)
		}
		var all []pieces.Piece
		known := length
		switch kind {
		case lay.FoldedAlong:
			c.Width = 2 * (width + 10)
			all = on(lay.FoldedAlong, "piece", length, width)
		case lay.BothSelvedgesIn: // two halves, with the selvedges between
			c.Width = 4 * (width + 10)
			all = append(on(lay.FoldedAlong, "near", length, width), on(lay.FoldedAlong, "far", length, width)...)
		case lay.SelvedgeIn: // as much on two plies as on one
			c.Width = 3*width + 30
			all = append(on(lay.FoldedAlong, "double", length, width), on(lay.Open, "single", length, width)...)
		case lay.InStretches:
			c.Width, known = 2*(width+10), 2*length
			all = append(on(lay.FoldedAlong, "folded", length, width), on(lay.Open, "open", length, 2*width)...)
		default:
			c.Width = width + 20
			all = on(kind, "piece", length, width)
		}
		if c.Gap > 0 {
			known -= c.Gap / 2 // the last piece ends before the cut
		}
		got, err := plan.Require(t.Context(), c, all, plan.Options{Passes: 1, Workers: 1, Lays: []lay.Kind{kind}})
		if err != nil { // the lay cannot match, or the nap forbids it
			require.NotErrorIs(t, err, plan.ErrInternal, "jigsaw %d, %s", number, kind)
			continue
		}
		count++
		bound := got.Lays[0].Bound
		require.LessOrEqual(t, bound, known*(1+1e-6), "jigsaw %d, %s", number, kind)
		if c.Gap == 0 && bound > known*(1-1e-6) {
			tight++
		}
	}
	require.Greater(t, count, 2*jigsaws/3)
	require.Greater(t, tight, count/3, "the bound of a jigsaw is its area at least")
}
