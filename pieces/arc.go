package pieces

import (
	"math"

	"ellwand/nest/portable"

	"github.com/paulmach/orb"
)

// Start of the arc.
func (a Arc) Start() orb.Point { return a.At(0) }

// End of the arc.
func (a Arc) End() orb.Point { return a.At(1) }

// At returns the point at parameter t.
func (a Arc) At(t float64) orb.Point {
	sin, cos := portable.Sincos(a.Begin + float64(t*a.Sweep))
	return orb.Point{a.Centre[0] + float64(a.Radius*cos), a.Centre[1] + float64(a.Radius*sin)}
}

// Tangent is the direction of travel at parameter t.
func (a Arc) Tangent(t float64) orb.Point {
	sin, cos := portable.Sincos(a.Begin + float64(t*a.Sweep))
	if a.Sweep < 0 {
		return orb.Point{sin, -cos}
	}
	return orb.Point{-sin, cos}
}

// Length of the arc in mm.
func (a Arc) Length() float64 { return float64(a.Radius * math.Abs(a.Sweep)) }

// Split cuts the arc at parameter t.
func (a Arc) Split(t float64) (before, after Curve) {
	first, second := a, a
	first.Sweep = float64(a.Sweep * t)
	second.Begin, second.Sweep = a.Begin+first.Sweep, a.Sweep-first.Sweep
	return first, second
}

// Reverse runs the other way.
func (a Arc) Reverse() Curve {
	a.Begin, a.Sweep = a.Begin+a.Sweep, -a.Sweep
	return a
}

// Map moves the arc.
func (a Arc) Map(m Motion) Curve {
	sin, cos := portable.Sincos(a.Begin)
	out := Arc{Centre: m.Apply(a.Centre), Radius: a.Radius * m.scale(), Sweep: a.Sweep}
	out.Begin = portable.Atan2(float64(m.C*cos)+float64(m.D*sin), float64(m.A*cos)+float64(m.B*sin))
	if m.Mirrors() {
		out.Sweep = -a.Sweep
	}
	return out
}

// Flatten returns points on the arc at even steps. The chord of a step s lies
// r (1 - cos(s/2)) inside the arc.
func (a Arc) Flatten(tolerance float64) orb.LineString {
	share := math.Min(1, usable(tolerance)/math.Max(a.Radius, 1e-9))
	step := math.Min(2*portable.Acos(1-share), math.Pi/2)
	n := int(math.Ceil(math.Abs(a.Sweep)/step - 1e-9))
	n = min(max(n, 1), mostChords)
	out := make(orb.LineString, n+1)
	for i := range out {
		out[i] = a.At(float64(i) / float64(n))
	}
	return out
}
