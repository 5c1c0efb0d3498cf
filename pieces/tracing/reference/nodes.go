package reference

import (
	"math"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/pieces/tracing/camera"
)

// clearlyOff is how many standard deviations off a crossing is taken for chance
// [source.OwnChoice].
const clearlyOff = 4

// within keeps the nodes that lie so near to where the camera sees them, pixels.
func (l lattice) within(c camera.Camera, side, reach float64) lattice {
	out := lattice{}
	for key, at := range l {
		q := c.ToPlane(at)
		off := math.Hypot(q[0]-float64(key[0])*side, q[1]-float64(key[1])*side)
		if off <= reach*c.Scale(at) {
			out[key] = at
		}
	}
	return out
}

// halved leaves out every other column, or row, where those have far fewer nodes than
// the others: lines that are none, seen by chance between true ones.
func (l lattice) halved() lattice {
	const fewer = 0.4 // [source.OwnChoice]
	for axis := range 2 {
		var count [2]float64
		for key := range l {
			count[key[axis]&1]++
		}
		for odd := range 2 {
			if count[odd] >= fewer*count[1-odd] {
				continue
			}
			out := lattice{}
			for key, at := range l {
				if key[axis]&1 != odd {
					key[axis] >>= 1
					out[key] = at
				}
			}
			return out
		}
	}
	return l
}

// collected is how far from its expected place a crossing is still taken, as a share of
// a step [source.OwnChoice].
const collected = 0.12

// collect the crossings that lie where the camera sees the nodes of a lattice, also
// those a little beyond it.
func (n *near) collect(c camera.Camera, l lattice, side float64) lattice {
	low, high := l.reach()
	out := lattice{}
	for column := low[0] - 1; column <= high[0]+1; column++ {
		guess, known := orb.Point{}, false
		for row := low[1] - 1; row <= high[1]+1; row++ {
			key := [2]int{column, row}
			plane := orb.Point{float64(column) * side, float64(row) * side}
			if !known {
				guess = c.StraightInverse(plane)
			}
			at, ok := c.ToPicture(plane, guess)
			if known = ok; !ok || math.Abs(at[0]-c.Middle[0]) > c.Half || math.Abs(at[1]-c.Middle[1]) > c.Half {
				known = false
				continue
			}
			guess = at
			u, v := c.Jacobian(at)
			reach := collected * side / math.Max(math.Hypot(u[0], u[1]), math.Hypot(v[0], v[1]))
			if i := n.nearest(at, reach); i >= 0 {
				out[key] = n.places[i]
			}
		}
	}
	return out
}

// mostNodes that are looked for along one direction: a ground of 5 m in squares of 1 cm
// [source.OwnChoice].
const mostNodes = 500

// reach of a lattice: its columns and rows, but for those of the few that lie far out,
// which slipped.
func (l lattice) reach() (low, high [2]int) {
	for axis := range 2 {
		all := make([]int, 0, len(l))
		for key := range l {
			all = append(all, key[axis])
		}
		slices.Sort(all)
		low[axis], high[axis] = all[len(all)/100], all[len(all)-1-len(all)/100]
		if high[axis]-low[axis] > mostNodes {
			high[axis] = low[axis] + mostNodes
		}
	}
	return low, high
}

// listed are the nodes by their columns and rows, with their places on the plane.
func (l lattice) listed(side float64) (pixels, plane []orb.Point, count [2]int) {
	keys := make([][2]int, 0, len(l))
	for key := range l {
		keys = append(keys, key)
	}
	slices.SortFunc(keys, func(a, b [2]int) int {
		if a[0] != b[0] {
			return a[0] - b[0]
		}
		return a[1] - b[1]
	})
	low, high := keys[0], keys[0]
	for _, key := range keys {
		at := l[key]
		pixels = append(pixels, at)
		plane = append(plane, orb.Point{float64(key[0]) * side, float64(key[1]) * side})
		for axis := range 2 {
			low[axis], high[axis] = min(low[axis], key[axis]), max(high[axis], key[axis])
		}
	}
	return pixels, plane, [2]int{high[0] - low[0], high[1] - low[1]}
}
