package svg

import (
	"math"

	"github.com/paulmach/orb"
)

func add(a, b orb.Point) orb.Point { return orb.Point{a[0] + b[0], a[1] + b[1]} }

func sub(a, b orb.Point) orb.Point { return orb.Point{a[0] - b[0], a[1] - b[1]} }

func times(a orb.Point, k float64) orb.Point { return orb.Point{a[0] * k, a[1] * k} }

func dot(a, b orb.Point) float64 { return a[0]*b[0] + a[1]*b[1] }

func distance(a, b orb.Point) float64 { return math.Hypot(a[0]-b[0], a[1]-b[1]) }

func unit(a orb.Point) orb.Point { return times(a, 1/math.Hypot(a[0], a[1])) }

// left of the direction of travel lies the inside of an outline.
func left(u orb.Point) orb.Point { return orb.Point{-u[1], u[0]} }

// upright is the angle in degrees of text along a direction, turned so that
// it is never upside down: more than -90, at most 90, upright lines reading
// from below.
func upright(u orb.Point) float64 {
	angle := math.Atan2(u[1], u[0]) * 180 / math.Pi
	if angle > 90-1e-9 {
		angle -= 180
	}
	if angle < -90-1e-9 {
		angle += 180
	}
	return angle
}

// lifted is the point so far above another, as text at that angle sees it.
func lifted(p orb.Point, degrees, by float64) orb.Point {
	sin, cos := math.Sincos(degrees * math.Pi / 180)
	return orb.Point{p[0] + sin*by, p[1] - cos*by}
}

// centred is where the baseline of text must be for its middle to be at p.
func centred(p orb.Point, degrees, size float64) orb.Point {
	return lifted(p, degrees, -size*0.35)
}
