package nofit

import (
	"cmp"
	"math"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/nest/internal/convex"
)

// box is upright.
type box struct{ x0, y0, x1, y1 float64 }

func boxOf(points []orb.Point) box {
	b := box{math.Inf(1), math.Inf(1), math.Inf(-1), math.Inf(-1)}
	for _, p := range points {
		b.x0, b.x1 = min(b.x0, p[0]), max(b.x1, p[0])
		b.y0, b.y1 = min(b.y0, p[1]), max(b.y1, p[1])
	}
	return b
}

// pair of convex parts to be summed, with the box of the sum.
type pair struct {
	a, b []orb.Point
	box
}

// pairsOf each part of one outline with each of the other: the largest sums first, since
// they cover most.
func pairsOf(a, b [][]orb.Point) []pair {
	pairs := make([]pair, 0, len(a)*len(b))
	boxes := make([]box, len(a))
	for k, p := range a {
		boxes[k] = boxOf(p)
	}
	for _, q := range b {
		at := boxOf(q)
		for k, p := range a {
			of := boxes[k]
			pairs = append(pairs, pair{p, q, box{of.x0 + at.x0, of.y0 + at.y0, of.x1 + at.x1, of.y1 + at.y1}})
		}
	}
	slices.SortStableFunc(pairs, func(p, q pair) int { return cmp.Compare(q.area(), p.area()) })
	return pairs
}

func (b box) area() float64 { return float64((b.x1 - b.x0) * (b.y1 - b.y0)) }

// grown returns parts turned by 180 degrees, with the gap about them.
func grown(parts [][]orb.Point, gap float64) [][]orb.Point {
	out := make([][]orb.Point, len(parts))
	for k, q := range parts {
		out[k] = convex.Negate(q)
		if gap > 0 {
			out[k] = convex.Sum(out[k], convex.Disc(gap))
		}
	}
	return out
}

// region is one convex part sum with its half-planes and box.
type region struct {
	points []orb.Point
	planes []plane
	box
}

func newRegion(points []orb.Point) region {
	r := region{points: points, planes: make([]plane, 0, len(points)), box: boxOf(points)}
	for _, side := range convex.Sides(points) {
		r.planes = append(r.planes, plane{nx: side.NX, ny: side.NY, c: side.C})
	}
	return r
}

// localSum is a sum as seen from one cell: the half-planes that cross it.
type localSum struct{ planes []plane }
