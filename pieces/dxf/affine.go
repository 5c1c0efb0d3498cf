package dxf

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/pieces"
	"ellwand/pieces/geometry"
)

// affine is the map (x, y) to (a x + b y + e, c x + d y + f).
type affine struct{ a, b, c, d, e, f float64 }

var identity = affine{a: 1, d: 1}

func (m affine) apply(p orb.Point) orb.Point {
	return orb.Point{float64(m.a*p[0]) + float64(m.b*p[1]) + m.e, float64(m.c*p[0]) + float64(m.d*p[1]) + m.f}
}

// after is m after n.
func (m affine) after(n affine) affine {
	return affine{
		float64(m.a*n.a) + float64(m.b*n.c), float64(m.a*n.b) + float64(m.b*n.d),
		float64(m.c*n.a) + float64(m.d*n.c), float64(m.c*n.b) + float64(m.d*n.d),
		float64(m.a*n.e) + float64(m.b*n.f) + m.e, float64(m.c*n.e) + float64(m.d*n.f) + m.f,
	}
}

func (m affine) determinant() float64 { return float64(m.a*m.d) - float64(m.b*m.c) }

// keepsAngles says that circles stay circles.
func (m affine) keepsAngles() bool {
	size := math.Hypot(m.a, m.c)
	near := func(x, y float64) bool { return math.Abs(x-y) <= 1e-12*size }
	return near(m.a, m.d) && near(m.b, -m.c) || near(m.a, -m.d) && near(m.b, m.c)
}

func (m affine) scale() float64 { return math.Sqrt(math.Abs(m.determinant())) }

// curve is a curve mapped: an arc that does not stay one becomes Bezier curves.
func (m affine) curve(c pieces.Curve) pieces.Path {
	switch c := c.(type) {
	case pieces.Line:
		return pieces.Path{pieces.Line{From: m.apply(c.From), To: m.apply(c.To)}}
	case pieces.Bezier:
		return pieces.Path{pieces.Bezier{P0: m.apply(c.P0), P1: m.apply(c.P1), P2: m.apply(c.P2), P3: m.apply(c.P3)}}
	case pieces.Arc:
		if m.keepsAngles() {
			return pieces.Path{c.Map(pieces.Motion{A: m.a, B: m.b, C: m.c, D: m.d, E: m.e, F: m.f})}
		}
		return ellipse(m.after(affine{c.Radius, 0, 0, c.Radius, c.Centre[0], c.Centre[1]}), c.Begin, c.Sweep)
	}
	return nil
}

// path mapped.
func (m affine) path(p pieces.Path) pieces.Path {
	out := make(pieces.Path, 0, len(p))
	for _, c := range p {
		out = append(out, m.curve(c)...)
	}
	return out
}

// ellipse is the image of an arc of the unit circle as Bezier curves over at most an
// eighth of a half turn, which lie within 1e-7 of its radius [source.Geometry].
func ellipse(m affine, begin, sweep float64) pieces.Path {
	n := max(1, int(math.Ceil(math.Abs(sweep)/(math.Pi/8))))
	step := sweep / float64(n)
	reach := 4 * math.Tan(step/4) / 3
	var out pieces.Path
	at := func(angle float64) (p, along orb.Point) {
		sin, cos := math.Sincos(angle)
		return orb.Point{cos, sin}, orb.Point{-sin, cos}
	}
	for i := range n {
		p0, u0 := at(begin + float64(float64(i)*step))
		p3, u3 := at(begin + float64(float64(i+1)*step))
		b := pieces.Bezier{P0: p0, P1: geometry.Add(p0, geometry.Times(u0, reach)),
			P2: geometry.Sub(p3, geometry.Times(u3, reach)), P3: p3}
		out = append(out, m.curve(b)...)
	}
	return out
}
