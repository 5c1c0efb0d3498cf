package pieces

import (
	"math"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/nest/portable"
	"ellwand/pieces/geometry"
)

// outer returns the outer outline of a closed chain that may cross and touch
// itself: closed, counter-clockwise, with no corner on a straight line. It
// cuts all segments where they meet and then walks round the whole, always
// taking the outermost way. A chain that encloses nothing gives nil.
func outer(chain []orb.Point) orb.Ring {
	net := newNet(chain)
	if len(net.points) < 3 {
		return nil
	}
	return tidyRing(net.walk())
}

// net is a closed chain cut at all its meeting points.
type net struct {
	points []orb.Point
	// cells holds the last point of each cell, counted from 1, and sameCell
	// for each point the one before it in its cell.
	cells    map[[2]int64]int
	sameCell []int
	ways     [][]int // for each point, the points it leads to
}

func newNet(chain []orb.Point) *net {
	n := &net{cells: make(map[[2]int64]int, len(chain)*2)}
	ids := make([]int, 0, len(chain))
	for _, p := range chain {
		id := n.point(p)
		if len(ids) == 0 || ids[len(ids)-1] != id {
			ids = append(ids, id)
		}
	}
	if len(ids) > 1 && ids[0] == ids[len(ids)-1] {
		ids = ids[:len(ids)-1]
	}
	n.connect(ids, n.cut(ids))
	return n
}

// cell is the side of the cells in which points are looked up, mm.
const cell = 1e-3

// point returns the number of the point at p, a new one if there is none
// within snap.
func (n *net) point(p orb.Point) int {
	x, y := p[0]/cell, p[1]/cell
	for i := floor(x - snap/cell); i <= floor(x+snap/cell); i++ {
		for j := floor(y - snap/cell); j <= floor(y+snap/cell); j++ {
			for id := n.cells[[2]int64{i, j}]; id > 0; id = n.sameCell[id-1] {
				if geometry.Distance(n.points[id-1], p) <= snap {
					return id - 1
				}
			}
		}
	}
	key := [2]int64{floor(x), floor(y)}
	n.points, n.sameCell = append(n.points, p), append(n.sameCell, n.cells[key])
	n.cells[key] = len(n.points)
	return len(n.points) - 1
}

func floor(x float64) int64 { return int64(math.Floor(x)) }

// cut finds, for each segment of the chain, the points at which another
// meets it.
func (n *net) cut(ids []int) [][]int {
	cuts := make([][]int, len(ids))
	ends := func(i int) (int, int) { return ids[i], ids[(i+1)%len(ids)] }
	boxes := make([]box, len(ids))
	for i := range ids {
		a, b := ends(i)
		boxes[i] = boxOf(n.points[a], n.points[b])
	}
	eachNearPair(boxes, snap, func(i, j int) {
		a, b := ends(i)
		c, d := ends(j)
		touched := a == c || a == d || b == c || b == d
		for _, end := range [2]int{c, d} {
			if end != a && end != b && n.isOn(end, a, b) {
				cuts[i], touched = append(cuts[i], end), true
			}
		}
		for _, end := range [2]int{a, b} {
			if end != c && end != d && n.isOn(end, c, d) {
				cuts[j], touched = append(cuts[j], end), true
			}
		}
		if touched {
			return
		}
		if p, ok := crossing(n.points[a], n.points[b], n.points[c], n.points[d]); ok {
			id := n.point(p)
			cuts[i], cuts[j] = append(cuts[i], id), append(cuts[j], id)
		}
	})
	return cuts
}

func (n *net) isOn(p, a, b int) bool {
	return geometry.SegmentDistance(n.points[p], n.points[a], n.points[b]) <= snap
}

// connect makes the ways between neighbouring points of each segment.
func (n *net) connect(ids []int, cuts [][]int) {
	n.ways = make([][]int, len(n.points))
	link := func(a, b int) {
		if a != b && !slices.Contains(n.ways[a], b) {
			n.ways[a], n.ways[b] = append(n.ways[a], b), append(n.ways[b], a)
		}
	}
	for i, a := range ids {
		b := ids[(i+1)%len(ids)]
		from := n.points[a]
		slices.SortFunc(cuts[i], func(p, q int) int {
			return compare(geometry.Distance(from, n.points[p]), geometry.Distance(from, n.points[q]))
		})
		for _, c := range cuts[i] {
			link(a, c)
			a = c
		}
		link(a, b)
	}
}

// walk goes counter-clockwise round the outside, from the lowest point.
func (n *net) walk() []orb.Point {
	start := 0
	for i, p := range n.points {
		s := n.points[start]
		if len(n.ways[i]) > 0 && (p[1] < s[1] || p[1] == s[1] && p[0] < s[0]) {
			start = i
		}
	}
	if len(n.ways[start]) == 0 {
		return nil
	}
	first := n.turn(start, orb.Point{0, -1})
	out := []orb.Point{n.points[start]}
	steps := 0
	for _, ways := range n.ways {
		steps += len(ways)
	}
	from, at := start, first
	for range steps {
		if at == start {
			if next := n.turn(at, geometry.Sub(n.points[from], n.points[at])); next == first {
				return out
			}
		}
		out = append(out, n.points[at])
		from, at = at, n.turn(at, geometry.Sub(n.points[from], n.points[at]))
	}
	return nil
}

// turn chooses the way out of a point that comes first when turning
// counter-clockwise from the direction back.
func (n *net) turn(at int, back orb.Point) int {
	if ways := n.ways[at]; len(ways) == 1 {
		return ways[0]
	}
	best, least := -1, math.Inf(1)
	for _, to := range n.ways[at] {
		d := geometry.Sub(n.points[to], n.points[at])
		angle := portable.Atan2(geometry.Cross(back, d), geometry.Dot(back, d))
		if angle <= 0 {
			angle += 2 * math.Pi
		}
		if angle < least {
			best, least = to, angle
		}
	}
	return best
}

// tidyRing drops points that lie on the straight line between their
// neighbours, within snap, and tips where the line runs back on itself, and
// closes the ring.
func tidyRing(points []orb.Point) orb.Ring {
	points = slices.Clone(points)
	for changed := true; changed; {
		changed = false
		kept := points[:0]
		for i, p := range points {
			previous := points[len(points)-1]
			if len(kept) > 0 {
				previous = kept[len(kept)-1]
			} else if i > 0 {
				previous = points[i-1]
			}
			next := points[(i+1)%len(points)]
			if geometry.SegmentDistance(p, previous, next) <= snap || runsBack(previous, p, next) {
				changed = true
				continue
			}
			kept = append(kept, p)
		}
		points = kept
	}
	if len(points) < 3 {
		return nil
	}
	return append(orb.Ring(points), points[0])
}
