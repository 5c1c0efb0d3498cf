package fabric_test

import (
	"fmt"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/require"

	"ellwand/fabric"
	"ellwand/fabric/cloth"
	"ellwand/pieces"
	"ellwand/testdata/sample"
)

// tile is a rectangle of a jigsaw: along the warp and across.
type tile struct{ x, y, along, across float64 }

// guillotine cuts a rectangle from edge to edge, and the parts again. All cuts
// are at whole multiples of the units.
func guillotine(r *rand.Rand, whole tile, unitX, unitY float64, cuts int) []tile {
	tiles := []tile{whole}
	for range cuts {
		k := r.IntN(len(tiles))
		t := tiles[k]
		if r.IntN(2) == 0 {
			if n := int(t.along/unitX + 0.5); n > 1 {
				at := unitX * float64(1+r.IntN(n-1))
				tiles[k].along = at
				tiles = append(tiles, tile{t.x + at, t.y, t.along - at, t.across})
			}
			continue
		}
		if n := int(t.across/unitY + 0.5); n > 1 {
			at := unitY * float64(1+r.IntN(n-1))
			tiles[k].across = at
			tiles = append(tiles, tile{t.x, t.y + at, t.along, t.across - at})
		}
	}
	return tiles
}

// cutFrom makes the pieces that a jigsaw on one bed of a lay gives, by the
// rules of the lay: what lies on a fold is a half or its own mirror image, what
// lies on two plies is a pair or two single pieces.
func cutFrom(r *rand.Rand, lay fabric.Lay, tiles []tile, prefix string, gap float64) []pieces.Piece {
	var all []pieces.Piece
	for i, t := range tiles {
		p := rectangle(fmt.Sprintf("%s %d", prefix, i), t.across-gap, t.along-gap, 1)
		double := lay != fabric.Open
		hasFold := lay == fabric.FoldedAlong && t.y == 0 && gap == 0
		switch {
		case hasFold && r.IntN(2) == 0:
			p.Fold = "left"
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
		lay := fabric.AllLays()[r.IntN(7)]
		on := func(lay fabric.Lay, prefix string, length, width float64) []pieces.Piece {
			return cutFrom(r, lay, guillotine(r, tile{0, 0, length, width}, unitX, unitY, 1+r.IntN(8)), prefix, c.Gap)
		}
		var all []pieces.Piece
		known := length
		switch lay {
		case fabric.FoldedAlong:
			c.Width = 2 * (width + 10)
			all = on(fabric.FoldedAlong, "piece", length, width)
		case fabric.BothSelvedgesIn: // two halves, with the selvedges between
			c.Width = 4 * (width + 10)
			all = append(on(fabric.FoldedAlong, "near", length, width), on(fabric.FoldedAlong, "far", length, width)...)
		case fabric.SelvedgeIn: // as much on two plies as on one
			c.Width = 3*width + 30
			all = append(on(fabric.FoldedAlong, "double", length, width), on(fabric.Open, "single", length, width)...)
		case fabric.InStretches:
			c.Width, known = 2*(width+10), 2*length
			all = append(on(fabric.FoldedAlong, "folded", length, width), on(fabric.Open, "open", length, 2*width)...)
		default:
			c.Width = width + 20
			all = on(lay, "piece", length, width)
		}
		if c.Gap > 0 {
			known -= c.Gap / 2 // the last piece ends before the cut
		}
		got, err := fabric.Require(t.Context(), c, all, fabric.Options{Iterations: 1, Workers: 1, Lays: []fabric.Lay{lay}})
		if err != nil { // the lay cannot match, or the nap forbids it
			require.NotErrorIs(t, err, fabric.ErrInternal, "jigsaw %d, %s", number, lay)
			continue
		}
		count++
		bound := got.Lays[0].Bound
		require.LessOrEqual(t, bound, known*(1+1e-6), "jigsaw %d, %s", number, lay)
		if c.Gap == 0 && bound > known*(1-1e-6) {
			tight++
		}
	}
	require.Greater(t, count, 2*jigsaws/3)
	require.Greater(t, tight, count/3, "the bound of a jigsaw is its area at least")
}
