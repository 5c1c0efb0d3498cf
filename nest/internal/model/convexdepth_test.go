package model

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/require"

	"ellwand/nest/internal/outline"
)

// drawnParts are convex outlines from random corners: broad ones and slivers.
func drawnParts(rng *rand.Rand, count int) []part {
	parts := make([]part, count)
	for k := range parts {
		points := make([]orb.Point, 8)
		thin := math.Pow(10, -3*rng.Float64())
		for i := range points {
			points[i] = orb.Point{100 * rng.Float64(), 100 * thin * rng.Float64()}
		}
		parts[k] = newPart(outline.Hull(points))
	}
	return parts
}

// plainDepth looks at every corner along the normal of every side.
func plainDepth(a, b *part, dx, dy float64) float64 {
	least := min(a.hi[0]-b.lo[0]-dx, b.hi[0]+dx-a.lo[0], a.hi[1]-b.lo[1]-dy, b.hi[1]+dy-a.lo[1])
	for _, e := range a.sides {
		least = min(least, e.C-float64(e.NX*dx)-float64(e.NY*dy)-lowest(b.points, e.NX, e.NY))
	}
	for _, e := range b.sides {
		least = min(least, e.C+float64(e.NX*dx)+float64(e.NY*dy)-lowest(a.points, e.NX, e.NY))
	}
	return least
}

func TestPartDepthPassesOverNoSideThatCounts(t *testing.T) {
	rng := rand.New(rand.NewPCG(1, 2))
	parts := drawnParts(rng, 40)
	for range 4000 {
		a, b := &parts[rng.IntN(len(parts))], &parts[rng.IntN(len(parts))]
		dx, dy := 240*rng.Float64()-120, 160*rng.Float64()-80
		require.Equal(t, plainDepth(a, b, dx, dy), partDepth(a, b, dx, dy, math.Inf(-1)))
	}
}

func TestDirectSignedSlopesAsTheDepthGrows(t *testing.T) {
	m := New(1000, 0, 0)
	a, b := add(m, ell, 1, 1, false), add(m, ell, -1, 1, false)
	rng := rand.New(rand.NewPCG(3, 4))
	const step = 1e-6
	for range 2000 {
		dx, dy := 80*rng.Float64()-40, 60*rng.Float64()-30
		depth, gx, gy := m.DirectSigned(a, b, dx, dy)
		require.Equal(t, m.DirectDepth(a, b, dx, dy), max(0, depth))
		require.InDelta(t, 1, math.Hypot(gx, gy), 1e-9)
		after, _, _ := m.DirectSigned(a, b, dx+step*gx, dy+step*gy)
		require.InDelta(t, step, after-depth, step/1e3, "at (%g, %g)", dx, dy)
	}
}
