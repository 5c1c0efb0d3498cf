package convex

import (
	"github.com/paulmach/orb"

	"ellwand/nest/portable"
)

// Sum is the Minkowski sum of two convex, counter-clockwise outlines: their
// edges merged by direction.
func Sum(a, b []orb.Point) []orb.Point {
	i0, j0 := lowest(a), lowest(b)
	n, m := len(a), len(b)
	out := make([]orb.Point, 0, n+m)
	for i, j := 0, 0; i < n || j < m; {
		p, q := a[(i0+i)%n], b[(j0+j)%m]
		out = append(out, orb.Point{p[0] + q[0], p[1] + q[1]})
		if i == n {
			j++
			continue
		}
		if j == m {
			i++
			continue
		}
		pn, qn := a[(i0+i+1)%n], b[(j0+j+1)%m]
		turn := float64((pn[0]-p[0])*(qn[1]-q[1])) - float64((pn[1]-p[1])*(qn[0]-q[0]))
		if turn >= 0 {
			i++
		}
		if turn <= 0 {
			j++
		}
	}
	return out
}

func lowest(p []orb.Point) int {
	best := 0
	for i := range p {
		if p[i][1] < p[best][1] || p[i][1] == p[best][1] && p[i][0] < p[best][0] {
			best = i
		}
	}
	return best
}

// Disc returns a convex outline that contains the disc of the given radius
// about the origin and exceeds it by at most 2 % at its sixteen corners. Its
// sides touch the disc squarely along the axes, so that distances along x and
// y are exact.
func Disc(radius float64) []orb.Point {
	const sides = 16
	_, most := portable.SincosDegrees(180.0 / sides)
	corner := radius / most
	out := make([]orb.Point, sides)
	for i := range out {
		sin, cos := portable.SincosDegrees((2*float64(i) + 1) * 180 / sides)
		out[i] = orb.Point{float64(corner * cos), float64(corner * sin)}
	}
	return out
}

// Negate turns an outline by 180 degrees about the origin.
func Negate(p []orb.Point) []orb.Point {
	out := make([]orb.Point, len(p))
	for i, q := range p {
		out[i] = orb.Point{-q[0], -q[1]}
	}
	return out
}
