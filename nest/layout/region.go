package layout

import (
	"cmp"
	"math"
	"slices"

	"github.com/paulmach/orb"
)

// leafEdges is how many edges share a box of the tree.
const leafEdges = 4

// Region is an outline, with holes or without, made ready for the questions
// that a proof asks. It is not changed after it is made, so several goroutines
// may use it. The search has a geometry of its own and may not use it: what
// judges a layout shares nothing with what made it.
type Region struct {
	edges []segment // of every ring
	box   orb.Bound
	area  float64
	// tree holds boxes of runs of edges: node i splits its run in the middle
	// between nodes 2i+1 and 2i+2. Edges that follow each other lie near each
	// other, so no sorting is needed.
	tree []orb.Bound
	// rightward holds the edges that are not upright, left end first and in
	// the order of their left ends.
	rightward []segment
}

// NewRegion makes a region of a simple outline and the holes in it. The rings
// may be closed or open and run in either sense; they have three corners or
// more.
func NewRegion(rings ...orb.Ring) *Region {
	s := &Region{}
	for i, ring := range rings {
		corners := Corners(ring)
		for j, a := range corners {
			s.addEdge(a, corners[(j+1)%len(corners)])
		}
		if area := Area(corners); i == 0 {
			s.area = area
		} else {
			s.area -= area
		}
	}
	slices.SortFunc(s.rightward, func(a, b segment) int { return cmp.Compare(a.a[0], b.a[0]) })
	s.tree = make([]orb.Bound, treeSize(len(s.edges)))
	s.box = s.grow(0, 0, len(s.edges))
	return s
}

// Bound is the bounding box.
func (s *Region) Bound() orb.Bound { return s.box }

// Area is the area of the outline less that of the holes.
func (s *Region) Area() float64 { return s.area }

func (s *Region) addEdge(a, b orb.Point) {
	s.edges = append(s.edges, segment{a, b})
	switch {
	case a[0] < b[0]:
		s.rightward = append(s.rightward, segment{a, b})
	case a[0] > b[0]:
		s.rightward = append(s.rightward, segment{b, a})
	}
}

func treeSize(edges int) int {
	size := 1
	for n := edges; n > leafEdges; n = (n + 1) / 2 {
		size = 2*size + 1
	}
	return size
}

// grow fills the tree from a node down and returns the box of its run.
func (s *Region) grow(node, from, to int) orb.Bound {
	if to-from <= leafEdges {
		box := boundOf(s.edges[from].a, s.edges[from].b)
		for _, e := range s.edges[from+1 : to] {
			box = box.Union(boundOf(e.a, e.b))
		}
		s.tree[node] = box
		return box
	}
	mid := (from + to) / 2
	s.tree[node] = s.grow(2*node+1, from, mid).Union(s.grow(2*node+2, mid, to))
	return s.tree[node]
}

// near appends to found the edges whose boxes meet the given one.
func (s *Region) near(box orb.Bound, found []segment) []segment {
	return s.nearIn(0, 0, len(s.edges), box, found)
}

func (s *Region) nearIn(node, from, to int, box orb.Bound, found []segment) []segment {
	if !s.tree[node].Intersects(box) {
		return found
	}
	if to-from > leafEdges {
		mid := (from + to) / 2
		found = s.nearIn(2*node+1, from, mid, box, found)
		return s.nearIn(2*node+2, mid, to, box, found)
	}
	for _, e := range s.edges[from:to] {
		if boundOf(e.a, e.b).Intersects(box) {
			found = append(found, e)
		}
	}
	return found
}

// Holds reports whether a point lies inside: whether a ray to the right
// crosses an odd number of edges. The answer is sure for points farther from
// every edge than the rounding of the coordinates.
func (s *Region) Holds(q orb.Point) bool {
	ray := orb.Bound{Min: q, Max: orb.Point{math.Inf(1), q[1]}}
	inside := false
	for _, e := range s.near(ray, nil) {
		if (e.a[1] > q[1]) == (e.b[1] > q[1]) {
			continue
		}
		if q[0] < e.a[0]+float64((q[1]-e.a[1])/(e.b[1]-e.a[1])*(e.b[0]-e.a[0])) {
			inside = !inside
		}
	}
	return inside
}

// Distance returns how far a point is from the nearest edge.
func (s *Region) Distance(q orb.Point) float64 {
	least := math.Inf(1)
	for _, e := range s.edges {
		least = min(least, pointToSegment(q, e.a, e.b))
	}
	return least
}
