package found

import (
	"cmp"
	"math"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/pieces"
	"ellwand/pieces/geometry"
)

// graph of lines that meet at their ends.
type graph struct {
	lines []pieces.Path
	// ends of each line: the node where it begins, and where it ends.
	ends  [][2]int
	nodes []orb.Point
	// at each node: the lines that begin or end there.
	at [][]int
	// gone are lines that were taken away; degree is how many ends are left at a node.
	gone   []bool
	degree []int
}

// newGraph finds the ends that are one, and then joins ends that are left alone to the
// nearest such end within the gap. It tells how many gaps were closed, and the largest.
func newGraph(lines []pieces.Path, gap float64) (g *graph, count int, size float64) {
	g = &graph{lines: lines, ends: make([][2]int, len(lines)), gone: make([]bool, len(lines))}
	near := newGrid(same)
	for i, line := range lines {
		for k, p := range [2]orb.Point{line[0].Start(), line[len(line)-1].End()} {
			node, ok := near.nearest(p, g.nodes)
			if !ok {
				node = len(g.nodes)
				g.nodes, g.at = append(g.nodes, p), append(g.at, nil)
				near.add(p, node)
			}
			g.ends[i][k] = node
			g.at[node] = append(g.at[node], i)
		}
	}
	count, size = g.joinLoose(gap)
	g.degree = make([]int, len(g.nodes))
	for node, lines := range g.at {
		g.degree[node] = len(lines)
	}
	return g, count, size
}

// mostCrowd of loose ends about one place are looked at: more are no gap in a line
// [source.OwnChoice].
const mostCrowd = 8

func (g *graph) joinLoose(gap float64) (count int, size float64) {
	type pair struct {
		a, b int
		d    float64
	}
	loose := newGrid(gap)
	var all []pair
	for node, p := range g.nodes {
		if len(g.at[node]) != 1 {
			continue
		}
		crowd := 0
		loose.each(p, func(other int) {
			crowd++
			if d := geometry.Distance(p, g.nodes[other]); d <= gap {
				all = append(all, pair{other, node, d})
			}
		})
		if crowd < mostCrowd {
			loose.add(p, node)
		}
	}
	slices.SortFunc(all, func(a, b pair) int {
		return cmp.Or(cmp.Compare(a.d, b.d), cmp.Compare(a.a, b.a), cmp.Compare(a.b, b.b))
	})
	for _, p := range all {
		if len(g.at[p.a]) != 1 || len(g.at[p.b]) != 1 {
			continue
		}
		if g.at[p.a][0] == g.at[p.b][0] && g.lines[g.at[p.a][0]].Length() < 4*gap { // a short line, no ring
			continue
		}
		line := g.at[p.b][0]
		for k := range g.ends[line] {
			if g.ends[line][k] == p.b {
				g.ends[line][k] = p.a
				break
			}
		}
		g.at[p.a], g.at[p.b] = append(g.at[p.a], line), nil
		count, size = count+1, math.Max(size, p.d)
	}
	return count, size
}

// prune takes away lines that end where no other goes on, until there are none.
func (g *graph) prune() {
	var open []int
	for node, degree := range g.degree {
		if degree == 1 {
			open = append(open, node)
		}
	}
	for len(open) > 0 {
		node := open[len(open)-1]
		open = open[:len(open)-1]
		if g.degree[node] != 1 {
			continue
		}
		line := g.at[node][slices.IndexFunc(g.at[node], func(line int) bool { return !g.gone[line] })]
		g.remove(line)
		for _, end := range g.ends[line] {
			if g.degree[end] == 1 {
				open = append(open, end)
			}
		}
	}
}

func (g *graph) remove(line int) {
	g.gone[line] = true
	for _, node := range g.ends[line] {
		g.degree[node]--
	}
}

// way is a line walked from its beginning to its end, or back.
type way struct {
	line int
	back bool
}

func (w way) key() int {
	if w.back {
		return 2*w.line + 1
	}
	return 2 * w.line
}

