package drawing

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/pieces/geometry"
)

// gridSteps is how many places are tried each way.
const gridSteps = 40

// Room finds the place inside a closed ring where a box of that half size can
// be scaled up most before it touches the ring or one of the lines, and that
// scale, at most the one given. Of equally good places it takes the most
// central. Where there is none it gives the middle of the ring, and 0.
func Room(ring orb.Ring, lines [][2]orb.Point, half orb.Point, most float64) (orb.Point, float64) {
	bound := ring.Bound()
	centre := bound.Center()
	found, scale, nearest := centre, 0.0, math.Inf(1)
	for i := 1; i < gridSteps; i++ {
		for j := 1; j < gridSteps; j++ {
			p := orb.Point{
				bound.Min[0] + (bound.Max[0]-bound.Min[0])*float64(i)/gridSteps,
				bound.Min[1] + (bound.Max[1]-bound.Min[1])*float64(j)/gridSteps,
			}
			if !geometry.Inside(ring, p) {
				continue
			}
			here := roomAt(p, ring, lines, half, scale, most)
			away := geometry.Distance(p, centre)
			if here > scale+1e-9 || here > scale-1e-9 && away < nearest-1e-9 {
				found, scale, nearest = p, here, away
			}
		}
	}
	return found, scale
}

// roomAt is the scale at a place, at most the one given. It stops as soon as
// that falls below what was found elsewhere, and passes over stretches that lie
// beyond the box, which makes it many times as fast.
func roomAt(p orb.Point, ring orb.Ring, lines [][2]orb.Point, half orb.Point, found, most float64) float64 {
	scale := most
	for i := 0; i < len(lines) && scale > found-1e-8; i++ {
		scale = narrowed(scale, geometry.Sub(lines[i][0], p), geometry.Sub(lines[i][1], p), half)
	}
	for i := 1; i < len(ring) && scale > found-1e-8; i++ {
		scale = narrowed(scale, geometry.Sub(ring[i-1], p), geometry.Sub(ring[i], p), half)
	}
	return scale
}

// narrowed is the scale that a segment leaves.
func narrowed(scale float64, a, b, half orb.Point) float64 {
	x, y := scale*half[0], scale*half[1]
	if a[0] > x && b[0] > x || a[0] < -x && b[0] < -x || a[1] > y && b[1] > y || a[1] < -y && b[1] < -y {
		return scale
	}
	return math.Min(scale, boxScale(a, b, half))
}

// boxScale is the factor by which a box of that half size about the origin
// can grow until it touches the segment from a to b: the least of
// max(|x| / half x, |y| / half y) along the segment. That is least at an end
// or where one of the lines x = 0, y = 0, |x| / half x = |y| / half y crosses.
func boxScale(a, b, half orb.Point) float64 {
	a, b = orb.Point{a[0] / half[0], a[1] / half[1]}, orb.Point{b[0] / half[0], b[1] / half[1]}
	reach := func(p orb.Point) float64 { return math.Max(math.Abs(p[0]), math.Abs(p[1])) }
	least := math.Min(reach(a), reach(b))
	for _, line := range [4]orb.Point{{1, 0}, {0, 1}, {1, 1}, {1, -1}} {
		from, to := line[0]*a[0]+line[1]*a[1], line[0]*b[0]+line[1]*b[1]
		if from*to < 0 {
			least = math.Min(least, reach(geometry.Between(a, b, from/(from-to))))
		}
	}
	return least
}
