package fabric

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/nest/layout"
	"ellwand/pieces"
)

// motionOf is the move that nest makes of a template: mirrored in x first, if
// asked, then turned about the origin, then moved.
func motionOf(degrees float64, mirrored bool, x, y float64) pieces.Motion {
	sin, cos := math.Sincos(radians(degrees))
	if math.Mod(degrees, 90) == 0 {
		sin, cos = math.Round(sin), math.Round(cos)
	}
	flip := 1.0
	if mirrored {
		flip = -1
	}
	return pieces.Motion{A: cos * flip, B: -sin, C: sin * flip, D: cos, E: x, F: y}
}

// placementMotion is the same for a placement on a strip.
func placementMotion(problem layout.Problem, at layout.Placement) pieces.Motion {
	turn := problem.Items[at.Item].Turns[at.Turn]
	return motionOf(turn.Degrees+at.Tilt, turn.Mirrored, at.X, at.Y)
}

// apply maps a point.
func apply(m pieces.Motion, p orb.Point) orb.Point { return m.Apply(p) }

// after is the motion that makes first and then m.
func after(m, first pieces.Motion) pieces.Motion { return first.Then(m) }

// reflects reports whether the motion turns a piece face down.
func reflects(m pieces.Motion) bool { return m.Mirrors() }

// turnedBy is the turn of a motion as motionOf takes it, in degrees.
func turnedBy(m pieces.Motion) float64 {
	if reflects(m) {
		return wholeTurn(math.Atan2(-m.C, -m.A) * 180 / math.Pi)
	}
	return wholeTurn(math.Atan2(m.C, m.A) * 180 / math.Pi)
}

// reflection is the mirror image about the line through a point at an angle
// in degrees.
func reflection(through orb.Point, degrees float64) pieces.Motion {
	sin, cos := math.Sincos(radians(2 * degrees))
	if math.Mod(degrees, 45) == 0 {
		sin, cos = math.Round(sin), math.Round(cos)
	}
	m := pieces.Motion{A: cos, B: sin, C: sin, D: -cos}
	image := apply(m, through)
	m.E, m.F = through[0]-image[0], through[1]-image[1]
	return m
}
