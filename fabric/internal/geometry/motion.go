package geometry

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/nest/portable"
	"ellwand/pieces"
)

// MotionOf is the move that nest makes of a template: mirrored in x first, if
// asked, then turned about the origin, then moved.
func MotionOf(degrees float64, mirrored bool, x, y float64) pieces.Motion {
	sin, cos := portable.SincosDegrees(degrees)
	flip := 1.0
	if mirrored {
		flip = -1
	}
	return pieces.Motion{A: cos * flip, B: -sin, C: sin * flip, D: cos, E: x, F: y}
}

// Apply maps a point.
func Apply(m pieces.Motion, p orb.Point) orb.Point { return m.Apply(p) }

// After is the motion that makes first and then m.
func After(m, first pieces.Motion) pieces.Motion { return first.Then(m) }

// Reflects reports whether the motion turns a piece face down.
func Reflects(m pieces.Motion) bool { return m.Mirrors() }

// TurnedBy is the turn of a motion as motionOf takes it, in degrees.
func TurnedBy(m pieces.Motion) float64 {
	if Reflects(m) {
		return WholeTurn(portable.Atan2(-m.C, -m.A) * 180 / math.Pi)
	}
	return WholeTurn(portable.Atan2(m.C, m.A) * 180 / math.Pi)
}

// Reflection is the mirror image about the line through a point at an angle
// in degrees.
func Reflection(through orb.Point, degrees float64) pieces.Motion {
	sin, cos := portable.SincosDegrees(2 * degrees)
	m := pieces.Motion{A: cos, B: sin, C: sin, D: -cos}
	image := Apply(m, through)
	m.E, m.F = through[0]-image[0], through[1]-image[1]
	return m
}

// Inverse of a motion that keeps lengths.
func Inverse(m pieces.Motion) pieces.Motion {
	det := float64(m.A*m.D) - float64(m.B*m.C)
	out := pieces.Motion{A: m.D / det, B: -m.B / det, C: -m.C / det, D: m.A / det}
	origin := Apply(out, orb.Point{m.E, m.F})
	out.E, out.F = -origin[0], -origin[1]
	return out
}

func EndsOf(edge pieces.Edge) (start, end orb.Point) {
	return edge.Path[0].Start(), edge.Path[len(edge.Path)-1].End()
}

func AngleOf(from, to orb.Point) float64 {
	return portable.Atan2(to[1]-from[1], to[0]-from[0]) * 180 / math.Pi
}

func Radians(degrees float64) float64 { return degrees * math.Pi / 180 }

// WholeTurn brings an angle to 0 up to 360 and takes the rounding of the
// arctangent off it, so that quarter turns stay exact: 1e-9 degrees move the
// end of a 5 m piece by less than 1e-7 mm.
func WholeTurn(degrees float64) float64 {
	degrees = math.Round(math.Mod(degrees, 360)*1e9) / 1e9
	if degrees < 0 {
		degrees += 360
	}
	return degrees
}
