// Package fitting draws lines and smooth curves through the many points of an outline
// that was traced, and keeps its corners.
//
// Lengths are millimetres.
package fitting

import (
	"math"

	"github.com/paulmach/orb"
	"gonum.org/v1/gonum/mat"

	"ellwand/pieces/geometry"
)

// ring is a closed row of points with the way along it to each.
type ring struct {
	points []orb.Point
	along  []float64 // from the first, mm
	length float64   // of all, back to the first
	trust  []float64 // in each point; nil for all alike
}

func ringOf(points []orb.Point) ring {
	r := ring{points: points, along: make([]float64, len(points))}
	for i, p := range points {
		r.along[i] = r.length
		r.length += geometry.Distance(p, points[(i+1)%len(points)])
	}
	return r
}

// at is a point by a number that may lie outside the row, and how far along the ring
// it is.
func (r ring) at(i int) (orb.Point, float64) {
	n := len(r.points)
	turns := math.Floor(float64(i) / float64(n))
	k := i - int(turns)*n
	return r.points[k], r.along[k] + turns*r.length
}

// trusted is how much a point counts, by its number.
func (r ring) trusted(i int) float64 {
	if r.trust == nil {
		return 1
	}
	n := len(r.points)
	return r.trust[(i%n+n)%n]
}

// parabola through points by least squares: its place, direction and bend where the way
// is 0.
type parabola [3]orb.Point

func (p parabola) place(s float64) orb.Point {
	return orb.Point{p[0][0] + s*(p[1][0]+s*p[2][0]), p[0][1] + s*(p[1][1]+s*p[2][1])}
}

func (p parabola) direction(s float64) orb.Point {
	return orb.Point{p[1][0] + 2*s*p[2][0], p[1][1] + 2*s*p[2][1]}
}

// through the points from one number to another, the way being counted from a place;
// of degree 1, a straight line, where it says so.
func (r ring) through(from, to int, zero float64, straight bool) (parabola, bool) {
	degree := 3
	if straight {
		degree = 2
	}
	rows, right := mat.NewDense(to-from+1, degree, nil), mat.NewDense(to-from+1, 2, nil)
	for i := from; i <= to; i++ {
		p, along := r.at(i)
		s := along - zero
		rows.SetRow(i-from, []float64{1, s, s * s}[:degree])
		right.SetRow(i-from, p[:])
	}
	var solution mat.Dense
	if err := solution.Solve(rows, right); err != nil {
		return parabola{}, false
	}
	var out parabola
	for k := range degree {
		out[k] = orb.Point{solution.At(k, 0), solution.At(k, 1)}
	}
	return out, true
}

// meet is where two parabolas cross near the place where the way of both is 0.
func meet(a, b parabola) (orb.Point, bool) {
	s, t := 0.0, 0.0
	for range 20 {
		p, q := a.place(s), b.place(t)
		u, v := a.direction(s), b.direction(t)
		det := -geometry.Cross(u, v)
		d := geometry.Sub(q, p)
		if !(math.Abs(det) > 1e-3*geometry.Norm(u)*geometry.Norm(v)) {
			return orb.Point{}, false
		}
		ds, dt := -geometry.Cross(d, v)/det, -geometry.Cross(d, u)/det
		s, t = s+ds, t+dt
		if math.Abs(ds)+math.Abs(dt) < 1e-9 {
			return a.place(s), true
		}
	}
	return orb.Point{}, false
}
