package nofit

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/paulmach/orb"
	"github.com/peterstace/simplefeatures/geom"
	"github.com/stretchr/testify/require"

	"ellwand/nest/internal/convex"
	"ellwand/nest/internal/outline"
)

// star is a random star-shaped outline about its bounding box's centre.
func star(rng *rand.Rand, n int) []orb.Point {
	var out []orb.Point
	for i := range n {
		r := 1 + 2*rng.Float64()
		a := (float64(i) + 0.8*rng.Float64()) / float64(n)
		out = append(out, orb.Point{r * cosTurn(a), r * sinTurn(a)})
	}
	return centred(outline.Clean(out))
}

func centred(p []orb.Point) []orb.Point {
	lo, hi := outline.Bounds(p)
	for i := range p {
		p[i][0] -= (lo[0] + hi[0]) / 2
		p[i][1] -= (lo[1] + hi[1]) / 2
	}
	return p
}

func polygon(p []orb.Point, dx, dy float64) geom.Geometry {
	var flat []float64
	for i := 0; i <= len(p); i++ {
		q := p[i%len(p)]
		flat = append(flat, q[0]+dx, q[1]+dy)
	}
	return geom.NewPolygon([]geom.LineString{geom.NewLineString(geom.NewSequence(flat, geom.DimXY))}).AsGeometry()
}

// The oracle is the area of the intersection by simplefeatures.
func TestDepthAgainstIntersectionAreas(t *testing.T) {
	rng := rand.New(rand.NewPCG(1, 2))
	for range 60 {
		a, b := star(rng, 5+rng.IntN(20)), star(rng, 4+rng.IntN(12))
		table := Build(convex.Parts(a), convex.Parts(b), 0, 96, 1e-9)
		view := table.View(1, 1)
		for range 60 {
			x := (2*rng.Float64() - 1) * table.HalfX
			y := (2*rng.Float64() - 1) * table.HalfY
			both, err := geom.Intersection(polygon(a, 0, 0), polygon(b, x, y))
			require.NoError(t, err)
			area := both.Area()
			if area > 1e-12 && area < 1e-7 {
				continue
			}
			require.Equal(
				t,
				area > 1e-7,
				view.Depth(x, y) > 0,
				"offset %g %g area %g depth %g\na=%v\nb=%v",
				x,
				y,
				area,
				view.Depth(x, y),
				a,
				b,
			)
		}
	}
}

// The depth is the distance to the nearest offset without overlap: moving by
// a little less in any direction still overlaps.
func TestDepthIsTheDistanceToFreedom(t *testing.T) {
	rng := rand.New(rand.NewPCG(3, 4))
	for range 40 {
		a, b := star(rng, 12), star(rng, 8)
		table := Build(convex.Parts(a), convex.Parts(b), 0, 96, 1e-9)
		view := table.View(1, 1)
		for range 100 {
			x := (2*rng.Float64() - 1) * table.HalfX
			y := (2*rng.Float64() - 1) * table.HalfY
			d := view.Depth(x, y)
			if d < 3*table.side {
				continue
			}
			free := false
			for k := range 64 {
				a := float64(k) / 64
				require.True(t, view.Depth(x+(d-2*table.side)*cosTurn(a), y+(d-2*table.side)*sinTurn(a)) > 0)
				free = free || view.Depth(x+(d+2*table.side)*cosTurn(a), y+(d+2*table.side)*sinTurn(a)) == 0
			}
			require.True(t, free)
		}
	}
}

// Squares whose no-fit boundary falls on whole cells, and exact contact.
func TestRectanglesTouchExactly(t *testing.T) {
	square := []orb.Point{{-2, -0.5}, {2, -0.5}, {2, 0.5}, {-2, 0.5}}
	table := Build([][]orb.Point{square}, [][]orb.Point{square}, 0, 96, 1e-9)
	view := table.View(1, 1)
	require.InDelta(t, 1, view.Depth(0, 0), 0.05)
	require.InDelta(t, 0.5, view.Depth(0, 0.5), 0.05)
	require.Zero(t, view.Depth(4, 0))
	require.Zero(t, view.Depth(0, 1))
	require.Positive(t, view.Depth(0, 1-1e-6))
	require.Positive(t, view.Depth(4-1e-6, 0.3))
}

