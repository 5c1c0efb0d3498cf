// Package geometry is the plane geometry of points and rings that plans are made
// with. What proves a plan has its own.
package geometry

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/nest/portable"
	"ellwand/pieces"
)

// Rectangle is a rectangle as a closed ring, counter-clockwise.
func Rectangle(x0, y0, x1, y1 float64) orb.Ring {
	return orb.Ring{{x0, y0}, {x1, y0}, {x1, y1}, {x0, y1}, {x0, y0}}
}

// Mapped moves a line.
func Mapped[L ~[]orb.Point](m pieces.Motion, line L) orb.LineString {
	out := make(orb.LineString, len(line))
	for i, p := range line {
		out[i] = m.Apply(p)
	}
	return out
}

// Distinct returns the points of a ring, the first not repeated, without
// those that repeat their neighbour or lie on the straight line between
// their neighbours (to 1e-9 mm).
func Distinct(ring orb.Ring) []orb.Point {
	points := append([]orb.Point(nil), ring...)
	for changed := true; changed && len(points) > 3; {
		changed = false
		for i := 0; i < len(points) && len(points) > 3; i++ {
			n := len(points)
			a, b := points[(i+n-1)%n], points[(i+1)%n]
			if Distance(points[i], Nearest([]orb.Point{a, b}, points[i])) > 1e-9 {
				continue
			}
			points = append(points[:i], points[i+1:]...)
			changed = true
			i--
		}
	}
	return points
}

// Closed repeats the first point at the end.
func Closed(points []orb.Point) orb.Ring {
	out := append(orb.Ring(nil), points...)
	if len(out) > 0 && out[0] != out[len(out)-1] {
		out = append(out, out[0])
	}
	return out
}

// Nearest returns the point of a line string that is nearest to p.
func Nearest(line []orb.Point, p orb.Point) orb.Point {
	best := line[0]
	for i := 1; i < len(line); i++ {
		a, b := line[i-1], line[i]
		ux, uy := b[0]-a[0], b[1]-a[1]
		t := 0.0
		if square := float64(ux*ux) + float64(uy*uy); square > 0 {
			t = math.Max(0, math.Min(1, (float64((p[0]-a[0])*ux)+float64((p[1]-a[1])*uy))/square))
		}
		if q := (orb.Point{a[0] + float64(t*ux), a[1] + float64(t*uy)}); Distance(p, q) < Distance(p, best) {
			best = q
		}
	}
	return best
}

// Distance of two points.
func Distance(a, b orb.Point) float64 { return portable.Hypot(a[0]-b[0], a[1]-b[1]) }

// Area a ring, mm2; positive when counter-clockwise.
func Area(ring orb.Ring) float64 {
	var sum float64
	for i := 1; i+1 < len(ring); i++ {
		a, b := ring[i], ring[i+1]
		sum += float64((a[0]-ring[0][0])*(b[1]-ring[0][1])) - float64((a[1]-ring[0][1])*(b[0]-ring[0][0]))
	}
	return sum / 2
}

// Centroid of the area within a ring.
func Centroid(ring orb.Ring) orb.Point {
	var x, y, sum float64
	o := ring[0]
	for i := 1; i+1 < len(ring); i++ {
		a, b := ring[i], ring[i+1]
		w := float64((a[0]-o[0])*(b[1]-o[1])) - float64((a[1]-o[1])*(b[0]-o[0]))
		sum += w
		x += w * (a[0] + b[0] - 2*o[0]) / 3
		y += w * (a[1] + b[1] - 2*o[1]) / 3
	}
	return orb.Point{o[0] + x/sum, o[1] + y/sum}
}
