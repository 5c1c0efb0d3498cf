package layout

import (
	"math/rand/v2"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/require"
)

// The stretch of an edge within reach of another holds the points that are, and
// no others.
func TestWithinReachAgainstDistances(t *testing.T) {
	rng := rand.New(rand.NewPCG(6, 2))
	point := func() orb.Point { return orb.Point{10 * rng.Float64(), 10 * rng.Float64()} }
	some, none := 0, 0
	for n := range 3000 {
		e, f, reach := segment{point(), point()}, segment{point(), point()}, 0.2+2*rng.Float64()
		if n%5 == 0 { // level or upright, where a side of the rectangle is in line
			f.b[n/5%2] = f.a[n/5%2]
		}
		part, ok := withinReach(e, f, reach)
		if ok {
			some++
		} else {
			none++
		}
		for k := range 21 {
			at := float64(k) / 20
			away := pointToSegment(e.at(at), f.a, f.b)
			switch {
			case away < reach-1e-9:
				require.True(t, ok && part.from <= at && at <= part.to, "case %d at %g: %v from %v", n, at, e, f)
			case away > reach+1e-9:
				require.False(t, ok && part.from < at && at < part.to, "case %d at %g: %v from %v", n, at, e, f)
			}
		}
	}
	require.Greater(t, some, 500)
	require.Greater(t, none, 500)
}

// A point deep inside, outside and in a hole, and how far each is from an edge.
func TestRegionHoldsAndDistance(t *testing.T) {
	r := NewRegion(oblong(0, 0, 20, 10), oblong(4, 2, 6, 6))
	require.InDelta(t, 20*10-6*6, r.Area(), 1e-12)
	require.Equal(t, orb.Bound{Max: orb.Point{20, 10}}, r.Bound())
	for _, c := range []struct {
		q      orb.Point
		inside bool
		away   float64
	}{
		{orb.Point{2, 5}, true, 2}, {orb.Point{7, 5}, false, 3}, {orb.Point{15, 6}, true, 4},
		{orb.Point{-3, 5}, false, 3}, {orb.Point{23, 14}, false, 5}, {orb.Point{12, -1}, false, 1},
		{orb.Point{12, 9}, true, 1},
	} {
		require.Equal(t, c.inside, r.Holds(c.q), "%v", c.q)
		require.InDelta(t, c.away, r.Distance(c.q), 1e-12, "%v", c.q)
	}
}

// The nearest edges of two regions, and nothing where they are as far as asked.
func TestNearest(t *testing.T) {
	a, b := NewRegion(oblong(0, 0, 4, 4)), NewRegion(oblong(7, 1, 2, 2))
	_, away, isNearer := a.Nearest(b, 3.5)
	require.True(t, isNearer)
	require.InDelta(t, 3, away, 1e-12)
	_, _, isNearer = a.Nearest(b, 3)
	require.False(t, isNearer)
}
