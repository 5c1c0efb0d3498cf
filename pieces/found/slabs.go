package found

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/pieces/geometry"
)

// slabs tell quickly whether points lie in a ring: for each of some stripes across it
// they know the segments that reach into it.
type slabs struct {
	ring      orb.Ring
	low, high float64
	segments  [][]int32
}

// newSlabs of a ring, which is closed.
func newSlabs(ring orb.Ring) slabs {
	const each, most = 16, 64 // segments a slab, and slabs [source.OwnChoice]
	box := ring.Bound()
	s := slabs{ring: ring, low: box.Min[1], high: box.Max[1]}
	s.segments = make([][]int32, min(most, 1+len(ring)/each))
	for i := 1; i < len(ring); i++ {
		from := s.number(math.Min(ring[i-1][1], ring[i][1]) - same)
		to := s.number(math.Max(ring[i-1][1], ring[i][1]) + same)
		for k := from; k <= to; k++ {
			s.segments[k] = append(s.segments[k], int32(i))
		}
	}
	return s
}

// number of the slab that a height lies in, or of the nearest.
func (s slabs) number(y float64) int {
	n := len(s.segments)
	if s.high <= s.low {
		return 0
	}
	return min(n-1, max(0, int(float64(n)*(y-s.low)/(s.high-s.low))))
}

// hold says that a point lies in the ring or on it.
func (s slabs) hold(p orb.Point) bool {
	inside := false
	for _, i := range s.segments[s.number(p[1])] {
		a, b := s.ring[i-1], s.ring[i]
		ab, ap := geometry.Sub(b, a), geometry.Sub(p, a)
		across := geometry.Cross(ab, ap)
		if across*across <= same*same*geometry.Dot(ab, ab) && geometry.SegmentDistance(p, a, b) <= same {
			return true
		}
		if up := a[1] <= p[1]; up != (b[1] <= p[1]) && up == (across > 0) {
			inside = !inside
		}
	}
	return inside
}
