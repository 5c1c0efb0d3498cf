package layout

import (
	"cmp"
	"math"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/nest/portable"
)

// stretch is a part of an edge, as fractions of its length.
type stretch struct{ from, to float64 }

// Strays looks for points of the outline of s that lie farther than reach
// from every edge of o and inside it (or outside it, with inside false). It
// returns the farthest such point that it saw and how far it is.
//
// Every edge of s is freed of the stretches that are within reach of an edge
// of o. What is left lies wholly inside or wholly outside o, and well away
// from its edges, so that one point of it decides, in safety from rounding.
// Nothing here asks on which side of an edge a point lies that is almost on
// it: edges that coincide, T-contacts and corners on edges need no care.
//
// Stretches shorter than a hundredth of reach are passed over: their middle
// is deeper than reach by less than that.
func (s *Region) Strays(o *Region, reach float64, inside bool) (orb.Point, float64, bool) {
	var (
		worst    orb.Point
		depth    float64
		close    []segment
		covered  []stretch
		whole    = o.box.Pad(reach)
		skipAway = inside // what is away from the box of o is outside it
	)
	for _, e := range s.edges {
		box := boundOf(e.a, e.b)
		if skipAway && !box.Intersects(whole) {
			continue
		}
		length := portable.Hypot(e.b[0]-e.a[0], e.b[1]-e.a[1])
		close = o.near(box.Pad(reach), close[:0])
		covered = covered[:0]
		for _, f := range close {
			if part, ok := withinReach(e, f, reach); ok {
				covered = append(covered, part)
			}
		}
		for _, bare := range uncovered(covered, reach/100/length) {
			if o.Holds(e.at((bare.from+bare.to)/2)) != inside {
				continue
			}
			for _, t := range []float64{(bare.from + bare.to) / 2, bare.from, bare.to} {
				if d := o.Distance(e.at(t)); d > depth {
					worst, depth = e.at(t), d
				}
			}
		}
	}
	return worst, depth, depth > 0
}

func (e segment) at(t float64) orb.Point {
	return orb.Point{e.a[0] + float64(t*(e.b[0]-e.a[0])), e.a[1] + float64(t*(e.b[1]-e.a[1]))}
}

// uncovered returns the stretches of [0, 1], of at least the given length,
// that no other covers. It sorts covered.
func uncovered(covered []stretch, least float64) []stretch {
	slices.SortFunc(covered, func(a, b stretch) int { return cmp.Compare(a.from, b.from) })
	var bare []stretch
	done := 0.0
	for _, c := range covered {
		if c.from-done > least {
			bare = append(bare, stretch{done, min(1, c.from)})
		}
		done = max(done, c.to)
	}
	if 1-done > least {
		bare = append(bare, stretch{done, 1})
	}
	return bare
}

// withinReach returns the stretch of e whose points are within reach of f.
// The points within reach of a segment are convex (two discs and the
// rectangle between them), so it is one stretch: from the first to the last
// of what the three cover.
func withinReach(e, f segment, reach float64) (stretch, bool) {
	all := stretch{math.Inf(1), math.Inf(-1)}
	for _, centre := range []orb.Point{f.a, f.b} {
		if part, ok := inDisc(e, centre, reach); ok {
			all = stretch{min(all.from, part.from), max(all.to, part.to)}
		}
	}
	if part, ok := beside(e, f, reach); ok {
		all = stretch{min(all.from, part.from), max(all.to, part.to)}
	}
	all = stretch{max(0, all.from), min(1, all.to)}
	return all, all.from <= all.to
}

func inDisc(e segment, centre orb.Point, radius float64) (stretch, bool) {
	dx, dy := e.b[0]-e.a[0], e.b[1]-e.a[1]
	cx, cy := centre[0]-e.a[0], centre[1]-e.a[1]
	length := portable.Hypot(dx, dy)
	away := (float64(dx*cy) - float64(dy*cx)) / length
	if math.Abs(away) > radius {
		return stretch{}, false
	}
	foot := (float64(dx*cx) + float64(dy*cy)) / length
	half := math.Sqrt(float64(radius*radius) - float64(away*away))
	return stretch{(foot - half) / length, (foot + half) / length}, true
}

// beside returns the stretch of e in the rectangle along f, of the given
// reach to both sides.
func beside(e, f segment, reach float64) (stretch, bool) {
	dx, dy := f.b[0]-f.a[0], f.b[1]-f.a[1]
	length := portable.Hypot(dx, dy)
	ux, uy := dx/length, dy/length
	frame := func(q orb.Point) (along, aside float64) {
		x, y := q[0]-f.a[0], q[1]-f.a[1]
		return float64(ux*x) + float64(uy*y), float64(ux*y) - float64(uy*x)
	}
	along0, aside0 := frame(e.a)
	along1, aside1 := frame(e.b)
	part := stretch{0, 1}
	ok := part.clip(along0, along1, 0, length) && part.clip(aside0, aside1, -reach, reach)
	return part, ok
}

// clip narrows the stretch to where a value, going evenly from v0 to v1 along
// the edge, is between low and high; it reports whether anything is left.
func (s *stretch) clip(v0, v1, low, high float64) bool {
	if v0 == v1 {
		return v0 >= low && v0 <= high
	}
	from, to := (low-v0)/(v1-v0), (high-v0)/(v1-v0)
	if from > to {
		from, to = to, from
	}
	s.from, s.to = max(s.from, from), min(s.to, to)
	return s.from <= s.to
}

// Nearest returns the least distance between the edges of two shapes that do
// not overlap, if it is less than limit.
func (s *Region) Nearest(o *Region, limit float64) (orb.Point, float64, bool) {
	var close []segment
	place, least := orb.Point{}, limit
	for _, e := range s.edges {
		close = o.near(boundOf(e.a, e.b).Pad(least), close[:0])
		for _, f := range close {
			for _, end := range []struct {
				q    orb.Point
				side segment
			}{{e.a, f}, {e.b, f}, {f.a, e}, {f.b, e}} {
				if d := pointToSegment(end.q, end.side.a, end.side.b); d < least {
					place, least = end.q, d
				}
			}
		}
	}
	return place, least, least < limit
}
