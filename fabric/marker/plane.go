package marker

import (
	"math"

	"github.com/paulmach/orb"
)

// insideRing reports whether a point lies inside a closed ring (even-odd).
func insideRing(ring []orb.Point, p orb.Point) bool {
	inside := false
	for i := 1; i < len(ring); i++ {
		a, b := ring[i-1], ring[i]
		if (a[1] > p[1]) != (b[1] > p[1]) && p[0] < a[0]+(p[1]-a[1])/(b[1]-a[1])*(b[0]-a[0]) {
			inside = !inside
		}
	}
	return inside
}

// crossesBox reports whether a line string enters a box.
func crossesBox(line []orb.Point, box orb.Bound) bool {
	for i := 1; i < len(line); i++ {
		if segmentInBox(line[i-1], line[i], box) {
			return true
		}
	}
	return false
}

// segmentInBox clips the segment to the box (Liang and Barsky, 1984).
func segmentInBox(a, b orb.Point, box orb.Bound) bool {
	from, to := 0.0, 1.0
	for axis := range 2 {
		d := b[axis] - a[axis]
		if d == 0 {
			if a[axis] < box.Min[axis] || a[axis] > box.Max[axis] {
				return false
			}
			continue
		}
		t, u := (box.Min[axis]-a[axis])/d, (box.Max[axis]-a[axis])/d
		from, to = math.Max(from, math.Min(t, u)), math.Min(to, math.Max(t, u))
	}
	return from <= to
}

func grown(box orb.Bound, by float64) orb.Bound {
	return orb.Bound{Min: orb.Point{box.Min[0] - by, box.Min[1] - by}, Max: orb.Point{box.Max[0] + by, box.Max[1] + by}}
}

func contains(outer, inner orb.Bound) bool {
	return outer.Contains(inner.Min) && outer.Contains(inner.Max)
}

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
			if d := distance(p, bound.Center()); d < away && insideRing(ring, p) {
				best, away = p, d
			}
		}
	}
	return best
}
