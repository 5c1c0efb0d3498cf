// Package puzzle lays outlines that fill a rectangle without any waste.
//
// The search goes depth first from left to right. The leftmost point that is not yet
// covered, the lowest of them, must be the leftmost lowest corner of the piece that
// covers it, and along the lower side of the wedge that is free there that piece lies
// edge to edge with what is laid: so a piece in a turn has one place at most, and
// hardly any angle fits. It is the filling of the lowest gap by rectangles (Lesh,
// Marks, McMahon, Mitzenmacher, Information Processing Letters 90, 2004, doi
// 10.1016/j.ipl.2004.01.006), carried over to outlines of any kind.
package puzzle

import (
	"cmp"
	"context"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/nest/internal/model"
)

// Solve looks for such a layout. Contours may miss each other by the tolerance, and
// overlap by it. It gives up after so many nodes of the search tree, of which one takes
// some ten microseconds, or when the context ends; at once where most sides are so short
// that the tolerance leaves their directions open, as those of a finely drawn curve.
func Solve(ctx context.Context, p Problem, tolerance float64, nodes int) ([]Placed, bool) {
	s := &solver{ctx: ctx, problem: p, tolerance: tolerance, nodes: nodes, model: model.New(p.Width, 0, 0)}
	s.model.Touch = tolerance
	for _, points := range p.Shapes {
		s.shapes = append(s.shapes, newShape(points, tolerance))
	}
	for i, piece := range p.Pieces {
		s.left = append(s.left, piece.Copies)
		s.order = append(s.order, i)
	}
	if !s.tellsDirections() {
		return nil, false
	}
	slices.SortStableFunc(s.order, func(a, b int) int { return cmp.Compare(s.area(b), s.area(a)) })
	s.sharpest = full
	for i := range s.shapes {
		s.sharpest = min(s.sharpest, s.shapes[i].sharpest)
	}
	ok := s.fill(s.corners())
	return s.placed, ok
}

// fill lays what is left into what is free around the given corners, all that are not
// closed.
func (s *solver) fill(open []corner) bool {
	if len(open) == 0 {
		return len(s.placed) == s.copies()
	}
	if s.nodes <= 0 || s.ctx.Err() != nil {
		return false
	}
	at := s.first(open)
	w := s.wedgeAt(at)
	for _, i := range s.order {
		if s.left[i] == 0 {
			continue
		}
		for _, k := range s.problem.Pieces[i].Shapes {
			if w.takes(&s.shapes[k]) && s.put(i, k, at, open) {
				return true
			}
		}
	}
	return false
}

// tellsDirections reports whether most sides have a direction within the tolerance. Where
// they do not, hardly any place is ruled out: fourteen drafted outlines took 0.5 s.
func (s *solver) tellsDirections() bool {
	sides, told := 0, 0
	for i := range s.shapes {
		for _, slack := range s.shapes[i].slack {
			sides++
			if slack < mostSlack {
				told++
			}
		}
	}
	return 2*told >= sides
}

func (s *solver) copies() int {
	sum := 0
	for _, piece := range s.problem.Pieces {
		sum += piece.Copies
	}
	return sum
}

// put lays a shape with its first corner there, and goes on. Whether the corners leave
// room is told sooner than whether anything overlaps, which needs convex parts.
func (s *solver) put(i, k int, at orb.Point, open []corner) bool {
	s.nodes--
	if !s.isWithin(k, at) {
		return false
	}
	s.left[i]--
	s.placed = append(s.placed, Placed{i, k, at[0] - s.shapes[k].first[0], at[1] - s.shapes[k].first[1]})
	if next, ok := s.around(k, at, open); ok && s.isFree(k, at) && s.fill(next) {
		return true
	}
	s.placed = s.placed[:len(s.placed)-1]
	s.left[i]++
	return false
}
