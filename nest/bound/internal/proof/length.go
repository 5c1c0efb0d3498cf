// Package proof proves lengths that no layout on a strip can beat.
//
// The main bound looks at upright sections. At every x of the strip, the
// sections of the pieces laid there are intervals of [0, width] that do not
// overlap. So a dual feasible function (see dual) of their lengths, as shares
// of the width, adds up to 1 at most; and integrated over x, to the length of
// the strip at most. Swapping integral and sum, each piece contributes the
// integral over its own outline, wherever it lies; with several turns, the
// least of them. This holds for outlines of any shape, however they interlock.
//
// The functions are those of Fekete and Schepers (Math. Programming 91, 2001),
// which include the bounds of Martello and Toth (Discrete Applied Mathematics
// 28, 1990) for items that do not pass each other.
//
// With the identity, this is the bound by area. With a function that counts
// sections above one half as 1 and all others as nothing, it is the queue of
// the pieces that cannot pass each other.
package proof

import "math"

// Length returns a length that no layout can beat: the largest x of its
// pieces is at least that.
func Length(strip Strip, pieces []Piece) float64 { return lengthUpTo(strip, pieces, math.Inf(1)) }

// Exceeds reports whether Length is more than a limit, and stops at the first proof.
func Exceeds(strip Strip, pieces []Piece, limit float64) bool {
	return lengthUpTo(strip, pieces, limit) > limit
}

// lengthUpTo is the Length, or any that is proven and more than enough.
func lengthUpTo(strip Strip, pieces []Piece, enough float64) float64 {
	best := 0.0
	for _, p := range pieces {
		best = max(best, p.Least)
	}
	for _, by := range []func() float64{
		func() float64 { return bySections(strip, pieces, enough) },
		func() float64 { return byPins(strip, pieces) },
		func() float64 { return byOrder(strip, pieces, enough) },
		func() float64 { return byQueue(strip, pieces) },
	} {
		if best > enough {
			break
		}
		best = max(best, by())
	}
	return best
}
