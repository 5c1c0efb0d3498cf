package reference

import (
	"math"
	"slices"

	"github.com/paulmach/orb"
)

// near finds places that lie near another, by the squares of a net.
type near struct {
	places []orb.Point
	net    map[[2]int][]int
}

// room is the side of a square of the net, pixels [source.OwnChoice].
const room = 12.0

func square(p orb.Point) [2]int {
	return [2]int{int(math.Floor(p[0] / room)), int(math.Floor(p[1] / room))}
}

func nearOf(places []orb.Point) *near {
	n := &near{places, map[[2]int][]int{}}
	for i, p := range places {
		n.net[square(p)] = append(n.net[square(p)], i)
	}
	return n
}

// nearest place within a reach, or -1.
func (n *near) nearest(p orb.Point, reach float64) int {
	best, found := reach, -1
	n.visit(p, reach, func(i int, d float64) {
		if d <= best {
			best, found = d, i
		}
	})
	return found
}

// within are the places within a reach of one of them, the nearest first, without it.
func (n *near) within(p orb.Point, reach float64) []int {
	type one struct {
		i int
		d float64
	}
	var all []one
	n.visit(p, reach, func(i int, d float64) {
		if d > 1e-9 {
			all = append(all, one{i, d})
		}
	})
	slices.SortFunc(all, func(a, b one) int {
		if a.d != b.d {
			if a.d < b.d {
				return -1
			}
			return 1
		}
		return a.i - b.i
	})
	out := make([]int, len(all))
	for k, o := range all {
		out[k] = o.i
	}
	return out
}

func (n *near) visit(p orb.Point, reach float64, see func(i int, distance float64)) {
	low, high := square(orb.Point{p[0] - reach, p[1] - reach}), square(orb.Point{p[0] + reach, p[1] + reach})
	for x := low[0]; x <= high[0]; x++ {
		for y := low[1]; y <= high[1]; y++ {
			for _, i := range n.net[[2]int{x, y}] {
				if d := math.Hypot(n.places[i][0]-p[0], n.places[i][1]-p[1]); d <= reach {
					see(i, d)
				}
			}
		}
	}
}
