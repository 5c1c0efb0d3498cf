package puzzle

import "math"

// full is a whole turn in diamond angles.
const full = 4

// diamond is a direction as the place where it leaves the square |x| + |y| = 1, from -2
// to 2: 0 along x, 1 along y. It grows with the angle, and adds up as angles do around
// a point, without their rounding.
func diamond(x, y float64) float64 {
	at := y / (math.Abs(x) + math.Abs(y))
	switch {
	case x >= 0:
		return at
	case y >= 0:
		return 2 - at
	}
	return -2 - at
}

// turn from one direction to another, counter-clockwise.
func turn(from, to float64) float64 {
	if to < from {
		to += full
	}
	return to - from
}

// sector is a range of directions that is covered around a point, with the slack of the
// two at its ends.
type sector struct{ from, span, slackFrom, slackTo float64 }
