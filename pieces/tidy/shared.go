package tidy

import (
	"cmp"
	"math"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/pieces"
	"ellwand/pieces/geometry"
	"ellwand/pieces/linework"
)

// onLine, mm, is how near to a line of another kind an end lies on it [source.OwnChoice].
const onLine = 0.7

// mostOpen ends are looked at: a drawing that has more is no pattern of one size
// [source.OwnChoice].
const mostOpen = 2000

// shared completes lines that are open by stretches of lines of other kinds: where
// several sizes share a line, it is often drawn for one of them alone. It counts them.
func shared(chosen, others []linework.Line) (out []linework.Line, taken int) {
	out = slices.Clone(chosen)
	var ends []end
	for i, l := range chosen {
		if !l.Closed {
			e := endsOf(chosen, i)
			ends = append(ends, e[0], e[1])
		}
	}
	if len(ends) == 0 || len(ends) > mostOpen {
		return out, 0
	}
	var all []stretch
	for _, l := range others {
		all = append(all, stretches(l, ends)...)
	}
	slices.SortStableFunc(all, func(a, b stretch) int { return cmp.Compare(a.length, b.length) })
	used := map[[2]int]bool{}
	for _, s := range all {
		if used[key(s.a)] || used[key(s.b)] || s.isSliver(chosen, all) {
			continue
		}
		used[key(s.a)], used[key(s.b)] = true, true
		line := chosen[s.a.stroke]
		line.Path, line.Closed = s.path, false
		out = append(out, line)
		taken++
	}
	return out, taken
}

// stretch of a line between two open ends.
type stretch struct {
	a, b   end
	path   pieces.Path
	length float64
}

// stretches of a line between each two ends that follow each other on it.
func stretches(l linework.Line, ends []end) []stretch {
	type spot struct {
		end
		along float64
	}
	flat := l.Path.Flatten(0.05)
	box := flat.Bound().Pad(onLine)
	var on []spot
	for _, e := range ends {
		if !box.Contains(e.at) {
			continue
		}
		if along, ok := alongOf(l.Path, e.at); ok {
			on = append(on, spot{e, along})
		}
	}
	if len(on) < 2 {
		return nil
	}
	slices.SortStableFunc(on, func(a, b spot) int { return cmp.Compare(a.along, b.along) })
	length := l.Path.Length()
	var out []stretch
	for i := range on {
		a, b := on[i], on[(i+1)%len(on)]
		if i == len(on)-1 {
			if !l.Closed {
				break
			}
			path := append(between(l.Path, a.along, length), between(l.Path, 0, b.along)...)
			out = append(out, stretch{a.end, b.end, path, length - a.along + b.along})
			continue
		}
		out = append(out, stretch{a.end, b.end, between(l.Path, a.along, b.along), b.along - a.along})
	}
	return slices.DeleteFunc(out, func(s stretch) bool { return len(s.path) == 0 || s.length < 0.1 })
}

// alongOf a path the place that is nearest to a point, where it lies on the path.
func alongOf(path pieces.Path, p orb.Point) (float64, bool) {
	best, at, before := math.Inf(1), 0.0, 0.0
	for _, c := range path {
		line := c.Flatten(0.02)
		length := 0.0
		total := lengthOf(line)
		whole := c.Length()
		for i := 1; i < len(line); i++ {
			a, b := line[i-1], line[i]
			step := geometry.Distance(a, b)
			if d := geometry.SegmentDistance(p, a, b); d < best-1e-9 && step > 0 {
				t := math.Min(1, math.Max(0, geometry.Dot(geometry.Sub(p, a), geometry.Sub(b, a))/(step*step)))
				best, at = d, before+(length+t*step)/total*whole
			}
			length += step
		}
		before += whole
	}
	return at, best <= onLine
}

func lengthOf(line orb.LineString) float64 {
	sum := 0.0
	for i := 1; i < len(line); i++ {
		sum += geometry.Distance(line[i-1], line[i])
	}
	return math.Max(sum, 1e-12)
}

// between two places along a path.
func between(path pieces.Path, from, to float64) pieces.Path {
	var out pieces.Path
	before := 0.0
	for _, c := range path {
		length := c.Length()
		a, b := (from-before)/length, (to-before)/length
		before += length
		if b <= 1e-9 || a >= 1-1e-9 {
			continue
		}
		part := c
		if b < 1-1e-9 {
			part, _ = part.Split(b)
		} else {
			b = 1
		}
		if a > 1e-9 {
			_, part = part.Split(a / b)
		}
		out = append(out, part)
	}
	return out
}

// isSliver says that the stretch would close its line to a strip of next to nothing: it
// is the part that sizes do not share. Another way round along the same line is left.
func (s stretch) isSliver(chosen []linework.Line, all []stretch) bool {
	if s.a.stroke != s.b.stroke {
		return false
	}
	mine := s.encloses(chosen)
	for _, o := range all {
		if o.a.stroke == s.a.stroke && o.b.stroke == s.a.stroke && o.encloses(chosen) > 2*mine {
			return true
		}
	}
	return false
}

// encloses how much with the line that it would close.
func (s stretch) encloses(chosen []linework.Line) float64 {
	path := chosen[s.a.stroke].Path
	more := s.path
	if !s.a.last == !s.b.last {
		return 0
	}
	if !s.a.last { // it begins where the line begins
		more = more.Reverse()
	}
	return math.Abs(geometry.Area(ring(appended(slices.Clone(path), more))))
}
