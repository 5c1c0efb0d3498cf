package verify

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/nest/layout"
)

// placed is where a placement puts the outline of its item: mirrored in x, if
// its turn asks, turned counter-clockwise about the origin, then moved. It
// states the meaning of a placement once more, apart from the code that the
// search uses.
func placed(item layout.Item, at layout.Placement) orb.Ring {
	turn := item.Turns[at.Turn]
	along := 1.0
	if turn.Mirrored {
		along = -1
	}
	cos, sin := direction(turn.Degrees + at.Tilt)
	ring := make(orb.Ring, len(item.Outline))
	for i, q := range item.Outline {
		x, y := along*q[0], q[1]
		ring[i] = orb.Point{at.X + float64(x*cos) - float64(y*sin), at.Y + float64(x*sin) + float64(y*cos)}
	}
	return ring
}

// direction returns the cosine and the sine of an angle in degrees, those of
// quarter turns without rounding. They are those of math, not of the search, whose faults
// they would share; that math may differ in the last bit from processor to processor
// decides nothing, since what a search finds keeps clear of the tolerances by far more.
func direction(degrees float64) (cos, sin float64) {
	switch rest := math.Remainder(degrees, 360); rest {
	case 0:
		return 1, 0
	case 90:
		return 0, 1
	case -90:
		return 0, -1
	case 180, -180:
		return -1, 0
	default:
		return math.Cos(rest * math.Pi / 180), math.Sin(rest * math.Pi / 180)
	}
}
