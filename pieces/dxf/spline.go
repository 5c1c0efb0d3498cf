package dxf

import (
	"slices"

	"github.com/paulmach/orb"

	"ellwand/pieces"
	"ellwand/pieces/geometry"
	"ellwand/pieces/linework"
	"ellwand/pieces/outline"
)

// weighted is a control point in homogeneous coordinates: x w, y w, w.
type weighted [3]float64

func (a weighted) between(b weighted, t float64) (out weighted) {
	for i := range out {
		out[i] = float64((1-t)*a[i]) + float64(t*b[i])
	}
	return out
}

func (a weighted) point() orb.Point { return orb.Point{a[0] / a[2], a[1] / a[2]} }

// mostDegree of a spline [source.OwnChoice].
const mostDegree = 11

// readSpline reads a spline by its control points, or by the points that it passes.
func readSpline(r record, e *entity) error {
	var knots, weights []float64
	var control, fit []orb.Point
	for _, g := range r.groups {
		var err error
		switch g.code {
		case 40:
			knots, err = appendNumber(r, g, knots)
		case 41:
			weights, err = appendNumber(r, g, weights)
		case 10:
			control, err = appendX(r, g, control)
		case 20:
			err = setY(r, g, control)
		case 11:
			fit, err = appendX(r, g, fit)
		case 21:
			err = setY(r, g, fit)
		}
		if err != nil {
			return err
		}
	}
	degree := r.whole(71)
	e.kind = lineKind
	switch {
	case len(control) == 0 && len(fit) >= 2:
		e.path = outline.Through(slices.CompactFunc(fit, func(a, b orb.Point) bool { return geometry.Distance(a, b) < 1e-9 }))
		return nil
	case degree < 1 || degree > mostDegree || len(control) <= degree || len(knots) != len(control)+degree+1 ||
		!slices.IsSorted(knots) || len(weights) > 0 && len(weights) != len(control):
		return r.fault(linework.SplineAmiss, 0)
	}
	b := bspline{degree: degree, knots: knots}
	for i, p := range control {
		w := 1.0
		if len(weights) > 0 {
			w = weights[i]
		}
		if !(w > 0) {
			return r.fault(linework.NoWeight, w)
		}
		b.isRational = b.isRational || w != 1
		b.control = append(b.control, weighted{float64(p[0] * w), float64(p[1] * w), w})
	}
	e.path = b.path()
	return nil
}

func appendNumber(r record, g group, to []float64) ([]float64, error) {
	x, err := r.s.number(g)
	return append(to, x), err
}

func appendX(r record, g group, to []orb.Point) ([]orb.Point, error) {
	x, err := r.s.number(g)
	return append(to, orb.Point{x, 0}), err
}

func setY(r record, g group, of []orb.Point) error {
	y, err := r.s.number(g)
	if len(of) > 0 {
		of[len(of)-1][1] = y
	}
	return err
}

// bspline by its control points and knots.
type bspline struct {
	degree     int
	knots      []float64
	control    []weighted
	isRational bool
}

// path of the spline: a Bezier curve between two knots, exact where the degree is at
// most 3 and all weights are the same, several close to it otherwise.
func (b bspline) path() pieces.Path {
	var out pieces.Path
	for k := b.degree; k < len(b.control); k++ {
		if b.knots[k+1] <= b.knots[k] {
			continue
		}
		points := b.bezier(k)
		if b.isRational || b.degree > 3 {
			out = append(out, hermite(points)...)
			continue
		}
		out = append(out, raised(points))
	}
	return out
}

// bezier is the stretch of a spline from one knot to the next by the control points of
// a Bezier curve: its blossom at j times the end and the rest the start (Ramshaw,
// Blossoms are polar forms, 1989) [source.Geometry].
func (b bspline) bezier(k int) []weighted {
	out := make([]weighted, b.degree+1)
	from, to := b.knots[k], b.knots[k+1]
	for j := range out {
		d := slices.Clone(b.control[k-b.degree : k+1])
		for r := 1; r <= b.degree; r++ {
			u := from
			if r <= j {
				u = to
			}
			for i := b.degree; i >= r; i-- {
				low, high := b.knots[k-b.degree+i], b.knots[k+1+i-r]
				d[i] = d[i-1].between(d[i], (u-low)/(high-low))
			}
		}
		out[j] = d[b.degree]
	}
	return out
}

// raised is a Bezier curve of a degree up to 3 as one of degree 3.
func raised(p []weighted) pieces.Curve {
	switch len(p) {
	case 2:
		return pieces.Line{From: p[0].point(), To: p[1].point()}
	case 3:
		a, b, c := p[0].point(), p[1].point(), p[2].point()
		return pieces.Bezier{P0: a, P1: geometry.Between(a, b, 2.0/3), P2: geometry.Between(c, b, 2.0/3), P3: c}
	}
	return pieces.Bezier{P0: p[0].point(), P1: p[1].point(), P2: p[2].point(), P3: p[3].point()}
}

// shares of a stretch whose curve no Bezier curve of ours is [source.OwnChoice].
const shares = 16

// hermite are curves of the same ends and directions as shares of such a stretch: they
// lie off it by less than a millionth of its length (de Boor, A Practical Guide to
// Splines, 1978, chapter IV) [source.Geometry].
func hermite(p []weighted) pieces.Path {
	var out pieces.Path
	before, speed := rationalAt(p, 0)
	for i := 1; i <= shares; i++ {
		at, next := rationalAt(p, float64(i)/shares)
		const third = 1.0 / (3 * shares)
		out = append(out, pieces.Bezier{P0: before, P1: geometry.Add(before, geometry.Times(speed, third)),
			P2: geometry.Sub(at, geometry.Times(next, third)), P3: at})
		before, speed = at, next
	}
	return out
}

// rationalAt is the point of a rational Bezier curve at a parameter, and its speed.
func rationalAt(p []weighted, t float64) (at, speed orb.Point) {
	d := slices.Clone(p)
	for r := len(d) - 1; r > 1; r-- {
		for k := range r {
			d[k] = d[k].between(d[k+1], t)
		}
	}
	here := d[0].between(d[1], t)
	at = here.point()
	for k := range speed {
		slope := float64(len(p)-1) * (d[1][k] - d[0][k])
		weight := float64(len(p)-1) * (d[1][2] - d[0][2])
		speed[k] = (slope - float64(weight*at[k])) / here[2]
	}
	return at, speed
}
