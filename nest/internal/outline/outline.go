// Package outline prepares rings for the search: it cleans them, turns them
// counter-clockwise and takes out vertices that cost time and gain nothing.
package outline

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/nest/portable"
)

// Clean returns the ring open (first point not repeated) and
// counter-clockwise, without repeated points and without points on a
// straight line between their neighbours.
func Clean(ring orb.Ring) []orb.Point {
	points := append([]orb.Point(nil), ring...)
	if SignedArea(points) < 0 {
		reverse(points)
	}
	span := Span(points)
	for changed := true; changed && len(points) > 3; {
		changed = false
		kept := points[:0:0]
		for i, p := range points {
			prev := points[(i+len(points)-1)%len(points)]
			if len(kept) > 0 {
				prev = kept[len(kept)-1]
			}
			next := points[(i+1)%len(points)]
			if redundant(prev, p, next, span) && len(points) > 3 {
				changed = true
				continue
			}
			kept = append(kept, p)
		}
		points = kept
	}
	return points
}

// redundant reports whether p adds nothing between its neighbours: within
// 1e-12 of the span of the outline, far below every tolerance in use.
func redundant(prev, p, next orb.Point, span float64) bool {
	limit := 1e-12 * span
	if dist(prev, p) <= limit {
		return true
	}
	base := dist(prev, next)
	if base <= limit {
		return false
	}
	forward := float64((p[0]-prev[0])*(next[0]-p[0])) + float64((p[1]-prev[1])*(next[1]-p[1]))
	return forward > 0 && math.Abs(Cross(prev, p, next)) <= limit*base
}

func dist(a, b orb.Point) float64 { return portable.Hypot(a[0]-b[0], a[1]-b[1]) }

func reverse(points []orb.Point) {
	for i, j := 0, len(points)-1; i < j; i, j = i+1, j-1 {
		points[i], points[j] = points[j], points[i]
	}
}

// Cross is twice the signed area of the triangle a, b, c: positive when it
// turns counter-clockwise.
func Cross(a, b, c orb.Point) float64 {
	return float64((b[0]-a[0])*(c[1]-a[1])) - float64((b[1]-a[1])*(c[0]-a[0]))
}

// SignedArea of an open or closed ring; positive when counter-clockwise.
func SignedArea(points []orb.Point) float64 {
	if len(points) == 0 {
		return 0
	}
	var sum float64
	origin := points[0]
	for i := 1; i+1 < len(points); i++ {
		sum += Cross(origin, points[i], points[i+1])
	}
	return sum / 2
}

// Span is the larger side of the bounding box.
func Span(points []orb.Point) float64 {
	lo, hi := Bounds(points)
	return math.Max(hi[0]-lo[0], hi[1]-lo[1])
}

// Bounds returns the corners of the bounding box.
func Bounds(points []orb.Point) (lo, hi orb.Point) {
	lo = orb.Point{math.Inf(1), math.Inf(1)}
	hi = orb.Point{math.Inf(-1), math.Inf(-1)}
	for _, p := range points {
		lo[0], lo[1] = math.Min(lo[0], p[0]), math.Min(lo[1], p[1])
		hi[0], hi[1] = math.Max(hi[0], p[0]), math.Max(hi[1], p[1])
	}
	return lo, hi
}
