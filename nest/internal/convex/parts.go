// Package convex splits outlines into convex parts and adds convex outlines.
package convex

import (
	"github.com/paulmach/orb"

	"ellwand/nest/internal/outline"
	"ellwand/nest/portable"
)

// Parts splits a clean, counter-clockwise simple outline into few convex
// parts whose vertices are vertices of the outline, so that no rounding
// enters. Cuts are diagonals from reflex vertices: of those that are open, the
// one that cures most reflex ends, then the shortest (a greedy form of the
// decomposition of Chazelle and Dobkin, 1985).
func Parts(points []orb.Point) [][]orb.Point {
	var parts [][]orb.Point
	todo := [][]orb.Point{points}
	for len(todo) > 0 {
		p := todo[len(todo)-1]
		todo = todo[:len(todo)-1]
		i, j, ok := bestCut(p)
		if !ok {
			parts = append(parts, p)
			continue
		}
		first, second := cut(p, i, j)
		todo = append(todo, first, second)
	}
	return parts
}

func cut(p []orb.Point, i, j int) (first, second []orb.Point) {
	if i > j {
		i, j = j, i
	}
	first = append([]orb.Point(nil), p[i:j+1]...)
	second = append(second, p[j:]...)
	second = append(second, p[:i+1]...)
	return first, second
}

// bestCut returns the ends of a diagonal, or false when p is convex.
func bestCut(p []orb.Point) (int, int, bool) {
	reflex := make([]bool, len(p))
	found := false
	for i := range p {
		reflex[i] = isReflex(p, i)
		found = found || reflex[i]
	}
	if !found {
		return 0, 0, false
	}
	best := candidate{cured: -1}
	for i := range p {
		if !reflex[i] {
			continue
		}
		if best.cured == 2 {
			break
		}
		bestFrom(p, i, reflex, &best)
	}
	return best.i, best.j, best.cured >= 0
}

type candidate struct {
	i, j, cured int
	length      float64
}

func (c candidate) better(than candidate) bool {
	if c.cured != than.cured {
		return c.cured > than.cured
	}
	return c.length < than.length
}

// bestFrom looks at the diagonals from the reflex vertex i.
func bestFrom(p []orb.Point, i int, reflex []bool, best *candidate) {
	n := len(p)
	for j := range p {
		if j == i || j == (i+1)%n || j == (i+n-1)%n {
			continue
		}
		c := candidate{i: i, j: j, length: portable.Hypot(p[j][0]-p[i][0], p[j][1]-p[i][1])}
		if cures(p, i, j) {
			c.cured++
		}
		if reflex[j] && cures(p, j, i) {
			c.cured++
		}
		if c.better(*best) && inCone(p, i, j) && inCone(p, j, i) && open(p, i, j) {
			*best = c
		}
	}
}

func isReflex(p []orb.Point, i int) bool {
	n := len(p)
	return outline.Cross(p[(i+n-1)%n], p[i], p[(i+1)%n]) < 0
}

// cures reports whether a cut from reflex vertex i to j leaves both angles at
// i convex.
func cures(p []orb.Point, i, j int) bool {
	n := len(p)
	prev, next := p[(i+n-1)%n], p[(i+1)%n]
	return outline.Cross(prev, p[i], p[j]) >= 0 && outline.Cross(p[j], p[i], next) >= 0
}

// inCone reports whether the direction from i to j points into the outline.
func inCone(p []orb.Point, i, j int) bool {
	n := len(p)
	prev, next := p[(i+n-1)%n], p[(i+1)%n]
	left := outline.Cross(p[i], next, p[j])
	right := outline.Cross(prev, p[i], p[j])
	if isReflex(p, i) {
		return left > 0 || right > 0
	}
	return left > 0 && right > 0
}

// open reports whether no edge and no vertex lies on the diagonal.
func open(p []orb.Point, i, j int) bool {
	n := len(p)
	a, b := p[i], p[j]
	for k := range p {
		l := (k + 1) % n
		if k == i || k == j || l == i || l == j {
			if k != i && k != j && onSegment(a, b, p[k]) {
				return false
			}
			continue
		}
		if touches(a, b, p[k], p[l]) {
			return false
		}
	}
	return true
}

func onSegment(a, b, q orb.Point) bool {
	if outline.Cross(a, b, q) != 0 {
		return false
	}
	dot := float64((q[0]-a[0])*(b[0]-a[0])) + float64((q[1]-a[1])*(b[1]-a[1]))
	return dot > 0 && dot < float64((b[0]-a[0])*(b[0]-a[0]))+float64((b[1]-a[1])*(b[1]-a[1]))
}

// touches reports whether the closed segments share a point.
func touches(a, b, c, d orb.Point) bool {
	d1, d2 := outline.Cross(a, b, c), outline.Cross(a, b, d)
	d3, d4 := outline.Cross(c, d, a), outline.Cross(c, d, b)
	if (d1 > 0) != (d2 > 0) && d1 != 0 && d2 != 0 && (d3 > 0) != (d4 > 0) && d3 != 0 && d4 != 0 {
		return true
	}
	return onSegment(a, b, c) || onSegment(a, b, d) || onSegment(c, d, a) || onSegment(c, d, b)
}
