package layout

import (
	"math"

	"github.com/paulmach/orb"
)

// Corners returns the ring open and without corners that repeat the one
// before. It is a new ring.
func Corners(ring orb.Ring) orb.Ring {
	out := make(orb.Ring, 0, len(ring))
	for _, q := range ring {
		if len(out) == 0 || out[len(out)-1] != q {
			out = append(out, q)
		}
	}
	for len(out) > 1 && out[0] == out[len(out)-1] {
		out = out[:len(out)-1]
	}
	return out
}

// Area returns the area that a ring encloses, closed or not. It is
// measured from the first corner, so that a ring far from the origin loses no
// digits.
func Area(ring orb.Ring) float64 {
	twice := 0.0
	for i := 2; i < len(ring); i++ {
		twice += cross(ring[0], ring[i-1], ring[i])
	}
	return math.Abs(twice) / 2
}
