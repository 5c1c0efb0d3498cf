package nest

import (
	"math"
	"slices"

	"github.com/paulmach/orb"
)

// boundingBox is a box with its sides along the axes.
type boundingBox struct{ low, high orb.Point }

func boundingBoxOf(a, b orb.Point) boundingBox {
	return boundingBox{
		orb.Point{min(a[0], b[0]), min(a[1], b[1])},
		orb.Point{max(a[0], b[0]), max(a[1], b[1])},
	}
}

// meets reports whether two boxes have a point in common.
func (b boundingBox) meets(o boundingBox) bool {
	return b.low[0] <= o.high[0] && o.low[0] <= b.high[0] &&
		b.low[1] <= o.high[1] && o.low[1] <= b.high[1]
}

func (b boundingBox) join(o boundingBox) boundingBox {
	return boundingBox{
		orb.Point{min(b.low[0], o.low[0]), min(b.low[1], o.low[1])},
		orb.Point{max(b.high[0], o.high[0]), max(b.high[1], o.high[1])},
	}
}

func (b boundingBox) grown(by float64) boundingBox {
	return boundingBox{
		orb.Point{b.low[0] - by, b.low[1] - by},
		orb.Point{b.high[0] + by, b.high[1] + by},
	}
}

// spread is the larger side of the box.
func spread(b boundingBox) float64 { return max(b.high[0]-b.low[0], b.high[1]-b.low[1]) }

type segment struct{ a, b orb.Point }

// leafEdges is how many edges share a box of the tree.
const leafEdges = 4

// shape is an outline, with holes or without, made ready for the questions
// that Verify asks. It is not changed after it is made.
type shape struct {
	edges []segment // of every ring
	box   boundingBox
	area  float64
	// tree holds boxes of runs of edges: node i splits its run in the middle
	// between nodes 2i+1 and 2i+2. Edges that follow each other lie near each
	// other, so no sorting is needed.
	tree []boundingBox
	// rightward holds the edges that are not upright, left end first and in
	// the order of their left ends.
	rightward []segment
}

// newShape makes a shape of an outline and its holes.
func newShape(rings ...orb.Ring) *shape {
	s := &shape{}
	for i, ring := range rings {
		corners := distinct(ring)
		for j, a := range corners {
			s.addEdge(a, corners[(j+1)%len(corners)])
		}
		if area := ringArea(corners); i == 0 {
			s.area = area
		} else {
			s.area -= area
		}
	}
	slices.SortFunc(s.rightward, func(a, b segment) int { return compare(a.a[0], b.a[0]) })
	s.tree = make([]boundingBox, treeSize(len(s.edges)))
	s.box = s.grow(0, 0, len(s.edges))
	return s
}

func (s *shape) addEdge(a, b orb.Point) {
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
func (s *shape) grow(node, from, to int) boundingBox {
	if to-from <= leafEdges {
		box := boundingBoxOf(s.edges[from].a, s.edges[from].b)
		for _, e := range s.edges[from+1 : to] {
			box = box.join(boundingBoxOf(e.a, e.b))
		}
		s.tree[node] = box
		return box
	}
	mid := (from + to) / 2
	s.tree[node] = s.grow(2*node+1, from, mid).join(s.grow(2*node+2, mid, to))
	return s.tree[node]
}

// near appends to found the edges whose boxes meet the given one.
func (s *shape) near(box boundingBox, found []segment) []segment {
	return s.nearIn(0, 0, len(s.edges), box, found)
}

func (s *shape) nearIn(node, from, to int, box boundingBox, found []segment) []segment {
	if !s.tree[node].meets(box) {
		return found
	}
	if to-from > leafEdges {
		mid := (from + to) / 2
		found = s.nearIn(2*node+1, from, mid, box, found)
		return s.nearIn(2*node+2, mid, to, box, found)
	}
	for _, e := range s.edges[from:to] {
		if boundingBoxOf(e.a, e.b).meets(box) {
			found = append(found, e)
		}
	}
	return found
}

// holds reports whether a point lies inside: whether a ray to the right
// crosses an odd number of edges. The answer is sure for points farther from
// every edge than the rounding of the coordinates.
func (s *shape) holds(q orb.Point, scratch []segment) bool {
	ray := boundingBox{q, orb.Point{math.Inf(1), q[1]}}
	inside := false
	for _, e := range s.near(ray, scratch[:0]) {
		if (e.a[1] > q[1]) == (e.b[1] > q[1]) {
			continue
		}
		if q[0] < e.a[0]+(q[1]-e.a[1])/(e.b[1]-e.a[1])*(e.b[0]-e.a[0]) {
			inside = !inside
		}
	}
	return inside
}

// distance returns how far a point is from the nearest edge.
func (s *shape) distance(q orb.Point) float64 {
	least := math.Inf(1)
	for _, e := range s.edges {
		least = min(least, pointToSegment(q, e.a, e.b))
	}
	return least
}

func pointToSegment(q, a, b orb.Point) float64 {
	dx, dy := b[0]-a[0], b[1]-a[1]
	along := 0.0
	if square := dx*dx + dy*dy; square > 0 {
		along = min(1, max(0, ((q[0]-a[0])*dx+(q[1]-a[1])*dy)/square))
	}
	return math.Hypot(q[0]-a[0]-along*dx, q[1]-a[1]-along*dy)
}
