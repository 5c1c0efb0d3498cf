package pieces

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/pieces/geometry"
)

// crossing is where two segments cross or touch.
func crossing(a, b, c, d orb.Point) (orb.Point, bool) {
	u, v := geometry.Sub(b, a), geometry.Sub(d, c)
	turn := geometry.Cross(u, v)
	if math.Abs(turn) <= 1e-12*geometry.Norm(u)*geometry.Norm(v) {
		return orb.Point{}, false
	}
	s, t := geometry.Cross(geometry.Sub(c, a), v)/turn, geometry.Cross(geometry.Sub(c, a), u)/turn
	if s < -straight || s > 1+straight || t < -straight || t > 1+straight {
		return orb.Point{}, false
	}
	return geometry.Between(a, b, s), true
}

// runsBack reports whether the way from a over b to c returns on itself.
func runsBack(a, b, c orb.Point) bool {
	return geometry.Dot(geometry.Sub(b, a), geometry.Sub(c, b)) < 0 &&
		(geometry.SegmentDistance(a, b, c) <= snap || geometry.SegmentDistance(c, a, b) <= snap)
}

// touching finds a point where two segments cross or come within snap.
func touching(a, b, c, d orb.Point) (orb.Point, bool) {
	for _, p := range [2]orb.Point{a, b} {
		if geometry.SegmentDistance(p, c, d) <= snap {
			return p, true
		}
	}
	for _, p := range [2]orb.Point{c, d} {
		if geometry.SegmentDistance(p, a, b) <= snap {
			return p, true
		}
	}
	return crossing(a, b, c, d)
}
