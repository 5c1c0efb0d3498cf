// Package geometry has what everything above reckons with points and rings: it
// adds to orb the arithmetic of points as vectors, and what is said of a point
// and a line, a ring or a box.
//
// Lengths are those of the coordinates, mm. The proofs of a layout and of a lay
// (nest/verify, fabric/check) use none of it, so that no mistake here can hide
// from them.
package geometry

import (
	"math"

	"ellwand/nest/portable"

	"github.com/paulmach/orb"
)

// Add is a + b.
func Add(a, b orb.Point) orb.Point { return orb.Point{a[0] + b[0], a[1] + b[1]} }

// Sub is a - b, the way from b to a.
func Sub(a, b orb.Point) orb.Point { return orb.Point{a[0] - b[0], a[1] - b[1]} }

// Times is a stretched by a factor.
func Times(a orb.Point, factor float64) orb.Point {
	return orb.Point{float64(a[0] * factor), float64(a[1] * factor)}
}

// Dot is the inner product.
func Dot(a, b orb.Point) float64 { return float64(a[0]*b[0]) + float64(a[1]*b[1]) }

// Cross is positive when b lies to the left of a.
func Cross(a, b orb.Point) float64 { return float64(a[0]*b[1]) - float64(a[1]*b[0]) }

// Norm is the length of a as a vector.
func Norm(a orb.Point) float64 { return portable.Hypot(a[0], a[1]) }

// Distance between two points.
func Distance(a, b orb.Point) float64 { return portable.Hypot(a[0]-b[0], a[1]-b[1]) }

// Unit is the direction of a; of a zero vector, zero.
func Unit(a orb.Point) orb.Point {
	n := Norm(a)
	if n == 0 {
		return orb.Point{}
	}
	return orb.Point{a[0] / n, a[1] / n}
}

// Left is the direction a quarter turn counter-clockwise of u, where y runs up.
func Left(u orb.Point) orb.Point { return orb.Point{-u[1], u[0]} }

// Right is the direction a quarter turn clockwise of u, where y runs up:
// outward, when u runs along a counter-clockwise outline.
func Right(u orb.Point) orb.Point { return orb.Point{u[1], -u[0]} }

// Between is the point at t from a (0) to b (1), exact at both ends.
func Between(a, b orb.Point, t float64) orb.Point {
	return orb.Point{float64(a[0]*(1-t)) + float64(b[0]*t), float64(a[1]*(1-t)) + float64(b[1]*t)}
}

// SegmentDistance is how far p lies from the segment a to b.
func SegmentDistance(p, a, b orb.Point) float64 {
	d := Sub(b, a)
	square := Dot(d, d)
	if square == 0 {
		return Distance(p, a)
	}
	t := math.Max(0, math.Min(1, Dot(Sub(p, a), d)/square))
	return Distance(p, orb.Point{a[0] + float64(t*d[0]), a[1] + float64(t*d[1])})
}

// LineDistance is how far p lies from the line through a and b, prolonged
// without end; from a single point where they are one.
func LineDistance(p, a, b orb.Point) float64 {
	if a == b {
		return Distance(p, a)
	}
	return math.Abs(Cross(Unit(Sub(b, a)), Sub(p, a)))
}

// Moved is a line moved by a vector; the line itself where that is zero.
func Moved(line []orb.Point, by orb.Point) []orb.Point {
	if by == (orb.Point{}) {
		return line
	}
	out := make([]orb.Point, len(line))
	for i, p := range line {
		out[i] = Add(p, by)
	}
	return out
}

// Radians of an angle in degrees.
func Radians(degrees float64) float64 { return degrees * math.Pi / 180 }
