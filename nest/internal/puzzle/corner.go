package puzzle

import (
	"cmp"
	"math"
	"slices"

	"github.com/paulmach/orb"
)

// corner is a point of the contour of what is laid around which directions are free.
type corner struct {
	at          orb.Point
	free, slack float64
}

// isClosed reports that all is covered around the corner.
func (c corner) isClosed() bool { return math.Abs(c.free) <= c.slack+roundingSlack }

// less takes a sector off what is free.
func (c corner) less(s sector) corner {
	c.free -= s.span
	c.slack += s.slackFrom + s.slackTo
	return c
}

// corners of the rectangle: a quarter is free in each.
func (s *solver) corners() []corner {
	x, y := s.problem.Length, s.problem.Width
	out := make([]corner, 0, 4)
	for _, at := range []orb.Point{{0, 0}, {x, 0}, {0, y}, {x, y}} {
		out = append(out, corner{at: at, free: full / 4})
	}
	return out
}

// first is the leftmost of the corners, the lowest of those.
func (s *solver) first(open []corner) orb.Point {
	best := open[0].at
	for _, c := range open[1:] {
		if c.at[0] < best[0] {
			best = c.at
		}
	}
	edge := best[0] + s.tolerance
	for _, c := range open {
		if c.at[0] <= edge && c.at[1] < best[1] {
			best = c.at
		}
	}
	return best
}

// around returns the open corners once a shape lies there, or false when some is too
// narrow for any.
func (s *solver) around(k int, at orb.Point, open []corner) ([]corner, bool) {
	sh := &s.shapes[k]
	next := make([]corner, 0, len(open)+len(sh.points))
	keep := func(c corner) bool {
		if c.isClosed() {
			return true
		}
		next = append(next, c)
		return c.free >= s.sharpest-c.slack // less, or below 0, where something overlaps
	}
	for _, c := range open {
		if covered, ok := sh.around(orb.Point{c.at[0] - at[0], c.at[1] - at[1]}, s.tolerance); ok {
			c = c.less(covered)
		}
		if !keep(c) {
			return nil, false
		}
	}
	for _, p := range sh.points {
		p = orb.Point{p[0] + at[0], p[1] + at[1]}
		if !s.isKnown(open, p) && !keep(s.cornerAt(p)) {
			return nil, false
		}
	}
	return next, true
}

// isKnown reports whether a point is one of the corners, or was before it was closed.
func (s *solver) isKnown(open []corner, p orb.Point) bool {
	for _, c := range open {
		if math.Abs(c.at[0]-p[0]) <= s.tolerance && math.Abs(c.at[1]-p[1]) <= s.tolerance {
			return true
		}
	}
	return false
}

// cornerAt measures what is free around a point.
func (s *solver) cornerAt(p orb.Point) corner {
	c := corner{at: p, free: full}
	s.eachSector(p, func(covered sector) { c = c.less(covered) })
	return c
}

// eachSector goes through what is covered around a point: by the cloth's edges, past
// which nothing lies, and by what is laid.
func (s *solver) eachSector(p orb.Point, do func(sector)) {
	for _, edge := range []struct{ off, from float64 }{
		{p[0], 1}, {p[1], -2}, {s.problem.Length - p[0], -1}, {s.problem.Width - p[1], 0},
	} {
		if edge.off <= s.tolerance {
			do(sector{from: edge.from, span: full / 2})
		}
	}
	if x, y := s.atEnd(p); x && y {
		do(sector{span: -full / 4}) // counted twice behind a corner of the rectangle
	}
	for _, other := range s.placed {
		o := &s.shapes[other.Shape]
		q := orb.Point{p[0] - other.X - o.first[0], p[1] - other.Y - o.first[1]}
		if covered, ok := o.around(q, s.tolerance); ok {
			do(covered)
		}
	}
}

func (s *solver) atEnd(p orb.Point) (x, y bool) {
	return min(p[0], s.problem.Length-p[0]) <= s.tolerance, min(p[1], s.problem.Width-p[1]) <= s.tolerance
}

// wedge is the lowest range of free directions at the corner to fill.
type wedge struct{ from, to, slackFrom, slackTo float64 }

// takes reports whether a shape fits into the wedge with its first corner, along the
// lower side.
func (w wedge) takes(sh *shape) bool {
	c := sh.atFirst
	return math.Abs(c.from-w.from) <= c.slackFrom+w.slackFrom+roundingSlack &&
		c.from+c.span <= w.to+c.slackTo+w.slackTo+roundingSlack
}

// roundingSlack is what rounding may do to a direction, and more.
const roundingSlack = 1e-9

// wedgeAt finds the wedge. All that is free lies between the directions -1 and 1, since
// the corner is the leftmost and lowest.
func (s *solver) wedgeAt(p orb.Point) wedge {
	var covered []sector
	s.eachSector(p, func(c sector) {
		if c.span <= 0 {
			return
		}
		covered = append(covered, c)
		if c.from+c.span > 2 { // the rest of it, from -2
			c.span, c.from = c.from+c.span-full+2, -2
			covered = append(covered, c)
		}
	})
	slices.SortFunc(covered, func(a, b sector) int { return cmp.Compare(a.from, b.from) })
	w := wedge{from: -1, to: 1}
	for _, c := range covered {
		if c.from > w.from+w.slackFrom+c.slackFrom+roundingSlack {
			w.to, w.slackTo = min(c.from, 1), c.slackFrom
			break
		}
		if end := c.from + c.span; end > w.from {
			w.from, w.slackFrom = end, c.slackTo
		}
	}
	return w
}
