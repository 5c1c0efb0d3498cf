package geometry

import (
	"math"

	"github.com/paulmach/orb"
)

// Inside reports whether a point lies in a closed ring (even-odd). Of points on
// the ring itself it may say either.
func Inside(ring []orb.Point, p orb.Point) bool {
	in := false
	for i := 0; i+1 < len(ring); i++ {
		a, b := ring[i], ring[i+1]
		if (a[1] > p[1]) != (b[1] > p[1]) && p[0] < a[0]+(b[0]-a[0])*(p[1]-a[1])/(b[1]-a[1]) {
			in = !in
		}
	}
	return in
}

// IsOn reports whether a point lies on a line, within the tolerance.
func IsOn(line []orb.Point, p orb.Point, tolerance float64) bool {
	for i := 0; i+1 < len(line); i++ {
		if SegmentDistance(p, line[i], line[i+1]) <= tolerance {
			return true
		}
	}
	return false
}

// Area enclosed by a closed ring: positive when counter-clockwise.
func Area(ring []orb.Point) float64 {
	sum := 0.0
	for i := 1; i+1 < len(ring); i++ {
		sum += Cross(Sub(ring[i], ring[0]), Sub(ring[i+1], ring[0]))
	}
	return sum / 2
}

// Crosses reports whether a line enters or touches a box.
func Crosses(line []orb.Point, box orb.Bound) bool {
	for i := 1; i < len(line); i++ {
		a, b := line[i-1], line[i]
		if isBeside(a, b, box, 0) || isBeside(a, b, box, 1) {
			continue
		}
		if from, to := Within(a, b, box); from <= to {
			return true
		}
	}
	return false
}

// isBeside reports whether a segment lies wholly to one side of a box. Nearly all do when
// the room for a label is looked for, which is where this saves time.
func isBeside(a, b orb.Point, box orb.Bound, axis int) bool {
	return a[axis] < box.Min[axis] && b[axis] < box.Min[axis] || a[axis] > box.Max[axis] && b[axis] > box.Max[axis]
}

// Within is the stretch of a segment that lies in a box, as parameters from a
// (0) to b (1), by Liang and Barsky (1984); its end lies before its start where
// there is none.
func Within(a, b orb.Point, box orb.Bound) (from, to float64) {
	from, to = 0, 1
	for axis := range 2 {
		d := b[axis] - a[axis]
		if d == 0 {
			if a[axis] < box.Min[axis] || a[axis] > box.Max[axis] {
				return 1, 0
			}
			continue
		}
		t, u := (box.Min[axis]-a[axis])/d, (box.Max[axis]-a[axis])/d
		from, to = max(from, min(t, u)), min(to, max(t, u))
	}
	return from, to
}

// Holds reports whether one box lies within another, or fills it.
func Holds(outer, inner orb.Bound) bool {
	return outer.Contains(inner.Min) && outer.Contains(inner.Max)
}

// Common is what two boxes share. Its Min lies beyond its Max where that is
// nothing.
func Common(a, b orb.Bound) orb.Bound {
	return orb.Bound{
		Min: orb.Point{math.Max(a.Min[0], b.Min[0]), math.Max(a.Min[1], b.Min[1])},
		Max: orb.Point{math.Min(a.Max[0], b.Max[0]), math.Min(a.Max[1], b.Max[1])},
	}
}

// Box is the one with that middle and half its width and height.
func Box(middle, half orb.Point) orb.Bound {
	return orb.Bound{Min: Sub(middle, half), Max: Add(middle, half)}
}

// Corners of a box as a closed ring, from its Min along x first.
func Corners(box orb.Bound) orb.Ring {
	return orb.Ring{box.Min, {box.Max[0], box.Min[1]}, box.Max, {box.Min[0], box.Max[1]}, box.Min}
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

// Rectangle is a rectangle as a closed ring, counter-clockwise.
func Rectangle(x0, y0, x1, y1 float64) orb.Ring {
	return orb.Ring{{x0, y0}, {x1, y0}, {x1, y1}, {x0, y1}, {x0, y0}}
}
