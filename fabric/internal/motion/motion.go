// Package motion moves pieces, and clips rings: what plans are made with. What proves a
// plan has its own.
package motion

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

// TurnedBy is the turn of a motion as MotionOf takes it, in degrees.
func TurnedBy(m pieces.Motion) float64 {
	if m.Mirrors() {
		return WholeTurn(portable.Atan2(-m.C, -m.A) * 180 / math.Pi)
	}
	return WholeTurn(portable.Atan2(m.C, m.A) * 180 / math.Pi)
}

// Reflection is the mirror image about the line through a point at an angle
// in degrees.
func Reflection(through orb.Point, degrees float64) pieces.Motion {
	sin, cos := portable.SincosDegrees(2 * degrees)
	m := pieces.Motion{A: cos, B: sin, C: sin, D: -cos}
	image := m.Apply(through)
	m.E, m.F = through[0]-image[0], through[1]-image[1]
	return m
}

// Inverse of a motion that keeps lengths.
func Inverse(m pieces.Motion) pieces.Motion {
	det := float64(m.A*m.D) - float64(m.B*m.C)
	out := pieces.Motion{A: m.D / det, B: -m.B / det, C: -m.C / det, D: m.A / det}
	origin := out.Apply(orb.Point{m.E, m.F})
	out.E, out.F = -origin[0], -origin[1]
	return out
}

// EndsOf an edge are its first and its last point.
func EndsOf(edge pieces.Edge) (start, end orb.Point) {
	return edge.Path[0].Start(), edge.Path[len(edge.Path)-1].End()
}

// AngleOf the way from one point to another, in degrees against the x axis.
func AngleOf(from, to orb.Point) float64 {
	return portable.Atan2(to[1]-from[1], to[0]-from[0]) * 180 / math.Pi
}

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

// Mapped moves a line.
func Mapped[L ~[]orb.Point](m pieces.Motion, line L) orb.LineString {
	out := make(orb.LineString, len(line))
	for i, p := range line {
		out[i] = m.Apply(p)
	}
	return out
}
