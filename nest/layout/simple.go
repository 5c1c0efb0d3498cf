package layout

import (
	"cmp"
	"math"
	"math/big"
	"slices"

	"github.com/paulmach/orb"
)

// selfContact finds a place where an open ring of distinct corners crosses or
// touches itself, or turns back along the edge before.
//
// Edges are sorted by their left end, so each is compared only with those
// that overlap it in x. The comparisons are exact.
func selfContact(ring orb.Ring) (orb.Point, bool) {
	n := len(ring)
	for i, b := range ring {
		a, c := ring[(i+n-1)%n], ring[(i+1)%n]
		back := float64((a[0]-b[0])*(c[0]-b[0]))+float64((a[1]-b[1])*(c[1]-b[1])) > 0
		if back && orientation(a, b, c) == 0 {
			return b, true
		}
	}
	type edge struct {
		index int
		box   orb.Bound
	}
	edges := make([]edge, n)
	for i, a := range ring {
		edges[i] = edge{i, boundOf(a, ring[(i+1)%n])}
	}
	slices.SortFunc(edges, func(a, b edge) int { return cmp.Compare(a.box.Min[0], b.box.Min[0]) })
	for i, e := range edges {
		for _, f := range edges[i+1:] {
			if f.box.Min[0] > e.box.Max[0] {
				break
			}
			apart := (e.index - f.index + n) % n
			if apart == 1 || apart == n-1 || !e.box.Intersects(f.box) {
				continue
			}
			a, b := ring[e.index], ring[(e.index+1)%n]
			c, d := ring[f.index], ring[(f.index+1)%n]
			if segmentsMeet(a, b, c, d) {
				return nearerEnd(a, b, c, d), true
			}
		}
	}
	return orb.Point{}, false
}

// nearerEnd is the end of either segment that lies nearest to the other: a
// place to show for a crossing.
func nearerEnd(a, b, c, d orb.Point) orb.Point {
	best, place := math.Inf(1), a
	for _, end := range []struct{ q, from, to orb.Point }{{a, c, d}, {b, c, d}, {c, a, b}, {d, a, b}} {
		if away := pointToSegment(end.q, end.from, end.to); away < best {
			best, place = away, end.q
		}
	}
	return place
}

// segmentsMeet reports, exactly, whether two segments whose bounding boxes
// meet have a point in common.
func segmentsMeet(a, b, c, d orb.Point) bool {
	return orientation(a, b, c)*orientation(a, b, d) <= 0 &&
		orientation(c, d, a)*orientation(c, d, b) <= 0
}

// orientation is 1 where a, b, c turn to the left, -1 to the right, and 0
// where they are in line: exactly.
//
// The float64 determinant is trusted when it exceeds its rounding error,
// (3 + 16e) e times the sum of the two products, e = 2^-53 (Shewchuk,
// "Adaptive precision floating-point arithmetic and fast robust geometric
// predicates", Discrete & Computational Geometry 18, 1997).
func orientation(a, b, c orb.Point) int {
	left := float64((a[0] - c[0]) * (b[1] - c[1]))
	right := float64((a[1] - c[1]) * (b[0] - c[0]))
	det := left - right
	if bound := 3.3306690738754716e-16 * (math.Abs(left) + math.Abs(right)); det > bound || -det > bound {
		return cmp.Compare(det, 0)
	}
	return exactOrientation(a, b, c)
}

func exactOrientation(a, b, c orb.Point) int {
	difference := func(p, q float64) *big.Rat {
		return new(big.Rat).Sub(new(big.Rat).SetFloat64(p), new(big.Rat).SetFloat64(q))
	}
	left := difference(a[0], c[0])
	left.Mul(left, difference(b[1], c[1]))
	right := difference(a[1], c[1])
	right.Mul(right, difference(b[0], c[0]))
	return left.Cmp(right)
}
