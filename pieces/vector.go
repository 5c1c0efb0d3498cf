package pieces

import (
	"math"

	"github.com/paulmach/orb"
)

func sub(a, b orb.Point) orb.Point { return orb.Point{a[0] - b[0], a[1] - b[1]} }

func add(a, b orb.Point) orb.Point { return orb.Point{a[0] + b[0], a[1] + b[1]} }

func times(a orb.Point, k float64) orb.Point { return orb.Point{a[0] * k, a[1] * k} }

func dot(a, b orb.Point) float64 { return a[0]*b[0] + a[1]*b[1] }

// cross is positive when b lies to the left of a.
func cross(a, b orb.Point) float64 { return a[0]*b[1] - a[1]*b[0] }

func norm(a orb.Point) float64 { return math.Hypot(a[0], a[1]) }

func distance(a, b orb.Point) float64 { return math.Hypot(a[0]-b[0], a[1]-b[1]) }

// unit returns the direction of a; of a zero vector, zero.
func unit(a orb.Point) orb.Point {
	n := norm(a)
	if n == 0 {
		return orb.Point{}
	}
	return orb.Point{a[0] / n, a[1] / n}
}

// right is the direction a quarter turn clockwise of u: outward, when u runs
// along a counter-clockwise outline.
func right(u orb.Point) orb.Point { return orb.Point{u[1], -u[0]} }

// between is the point at parameter t from a to b, exact at both ends.
func between(a, b orb.Point, t float64) orb.Point {
	return orb.Point{a[0]*(1-t) + b[0]*t, a[1]*(1-t) + b[1]*t}
}

// segmentDistance is how far p lies from the segment a to b, mm.
func segmentDistance(p, a, b orb.Point) float64 {
	d := sub(b, a)
	square := dot(d, d)
	if square == 0 {
		return distance(p, a)
	}
	t := math.Max(0, math.Min(1, dot(sub(p, a), d)/square))
	return distance(p, orb.Point{a[0] + t*d[0], a[1] + t*d[1]})
}