func (g *graph) from(w way) int {
	if w.back {
		return g.ends[w.line][1]
	}
	return g.ends[w.line][0]
}

func (g *graph) to(w way) int { return g.from(way{w.line, !w.back}) }

func (g *graph) path(w way) pieces.Path {
	if w.back {
		return g.lines[w.line].Reverse()
	}
	return g.lines[w.line]
}

// heading is the angle in which a way sets off, seen a little on, so that lines that
// leave in one direction are told apart.
func (g *graph) heading(w way) float64 {
	const on = 0.05 // of the first curve [source.OwnChoice]
	line := g.lines[w.line]
	from, to := line[0].Start(), line[0].At(on)
	if w.back {
		last := line[len(line)-1]
		from, to = last.End(), last.At(1-on)
	}
	d := geometry.Sub(to, from)
	return math.Atan2(d[1], d[0])
}

// outlines are the outer boundaries of all that hangs together, as ways one after the
// other; on says which lines are on one. Loose ends are pruned first, and lines that
// only bridge two boundaries.
func (g *graph) outlines() (rings [][]way, on []bool) {
	const rounds = 3 // lines that cross without meeting can leave bridges again [source.OwnChoice]
	for round := 1; ; round++ {
		g.prune()
		rings, on = nil, make([]bool, len(g.lines))
		bridges := false
		for _, face := range g.faces() {
			if g.area(face) >= 0 {
				continue
			}
			bridges = g.removeBridges(face) || bridges
			for _, w := range face {
				on[w.line] = true
			}
			rings = append(rings, turnedBack(face))
		}
		if !bridges || round == rounds {
			return rings, on
		}
	}
}

// removeBridges takes away the lines that a boundary walks both ways.
func (g *graph) removeBridges(face []way) bool {
	walked, any := map[int]bool{}, false
	for _, w := range face {
		if walked[w.line] && !g.gone[w.line] {
			any = true
			g.remove(w.line)
		}
		walked[w.line] = true
	}
	return any
}

// turnedBack walks a boundary the other way.
func turnedBack(face []way) []way {
	out := make([]way, len(face))
	for i, w := range face {
		out[len(face)-1-i] = way{w.line, !w.back}
	}
	return out
}

// faces of the graph: those inside counter-clockwise, the one outside of each part
// that hangs together clockwise.
func (g *graph) faces() [][]way {
	type leaver struct {
		way
		heading float64
	}
	leaving := make([][]way, len(g.nodes))
	for node, lines := range g.at {
		var all []leaver
		for _, line := range lines {
			if g.gone[line] {
				continue
			}
			for _, w := range [2]way{{line, false}, {line, true}} {
				if g.from(w) == node && !(len(all) > 0 && all[len(all)-1].way == w) {
					all = append(all, leaver{w, g.heading(w)})
				}
			}
		}
		slices.SortFunc(all, func(a, b leaver) int {
			return cmp.Or(cmp.Compare(a.heading, b.heading), cmp.Compare(a.key(), b.key()))
		})
		all = slices.CompactFunc(all, func(a, b leaver) bool { return a.way == b.way })
		for _, l := range all {
			leaving[node] = append(leaving[node], l.way)
		}
	}
	var out [][]way
	done := make([]bool, 2*len(g.lines))
	for node := range leaving {
		for _, first := range leaving[node] {
			if done[first.key()] {
				continue
			}
			var face []way
			for w := first; !done[w.key()]; w = g.after(w, leaving) {
				done[w.key()] = true
				face = append(face, w)
			}
			out = append(out, face)
		}
	}
	return out
}

// after a way comes the one that lies next to its right, seen backwards.
func (g *graph) after(w way, leaving [][]way) way {
	around := leaving[g.to(w)]
	at := slices.Index(around, way{w.line, !w.back})
	return around[(at+len(around)-1)%len(around)]
}

func (g *graph) area(face []way) float64 {
	var all orb.Ring
	for _, w := range face {
		for _, c := range g.path(w) {
			points := seen(c)
			all = append(all, points[:len(points)-1]...)
		}
	}
	return geometry.Area(append(all, all[0]))
}
