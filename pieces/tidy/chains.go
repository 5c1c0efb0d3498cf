package tidy

import (
	"cmp"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/pieces"
	"ellwand/pieces/geometry"
	"ellwand/pieces/linework"
)

// chains joins open lines whose ends lie within a gap, the nearest first; what is
// closed then is closed.
func chains(lines []linework.Line, gap float64) []linework.Line {
	var out []linework.Line
	var open []linework.Line
	for _, l := range lines {
		if l.Closed {
			out = append(out, l)
		} else {
			open = append(open, l)
		}
	}
	next := joints(open, gap)
	seen := make([]bool, len(open))
	walk := func(from end) {
		line := open[from.stroke]
		line.Path = nil
		for e := from; ; {
			seen[e.stroke] = true
			path := open[e.stroke].Path
			if e.last {
				path = path.Reverse()
			}
			line.Path = appended(line.Path, path)
			on, ok := next[key(other(open, e))]
			if ok && on.stroke == from.stroke && on.last == from.last && len(line.Path) > 1 {
				line.Closed = true
				line.Path = appended(line.Path, nil)
			}
			if !ok || seen[on.stroke] {
				break
			}
			e = on
		}
		out = append(out, line)
	}
	for i := range open {
		for _, e := range endsOf(open, i) {
			if _, goesOn := next[key(e)]; !goesOn && !seen[i] {
				walk(e)
			}
		}
	}
	for i := range open {
		if !seen[i] {
			walk(endsOf(open, i)[0])
		}
	}
	return out
}

// appended paths meet; nothing appended closes the path.
func appended(path, more pieces.Path) pieces.Path {
	if len(path) == 0 {
		return append(pieces.Path{}, more...)
	}
	to := path[0].Start()
	if more != nil {
		to = more[0].Start()
	}
	if from := path[len(path)-1].End(); geometry.Distance(from, to) > 1e-9 {
		path = append(path, pieces.Line{From: from, To: to})
	}
	return append(path, more...)
}

// joints of ends within the gap, the nearest first, each with one other at most.
func joints(open []linework.Line, gap float64) map[[2]int]end {
	type pair struct {
		a, b int // numbers of the ends
		d    float64
	}
	ends := make([]end, 0, 2*len(open))
	for i := range open {
		e := endsOf(open, i)
		ends = append(ends, e[0], e[1])
	}
	var pairs []pair
	near := newGrid(gap)
	for i, e := range ends {
		near.visit(e.at, func(j int) {
			o := ends[j]
			d := geometry.Distance(e.at, o.at)
			if d <= gap && (o.stroke != e.stroke || open[e.stroke].Path.Length() >= 10*gap) {
				pairs = append(pairs, pair{i, j, d})
			}
		})
		near.add(e.at, i)
	}
	slices.SortFunc(pairs, func(a, b pair) int {
		return cmp.Or(cmp.Compare(a.d, b.d), cmp.Compare(a.a, b.a), cmp.Compare(a.b, b.b))
	})
	joined := make([]bool, len(ends))
	out := map[[2]int]end{}
	for _, p := range pairs {
		if !joined[p.a] && !joined[p.b] {
			joined[p.a], joined[p.b] = true, true
			a, b := ends[p.a], ends[p.b]
			out[key(a)], out[key(b)] = b, a
		}
	}
	return out
}

// ring of a closed path.
func ring(path pieces.Path) orb.Ring {
	out := orb.Ring(path.Flatten(0.1))
	if len(out) > 0 && out[0] != out[len(out)-1] {
		out = append(out, out[0])
	}
	return out
}
