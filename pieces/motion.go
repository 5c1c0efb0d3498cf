package pieces

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/nest/portable"
	"ellwand/pieces/geometry"
)

// Identity moves nothing.
func Identity() Motion { return Motion{A: 1, D: 1} }

// Move shifts by (dx, dy) mm.
func Move(dx, dy float64) Motion { return Motion{A: 1, D: 1, E: dx, F: dy} }

// Turn turns counter-clockwise about the origin. Quarter turns are exact.
func Turn(degrees float64) Motion {
	sin, cos := portable.SincosDegrees(degrees)
	return Motion{A: cos, B: -sin, C: sin, D: cos}
}

// MirrorX gives the mirror image left to right: x becomes -x.
func MirrorX() Motion { return Motion{A: -1, D: 1} }

// MirrorY gives the mirror image top to bottom: y becomes -y.
func MirrorY() Motion { return Motion{A: 1, D: -1} }

// MirrorAbout gives the mirror image about the line through two points, which
// must differ.
func MirrorAbout(a, b orb.Point) Motion {
	u := geometry.Unit(geometry.Sub(b, a))
	cos, sin := float64(u[0]*u[0])-float64(u[1]*u[1]), 2*u[0]*u[1]
	m := Motion{A: cos, B: sin, C: sin, D: -cos}
	image := m.Apply(a)
	m.E, m.F = a[0]-image[0], a[1]-image[1]
	return m
}

// Scale makes everything larger by the factor, about the origin.
func Scale(factor float64) Motion { return Motion{A: factor, D: factor} }

// Then is the motion that does m first and n after it.
func (m Motion) Then(n Motion) Motion {
	origin := n.Apply(orb.Point{m.E, m.F})
	return Motion{
		A: float64(n.A*m.A) + float64(n.B*m.C), B: float64(n.A*m.B) + float64(n.B*m.D),
		C: float64(n.C*m.A) + float64(n.D*m.C), D: float64(n.C*m.B) + float64(n.D*m.D),
		E: origin[0], F: origin[1],
	}
}

// Apply maps a point.
func (m Motion) Apply(p orb.Point) orb.Point {
	return orb.Point{float64(m.A*p[0]) + float64(m.B*p[1]) + m.E, float64(m.C*p[0]) + float64(m.D*p[1]) + m.F}
}

// Mirrors reports whether the motion turns shapes over.
func (m Motion) Mirrors() bool { return float64(m.A*m.D)-float64(m.B*m.C) < 0 }

// scale is the factor by which the motion stretches lengths; exactly 1 for a
// turn, whatever its rounding.
func (m Motion) scale() float64 {
	k := portable.Hypot(m.A, m.C)
	if math.Abs(k-1) < 1e-12 {
		return 1
	}
	return k
}
