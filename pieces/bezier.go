package pieces

import (
	"math"

	"github.com/paulmach/orb"
	"gonum.org/v1/gonum/integrate/quad"

	"ellwand/nest/portable"
	"ellwand/pieces/geometry"
)

const (
	// leastTolerance is the finest flattening in mm; a finer one would only
	// draw arithmetic noise.
	leastTolerance = 1e-4
	// mostChords bounds the chords of one curve, whatever the tolerance, and
	// deepest the halvings of a Bezier: 2^14 chords.
	mostChords = 1 << deepest
	deepest    = 14
)

func usable(tolerance float64) float64 {
	if !(tolerance > leastTolerance) {
		return leastTolerance
	}
	return tolerance
}

// Start of the curve.
func (b Bezier) Start() orb.Point { return b.P0 }

// End of the curve.
func (b Bezier) End() orb.Point { return b.P3 }

// At returns the point at parameter t, by de Casteljau's construction.
func (b Bezier) At(t float64) orb.Point {
	before, _ := b.split(t)
	return before.P3
}

// Tangent is the unit direction of travel at parameter t. Where the curve
// stands still (a control point on its end, a cusp), it is the direction in
// which it sets off again, or at its end that in which it arrives.
func (b Bezier) Tangent(t float64) orb.Point {
	before, after := b.split(t)
	size := geometry.Distance(b.P0, b.P1) + geometry.Distance(b.P1, b.P2) + geometry.Distance(b.P2, b.P3)
	for _, p := range []orb.Point{after.P1, after.P2, after.P3} {
		if d := geometry.Sub(p, after.P0); geometry.Norm(d) > 1e-9*size {
			return geometry.Unit(d)
		}
	}
	for _, p := range []orb.Point{before.P2, before.P1, before.P0} {
		if d := geometry.Sub(before.P3, p); geometry.Norm(d) > 1e-9*size {
			return geometry.Unit(d)
		}
	}
	return orb.Point{}
}

// Split cuts the curve at parameter t, by de Casteljau's construction.
func (b Bezier) Split(t float64) (before, after Curve) { return b.split(t) }

func (b Bezier) split(t float64) (before, after Bezier) {
	p01, p12, p23 := geometry.Between(b.P0, b.P1, t), geometry.Between(b.P1, b.P2, t), geometry.Between(b.P2, b.P3, t)
	p012, p123 := geometry.Between(p01, p12, t), geometry.Between(p12, p23, t)
	middle := geometry.Between(p012, p123, t)
	return Bezier{b.P0, p01, p012, middle}, Bezier{middle, p123, p23, b.P3}
}

// Reverse runs the other way.
func (b Bezier) Reverse() Curve { return Bezier{b.P3, b.P2, b.P1, b.P0} }

// Map moves the curve.
func (b Bezier) Map(m Motion) Curve {
	return Bezier{m.Apply(b.P0), m.Apply(b.P1), m.Apply(b.P2), m.Apply(b.P3)}
}

// gaussPoints is the order of the quadrature. 16 points measure an armhole
// curve to 1e-11 mm in one go; harder curves are halved.
const gaussPoints = 16

var gaussAt, gaussWeight = func() (at, weight [gaussPoints]float64) {
	quad.Legendre{}.FixedLocations(at[:], weight[:], 0, 1)
	return at, weight
}()

// speed is |B'(t)|.
func (b Bezier) speed(t float64) float64 {
	s := 1 - t
	d0, d1, d2 := geometry.Sub(b.P1, b.P0), geometry.Sub(b.P2, b.P1), geometry.Sub(b.P3, b.P2)
	x := float64(s*s*d0[0]) + float64(2*s*t*d1[0]) + float64(t*t*d2[0])
	y := float64(s*s*d0[1]) + float64(2*s*t*d1[1]) + float64(t*t*d2[1])
	return 3 * portable.Hypot(x, y)
}

// gauss is the length by one Gauss-Legendre rule.
func (b Bezier) gauss() float64 {
	sum := 0.0
	for i, at := range gaussAt {
		sum += float64(gaussWeight[i] * b.speed(at))
	}
	return sum
}

// Length in mm by Gauss-Legendre quadrature, halved until both halves agree
// with the whole to 1e-9 mm and neither rule can have missed a cusp, so that
// the sum is right within 1e-6 mm.
func (b Bezier) Length() float64 { return b.adaptive(b.gauss(), 30) }

// lengthTo is the length from the start to parameter t.
func (b Bezier) lengthTo(t float64) float64 {
	before, _ := b.split(t)
	return before.Length()
}

func (b Bezier) adaptive(whole float64, depth int) float64 {
	before, after := b.split(0.5)
	left, right := before.gauss(), after.gauss()
	agree := !(math.Abs(left+right-whole) > 1e-9) && b.isGentle()
	if depth == 0 || agree {
		return left + right
	}
	return before.adaptive(left, depth-1) + after.adaptive(right, depth-1)
}

// isGentle reports whether the curve keeps within 60 degrees of one direction,
// which it does when its control polygon does: then its speed has no sharp
// dip, as at a cusp, that two quadratures could both step over.
func (b Bezier) isGentle() bool {
	chord := geometry.Sub(b.P3, b.P0)
	for _, d := range [3]orb.Point{geometry.Sub(b.P1, b.P0), geometry.Sub(b.P2, b.P1), geometry.Sub(b.P3, b.P2)} {
		if geometry.Dot(d, chord) < 0.5*geometry.Norm(d)*geometry.Norm(chord) {
			return false
		}
	}
	return true
}

// Flatten halves the curve until every part is flat enough.
func (b Bezier) Flatten(tolerance float64) orb.LineString {
	out := orb.LineString{b.P0}
	return b.flatten(usable(tolerance), deepest, out)
}

func (b Bezier) flatten(tolerance float64, depth int, out orb.LineString) orb.LineString {
	if depth == 0 || b.bulge() <= tolerance {
		return append(out, b.P3)
	}
	before, after := b.split(0.5)
	out = before.flatten(tolerance, depth-1, out)
	return after.flatten(tolerance, depth-1, out)
}

// bulge bounds how far the curve strays from its chord, mm. The curve lies in
// the hull of its control points; where both inner ones lie beside the chord,
// not before or after it, its distance from the chord is at most
// 3 t (1-t) max(d1, d2) <= 3/4 max(d1, d2).
func (b Bezier) bulge() float64 {
	chord := geometry.Sub(b.P3, b.P0)
	square := geometry.Dot(chord, chord)
	s1, s2 := geometry.Dot(geometry.Sub(b.P1, b.P0), chord), geometry.Dot(geometry.Sub(b.P2, b.P0), chord)
	far := math.Max(geometry.SegmentDistance(b.P1, b.P0, b.P3), geometry.SegmentDistance(b.P2, b.P0, b.P3))
	if s1 >= 0 && s1 <= square && s2 >= 0 && s2 <= square {
		return far * 3 / 4
	}
	return far
}
