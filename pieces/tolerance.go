package pieces

import "math"

// joinTolerance is how near, in mm, two things must be to count as meeting:
// the ends of neighbouring edges, a dart's legs and its mouth.
const joinTolerance = 0.001

// checkTolerance is the flattening at which outlines are checked, mm.
const checkTolerance = 0.01

// snap is how near, in mm, two points must be to count as one when an outline
// is settled: far below cutting, far above the rounding of float64 at 10 m
// (2e-12 mm).
const snap = 1e-7

// finite reports whether every number is one.
func finite(numbers ...float64) bool {
	for _, x := range numbers {
		if math.IsNaN(x) || math.IsInf(x, 0) {
			return false
		}
	}
	return true
}

// straight is the sine below which two edges are one straight line.
const straight = 1e-9