func TestGapKeepsDistance(t *testing.T) {
	square := []orb.Point{{-1, -1}, {1, -1}, {1, 1}, {-1, 1}}
	table := Build([][]orb.Point{square}, [][]orb.Point{square}, 0.5, 96, 1e-9)
	view := table.View(1, 1)
	require.Zero(t, view.Depth(2.5, 0))
	require.Positive(t, view.Depth(2.5-1e-6, 0))
	require.Positive(t, view.Depth(2.35, 2.35))
	require.Zero(t, view.Depth(2.37, 2.37))
}

func BenchmarkBuildDrafted(b *testing.B) {
	rng := rand.New(rand.NewPCG(5, 6))
	p, q := star(rng, 40), star(rng, 40)
	parts, others := convex.Parts(p), convex.Parts(q)
	b.ReportMetric(float64(len(parts)*len(others)), "sums")
	for b.Loop() {
		Build(parts, others, 0, 96, 1e-9)
	}
}

func BenchmarkDepth(b *testing.B) {
	rng := rand.New(rand.NewPCG(5, 6))
	p, q := star(rng, 20), star(rng, 20)
	table := Build(convex.Parts(p), convex.Parts(q), 0, 96, 1e-9)
	view := table.View(1, 1)
	var xs [1024]orb.Point
	for i := range xs {
		xs[i] = orb.Point{(2*rng.Float64() - 1) * table.HalfX, (2*rng.Float64() - 1) * table.HalfY}
	}
	i := 0
	var sum float64
	for b.Loop() {
		sum += view.Depth(xs[i&1023][0], xs[i&1023][1])
		i++
	}
	if sum == 0 {
		b.Fatal("no overlap at all")
	}
}

// Signed is positive just where the outlines overlap, and its gradient is what
// a small step changes.
func TestSignedAgainstDepth(t *testing.T) {
	rng := rand.New(rand.NewPCG(9, 10))
	agreed, looked := 0, 0
	for range 40 {
		a, b := star(rng, 12), star(rng, 8)
		table := Build(convex.Parts(a), convex.Parts(b), 0, 48, 1e-9)
		view := table.View(1, 1)
		for range 200 {
			x := (2*rng.Float64() - 1) * 1.1 * table.HalfX
			y := (2*rng.Float64() - 1) * 1.1 * table.HalfY
			depth, gx, gy := view.Signed(x, y)
			if view.Depth(x, y) > 0 {
				require.InDelta(t, view.Depth(x, y), depth, 1e-12)
			} else {
				require.LessOrEqual(t, depth, 1e-9)
			}
			const h = 1e-6
			dx, _, _ := view.Signed(x+h, y)
			dy, _, _ := view.Signed(x, y+h)
			looked++
			if math.Abs((dx-depth)/h-gx) < 0.01 && math.Abs((dy-depth)/h-gy) < 0.01 {
				agreed++
			}
		}
	}
	// At a crease, and from cell to cell, the two may differ.
	require.Greater(t, agreed, looked*9/10)
}

// A cell keeps none of the sums that a single half-plane covers, and of two that cover
// each other the first.
func TestSumsCoveredInACell(t *testing.T) {
	right := func(c float64) plane { return plane{nx: 1, c: c} }
	up := plane{ny: 1, c: 2}
	work := cellWork{local: []localSum{
		{[]plane{right(1)}}, {[]plane{right(3)}}, {[]plane{right(3)}}, {[]plane{up, right(3)}}, {[]plane{up, right(4)}},
		{[]plane{{nx: -1, c: 2}}},
	}}
	work.dropCovered()
	require.Equal(t, []localSum{{[]plane{right(3)}}, {[]plane{up, right(4)}}, {[]plane{{nx: -1, c: 2}}}}, work.local)
}
