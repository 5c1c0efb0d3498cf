// Package tiling finds perfect tilings: rectangles that fill a larger
// rectangle without waste.
//
// The search goes depth first on the skyline of what is laid: it fills the
// lowest gap, leftmost first, with every rectangle that may stand there
// (Lesh, Marks, McMahon, Mitzenmacher, "Exhaustive approaches to 2D
// rectangular perfect packings", Information Processing Letters 90, 2004).
// A gap must be filled exactly, so it is given up when no subset of the
// remaining sides adds up to its width, nor any to what is missing above it
// (the subset-sum cut of Kenmochi, Imamichi, Nonobe, Yagiura, Nagamochi,
// "Exact algorithms for the two-dimensional strip packing problem with and
// without rotations", European Journal of Operational Research 198, 2009).
package tiling

import (
	"context"
	"math"
)

// Tile looks for positions, one a rectangle, that tile width (along y) by
// length (along x) without waste. The budget is a number of nodes of the
// search tree; a million take about a second. It returns no positions unless
// the outcome is Tiled. The result does not depend on time, unless the
// context ends the search.
//
// The time of such a search varies widely with the order in which it tries,
// and a lucky order finds a tiling at once. So searches along x and along y,
// with a skyline of few steps and of many, take turns on budgets that double
// (Gomes, Selman, Kautz, "Boosting combinatorial search through
// randomization", AAAI 1998); the first that ends decides.
func Tile(ctx context.Context, width, length float64, rects []Rect, budget int) ([]Position, Outcome) {
	if !fills(width, length, rects) {
		return nil, None
	}
	measured := newUnits(width, length, rects)
	const first = 5000
	for round, share := 0, first; budget > 0; round++ {
		s := newSearch(ctx, measured, round)
		s.nodes = min(share, budget)
		outcome := s.run()
		if outcome == Tiled {
			return s.positions(measured), Tiled
		}
		if outcome == None || ctx.Err() != nil {
			return nil, outcome
		}
		budget -= min(share, budget) - max(0, s.nodes)
		if round%orders == orders-1 {
			share *= 2
		}
	}
	return nil, GaveUp
}

// fills reports whether the areas add up and every rectangle has a size.
func fills(width, length float64, rects []Rect) bool {
	if !(width > 0) || !(length > 0) {
		return false
	}
	area := 0.0
	for _, r := range rects {
		if !(r.X > 0) || !(r.Y > 0) {
			return false
		}
		area += float64(r.X * r.Y)
	}
	return math.Abs(area-float64(width*length)) <= Accuracy*width*length
}
