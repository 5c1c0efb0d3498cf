package layout

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/paulmach/orb"
	"github.com/peterstace/simplefeatures/geom"
	"github.com/stretchr/testify/require"
)

// blob is a random star-shaped ring of n corners about the origin.
func blob(rng *rand.Rand, n int, size float64) orb.Ring {
	ring := make(orb.Ring, n)
	for i := range ring {
		a := 2 * math.Pi * (float64(i) + 0.8*rng.Float64()) / float64(n)
		r := size * (0.3 + 0.7*rng.Float64())
		ring[i] = orb.Point{r * math.Cos(a), r * math.Sin(a)}
	}
	return ring
}

func moveRing(ring orb.Ring, x, y float64) orb.Ring {
	out := make(orb.Ring, len(ring))
	for i, q := range ring {
		out[i] = orb.Point{q[0] + x, q[1] + y}
	}
	return out
}

// oracleArea is the area of the intersection by simplefeatures/geom.
func oracleArea(t *testing.T, a, b orb.Ring) float64 {
	t.Helper()
	polygon := func(ring orb.Ring) geom.Geometry {
		var flat []float64
		for _, q := range append(Corners(ring), ring[0]) {
			flat = append(flat, q[0], q[1])
		}
		poly := geom.NewPolygon([]geom.LineString{geom.NewLineString(geom.NewSequence(flat, geom.DimXY))})
		require.NoError(t, poly.Validate())
		return poly.AsGeometry()
	}
	both, err := geom.Intersection(polygon(a), polygon(b))
	require.NoError(t, err)
	return both.Area()
}

// pairs makes random pairs: apart or crossing, equal, mirrored onto a shared
// edge, sliding along a shared edge, corner on edge.
func pairs(rng *rand.Rand) (string, orb.Ring, orb.Ring) {
	a := blob(rng, 3+rng.IntN(20), 10)
	i := rng.IntN(len(a))
	p, q := a[i], a[(i+1)%len(a)]
	switch kind := rng.IntN(5); kind {
	case 0:
		return "anywhere", a, moveRing(blob(rng, 3+rng.IntN(20), 10), 20*rng.Float64(), 10*rng.Float64())
	case 1:
		return "equal", a, moveRing(a, 0, 0)
	case 2: // turned by 180 degrees about the middle of an edge
		return "shared edge", a, moveRing(Turned(a, 180, false), p[0]+q[0], p[1]+q[1])
	case 3: // and slid along it
		s := rng.Float64() - 0.5
		return "sliding", a, moveRing(Turned(a, 180, false), p[0]+q[0]+s*(q[0]-p[0]), p[1]+q[1]+s*(q[1]-p[1]))
	default:
		b := blob(rng, 3+rng.IntN(20), 10)
		s := rng.Float64()
		return "corner on edge", a, moveRing(b, p[0]+s*(q[0]-p[0])-b[0][0], p[1]+s*(q[1]-p[1])-b[0][1])
	}
}

func TestOverlapAgainstOracle(t *testing.T) {
	rng := rand.New(rand.NewPCG(7, 11))
	const reach = 1e-6
	touching := 0
	for n := range 4000 {
		kind, a, b := pairs(rng)
		if degrees := 360 * rng.Float64(); n%2 == 0 {
			a, b = Turned(a, degrees, false), Turned(b, degrees, false)
		}
		want := oracleArea(t, a, b)
		regionA, regionB := NewRegion(a), NewRegion(b)
		require.InDelta(t, want, regionA.OverlapArea(regionB), 1e-8, "case %d, %s:\n%v\n%v", n, kind, a, b)

		_, _, deepA := regionA.Strays(regionB, reach, true)
		_, _, deepB := regionB.Strays(regionA, reach, true)
		deep := deepA || deepB
		if want == 0 {
			touching++
		}
		if want < 1e-9 {
			require.False(t, deep, "case %d, %s, area %g:\n%v\n%v", n, kind, want, a, b)
		}
		// Without a deep boundary point, the overlap is a thin band or all of
		// the smaller one.
		if smaller := min(regionA.area, regionB.area); !deep && want < 0.9*smaller {
			require.Less(t, want, reach*120, "case %d, %s:\n%v\n%v", n, kind, a, b)
		}
	}
	require.Greater(t, touching, 100)
}
