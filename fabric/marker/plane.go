package marker

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/pieces/geometry"
)

// middleOf finds a point inside the ring, near the middle of its bounding box.
func middleOf(ring orb.Ring) orb.Point {
	bound := ring.Bound()
	best, away := ring[0], math.Inf(1)
	for i := 1; i < 12; i++ {
		for j := 1; j < 12; j++ {
			p := orb.Point{
				bound.Min[0] + (bound.Max[0]-bound.Min[0])*float64(i)/12,
				bound.Min[1] + (bound.Max[1]-bound.Min[1])*float64(j)/12,
			}
			if d := geometry.Distance(p, bound.Center()); d < away && geometry.Inside(ring, p) {
				best, away = p, d
			}
		}
	}
	return best
}

// crosses reports whether two segments cross, each from one side of the other
// to its other side.
func crosses(a, b, c, d orb.Point) bool {
	side := func(p, q, r orb.Point) float64 { return (q[0]-p[0])*(r[1]-p[1]) - (q[1]-p[1])*(r[0]-p[0]) }
	return side(a, b, c)*side(a, b, d) < 0 && side(c, d, a)*side(c, d, b) < 0
}
