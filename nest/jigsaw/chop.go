package jigsaw

import (
	"cmp"
	"math"
	"slices"

	"github.com/paulmach/orb"
	"github.com/paulmach/orb/planar"
)

// Figures of chopping, our own choice: between what shares of its side a cut begins
// and ends.
const (
	chopLeast = 0.35
	chopMost  = 0.65
)

// chopped are so many convex pieces: the largest is cut in two from its longest side
// to the one opposite, again and again, so that cuts end in the middle of others.
func (c *cutter) chopped(pieces int) []orb.Ring {
	rings := []orb.Ring{{{0, 0}, {c.length, 0}, {c.length, c.width}, {0, c.width}}}
	for len(rings) < pieces {
		slices.SortStableFunc(rings, func(a, b orb.Ring) int {
			return cmp.Compare(math.Abs(planar.Area(closed(b))), math.Abs(planar.Area(closed(a))))
		})
		first, second := c.chop(rings[0])
		rings = append(rings[1:], first, second)
	}
	for i := range rings {
		rings[i] = closed(rings[i])
	}
	return rings
}

// chop cuts an open ring in two.
func (c *cutter) chop(ring orb.Ring) (first, second orb.Ring) {
	n, longest, most := len(ring), 0, 0.0
	for i, p := range ring {
		if long := planar.Distance(p, ring[(i+1)%n]); long > most {
			longest, most = i, long
		}
	}
	opposite := (longest + n/2) % n
	p, q := c.on(ring, longest), c.on(ring, opposite)
	first, second = orb.Ring{p}, orb.Ring{q}
	for k := (longest + 1) % n; k != (opposite+1)%n; k = (k + 1) % n {
		first = append(first, ring[k])
	}
	for k := (opposite + 1) % n; k != (longest+1)%n; k = (k + 1) % n {
		second = append(second, ring[k])
	}
	return append(first, q), append(second, p)
}

// on is a point of a side of the ring.
func (c *cutter) on(ring orb.Ring, side int) orb.Point {
	a, b := ring[side], ring[(side+1)%len(ring)]
	t := chopLeast + float64((chopMost-chopLeast)*c.random.Float64())
	return orb.Point{a[0] + float64(t*(b[0]-a[0])), a[1] + float64(t*(b[1]-a[1]))}
}

func closed(ring orb.Ring) orb.Ring {
	if ring.Closed() {
		return ring
	}
	return append(slices.Clone(ring), ring[0])
}
