package outline

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/nest/portable"
)

// Simplify returns an outline of fewer vertices that contains the given one
// and lies within the tolerance of it. The input is clean (see Clean). Only
// moves that stay outside are made: a reflex vertex is dropped, or an edge
// between two convex vertices is replaced by the meeting of its neighbours.
// The bounding box is kept, so that pieces still fit where they just fit.
func Simplify(points []orb.Point, tolerance float64) []orb.Point {
	s := simplifier{points: append([]orb.Point(nil), points...), tolerance: tolerance}
	s.slack = make([]float64, len(points))
	s.lo, s.hi = Bounds(points)
	for s.pass() {
	}
	return s.points
}

// simplifier carries, for each vertex, how far the outline has already been
// moved out near it, so that repeated moves do not add up past the tolerance.
type simplifier struct {
	points    []orb.Point
	slack     []float64
	tolerance float64
	lo, hi    orb.Point
}

func (s *simplifier) pass() bool {
	changed := false
	for i := 0; i < len(s.points) && len(s.points) > 4; i++ {
		if s.dropReflex(i) || s.dropEdge(i) {
			changed = true
		}
	}
	return changed
}

func (s *simplifier) at(i int) int { return (i + len(s.points)) % len(s.points) }

func (s *simplifier) dropReflex(i int) bool {
	prev, next := s.at(i-1), s.at(i+1)
	a, p, b := s.points[prev], s.points[i], s.points[next]
	cross := Cross(a, p, b)
	if cross >= 0 {
		return false
	}
	moved := -cross/dist(a, b) + s.slack[i]
	if moved > s.tolerance {
		return false
	}
	s.slack[prev] = math.Max(s.slack[prev], moved)
	s.slack[next] = math.Max(s.slack[next], moved)
	s.remove(i)
	return true
}

// dropEdge replaces the edge from i to i+1 by the meeting point of the edges
// before and after it.
func (s *simplifier) dropEdge(i int) bool {
	h, j, k := s.at(i-1), s.at(i+1), s.at(i+2)
	a, b, c, d := s.points[h], s.points[i], s.points[j], s.points[k]
	if Cross(a, b, c) <= 0 || Cross(b, c, d) <= 0 {
		return false
	}
	corner, ok := meet(a, b, c, d)
	if !ok || !s.inBox(corner) {
		return false
	}
	moved := Cross(b, c, corner)
	moved = -moved/dist(b, c) + math.Max(s.slack[i], s.slack[j])
	if moved > s.tolerance || moved < 0 {
		return false
	}
	s.points[i] = corner
	s.slack[i] = moved
	s.remove(j)
	return true
}

func (s *simplifier) inBox(p orb.Point) bool {
	return p[0] >= s.lo[0] && p[0] <= s.hi[0] && p[1] >= s.lo[1] && p[1] <= s.hi[1]
}

func (s *simplifier) remove(i int) {
	s.points = append(s.points[:i], s.points[i+1:]...)
	s.slack = append(s.slack[:i], s.slack[i+1:]...)
}

// meet returns where the line a-b, prolonged past b, meets the line d-c,
// prolonged past c.
func meet(a, b, c, d orb.Point) (orb.Point, bool) {
	ux, uy := b[0]-a[0], b[1]-a[1]
	vx, vy := c[0]-d[0], c[1]-d[1]
	det := float64(ux*vy) - float64(uy*vx)
	if math.Abs(det) < 1e-12*portable.Hypot(ux, uy)*portable.Hypot(vx, vy) {
		return orb.Point{}, false
	}
	t := (float64((c[0]-b[0])*vy) - float64((c[1]-b[1])*vx)) / det
	r := (float64((c[0]-b[0])*uy) - float64((c[1]-b[1])*ux)) / det
	if t < 0 || r < 0 {
		return orb.Point{}, false
	}
	return orb.Point{b[0] + float64(t*ux), b[1] + float64(t*uy)}, true
}
