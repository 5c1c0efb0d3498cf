package verify

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/paulmach/orb"
	"github.com/peterstace/simplefeatures/geom"
	"github.com/stretchr/testify/require"

	"ellwand/nest/layout"
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
		for _, q := range append(layout.Corners(ring), ring[0]) {
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
		return "shared edge", a, moveRing(layout.Turned(a, 180, false), p[0]+q[0], p[1]+q[1])
	case 3: // and slid along it
		s := rng.Float64() - 0.5
		return "sliding", a, moveRing(layout.Turned(a, 180, false), p[0]+q[0]+s*(q[0]-p[0]), p[1]+q[1]+s*(q[1]-p[1]))
	default:
		b := blob(rng, 3+rng.IntN(20), 10)
		s := rng.Float64()
		return "corner on edge", a, moveRing(b, p[0]+s*(q[0]-p[0])-b[0][0], p[1]+s*(q[1]-p[1])-b[0][1])
	}
}

// A fault that is made must be found: pieces of a cut-up sheet are moved by a
// random amount, in a random direction, and the oracle says whether they
// overlap then.
func TestVerifyAgreesWithOracleOnMoves(t *testing.T) {
	rng := rand.New(rand.NewPCG(3, 5))
	refused := 0
	for n := range 300 {
		_, a, b := pairs(rng)
		p := layout.Problem{Width: 200, Items: []layout.Item{
			{
				Name:    "a",
				Outline: a,
				Copies:  1,
				Turns:   []layout.Turn{{}},
			}, {Name: "b", Outline: b, Copies: 1, Turns: []layout.Turn{{}}}}}
		l := layout.Layout{
			Placements: []layout.Placement{
				{Item: 0, X: 100, Y: 100},
				{Item: 1, X: 100 + 4*rng.Float64(), Y: 100 + 4*rng.Float64()},
			},
		}
		l.Length = lengthOf(p, l)
		placedA, placedB := p.Placed(l.Placements[0]), p.Placed(l.Placements[1])
		area := oracleArea(t, placedA, placedB)
		err := Layout(p, l)
		smaller := min(layout.Area(a), layout.Area(b))
		if area > 1e-6*smaller {
			refused++
			require.Error(t, err, "case %d: area %g", n, area)
		}
		if area == 0 {
			require.NoError(t, err, "case %d", n)
		}
	}
	require.Greater(t, refused, 50)
}

func TestVerifyManyCorners(t *testing.T) {
	// Two discs of 3,000 corners, side by side and then pushed together.
	disc := func(n int) orb.Ring {
		ring := make(orb.Ring, n)
		for i := range ring {
			s, c := math.Sincos(2 * math.Pi * float64(i) / float64(n))
			ring[i] = orb.Point{50 * c, 50 * s}
		}
		return ring
	}
	p := layout.Problem{
		Width: 100,
		Items: []layout.Item{{Name: "disc", Outline: disc(3000), Copies: 2, Turns: []layout.Turn{{}}}},
	}
	l := layout.Layout{Length: 200, Placements: []layout.Placement{{X: 50, Y: 50}, {Copy: 1, X: 150, Y: 50}}}
	require.NoError(t, Layout(p, l))
	l.Placements[1].X -= 0.01
	l.Length -= 0.01
	require.ErrorContains(t, Layout(p, l), "disc (copy 1) and disc (copy 2) overlap")
}
