package reference

import (
	"math"

	"github.com/paulmach/orb"
)

// lattice of crossings: the place of each by its column and its row.
type lattice map[[2]int]orb.Point

// How a lattice is grown [source.OwnChoice].
const (
	seeds      = 300  // crossings that are tried as the first
	seedReach  = 90.0 // pixels from it to its neighbours
	seedOff    = 0.12 // of a step: how unlike opposite steps may be at the first
	growOff    = 0.16 // of a step: how far a crossing may lie from where it is expected
	leastAngle = 0.8  // sine between the two directions, seen at a slant of 40 degrees
	mostRatio  = 1.45 // of the steps in them, as well
	leastNodes = 40   // of a lattice that is believed
)

// grown is the largest lattice among crossings, grown from one to the next (Geiger,
// Moosmann, Car and Schuster 2012: Automatic camera and range sensor calibration using
// a single shot): each is expected where the step before leads. They were seen in a
// picture that was shrunk so often.
func grown(places []orb.Point, by int) lattice {
	var best lattice
	if len(places) < leastNodes {
		return nil
	}
	index := nearOf(places)
	tried := make([]bool, len(places))
	for k := range seeds {
		at := k * len(places) / seeds
		if tried[at] {
			continue
		}
		u, v, ok := index.steps(at, seedReach*float64(by))
		if !ok {
			continue
		}
		found := index.grow(at, u, v, tried)
		if len(found) > len(best) {
			best = found
		}
	}
	if len(best) < leastNodes {
		return nil
	}
	return best
}

// steps from a crossing to its neighbours in two directions, where it has one before
// and one behind in each, and one across.
func (n *near) steps(at int, reach float64) (u, v orb.Point, ok bool) {
	p := n.places[at]
	var first orb.Point
	for _, i := range n.within(p, reach) {
		d := orb.Point{n.places[i][0] - p[0], n.places[i][1] - p[1]}
		size := math.Hypot(d[0], d[1])
		if n.nearest(orb.Point{p[0] - d[0], p[1] - d[1]}, seedOff*size) < 0 {
			continue
		}
		if first == (orb.Point{}) {
			first = d
			continue
		}
		across := (first[0]*d[1] - first[1]*d[0]) / size / math.Hypot(first[0], first[1])
		if math.Abs(across) < leastAngle || size > mostRatio*math.Hypot(first[0], first[1]) {
			continue
		}
		if n.nearest(orb.Point{p[0] + d[0] + first[0], p[1] + d[1] + first[1]}, growOff*size) < 0 {
			continue
		}
		return first, d, true
	}
	return u, v, false
}

// sides of a node of a lattice [source.Geometry].
var sides = [4][2]int{{1, 0}, {0, 1}, {-1, 0}, {0, -1}}

// node is a crossing of a lattice with its steps to the right and upwards.
type node struct {
	column, row int
	at          orb.Point
	steps       [2]orb.Point
}

// grow a lattice from a crossing; the crossings it takes are marked as tried.
func (n *near) grow(start int, u, v orb.Point, tried []bool) lattice {
	if u[0]*v[1]-u[1]*v[0] > 0 { // rows go up where y goes down
		u, v = v, u
	}
	taken := map[int]bool{start: true}
	out := lattice{{0, 0}: n.places[start]}
	queue := []node{{at: n.places[start], steps: [2]orb.Point{u, v}}}
	for len(queue) > 0 {
		here := queue[0]
		queue = queue[1:]
		for _, side := range sides {
			key := [2]int{here.column + side[0], here.row + side[1]}
			if _, known := out[key]; known {
				continue
			}
			axis, sign := 0, float64(side[0])
			if side[1] != 0 {
				axis, sign = 1, float64(side[1])
			}
			step := orb.Point{sign * here.steps[axis][0], sign * here.steps[axis][1]}
			want := orb.Point{here.at[0] + step[0], here.at[1] + step[1]}
			found := n.nearest(want, growOff*math.Hypot(step[0], step[1]))
			if found < 0 || taken[found] {
				continue
			}
			taken[found], tried[found] = true, true
			next := node{key[0], key[1], n.places[found], here.steps}
			next.steps[axis] = eased(here.steps[axis], sign, here.at, next.at)
			out[key] = next.at
			queue = append(queue, next)
		}
	}
	return out
}

// eased is the step after one was taken: mostly the new one, so that one crossing that
// is off does not lead astray.
func eased(step orb.Point, sign float64, from, to orb.Point) orb.Point {
	const fresh = 0.5 // [source.OwnChoice]
	return orb.Point{
		step[0] + fresh*(sign*(to[0]-from[0])-step[0]),
		step[1] + fresh*(sign*(to[1]-from[1])-step[1]),
	}
}
