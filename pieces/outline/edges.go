package outline

import (
	"math"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/nest/portable"
	"ellwand/pieces"
	"ellwand/pieces/seams"
)

// This file draws edges through points: straight where those lie on one line.

// run is an edge through points, but for the last, at which the next begins. Where
// all lie on one line it is straight.
func run(edge seams.Name, points []orb.Point) []Node {
	out := []Node{{At: points[0], Edge: edge}}
	if isStraight(points) {
		return out
	}
	for _, p := range points[1 : len(points)-1] {
		out = append(out, Node{At: p, Smooth: true})
	}
	return out
}

// offFold is an edge that leaves the fold through points: smooth over the fold, on
// the other side of which is its mirror image, and so square to it.
func offFold(edge seams.Name, points []orb.Point) []Node {
	if isStraight(points) {
		return run(edge, points)
	}
	whole := slices.Clone(points)
	for _, p := range points[1:] {
		whole = append([]orb.Point{{0 - p[0], p[1]}}, whole...)
	}
	return drawn(edge, points, Through(whole)[len(points)-1:])
}

// toFold is an edge that comes to the fold through points.
func toFold(edge seams.Name, points []orb.Point) []Node {
	if isStraight(points) {
		return run(edge, points)
	}
	whole := slices.Clone(points)
	for i := len(points) - 2; i >= 0; i-- {
		whole = append(whole, orb.Point{0 - points[i][0], points[i][1]})
	}
	return drawn(edge, points, Through(whole)[:len(points)-1])
}

// drawn is an edge through points by the curves between them.
func drawn(edge seams.Name, points []orb.Point, path pieces.Path) []Node {
	var out []Node
	for i, c := range path {
		n := Node{At: points[i], Smooth: i > 0}
		if i == 0 {
			n.Edge = edge
		}
		if b, ok := c.(pieces.Bezier); ok {
			n.Controls = []orb.Point{b.P1, b.P2}
		}
		out = append(out, n)
	}
	return out
}

func isStraight(points []orb.Point) bool {
	a, b := points[0], points[len(points)-1]
	for _, p := range points[1 : len(points)-1] {
		cross := float64((b[0]-a[0])*(p[1]-a[1])) - float64((b[1]-a[1])*(p[0]-a[0]))
		if math.Abs(cross) > joined*portable.Hypot(b[0]-a[0], b[1]-a[1]) {
			return false
		}
	}
	return true
}
