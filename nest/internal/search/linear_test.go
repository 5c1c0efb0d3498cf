package search

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/require"
)

// In a window wide enough no step costs less by the planes than the one that is
// chosen.
func TestBestStepAgainstAllSteps(t *testing.T) {
	rng := rand.New(rand.NewPCG(7, 8))
	wide := window{-1e9, -1e9, 1e9, 1e9}
	for range 300 {
		var all []linear
		for range 1 + rng.IntN(6) {
			a := 2 * math.Pi * rng.Float64()
			all = append(all, linear{2*rng.Float64() - 0.7, math.Cos(a), math.Sin(a), 0.5 + rng.Float64()})
		}
		all[0].depth = 0.1 + rng.Float64()
		chosen := bestStep(all, wide, 1e-12)
		require.InDelta(t, costBy(all, chosen.x, chosen.y), chosen.cost, 1e-6)
		for range 2000 {
			x, y := 20*(rng.Float64()-0.5), 20*(rng.Float64()-0.5)
			require.LessOrEqual(t, chosen.cost, costBy(all, x, y)+1e-6)
		}
	}
}

// Whatever the planes, the step stays in the window.
func TestBestStepStaysInTheWindow(t *testing.T) {
	rng := rand.New(rand.NewPCG(9, 10))
	for range 300 {
		w := window{-rng.Float64(), -rng.Float64(), rng.Float64(), rng.Float64()}
		all := []linear{
			{rng.Float64(), rng.NormFloat64(), rng.NormFloat64(), 1},
			{rng.Float64(), rng.NormFloat64(), rng.NormFloat64(), 1},
		}
		to := bestStep(all, w, 1e-12)
		require.True(t, to.x >= w.x0 && to.x <= w.x1 && to.y >= w.y0 && to.y <= w.y1)
	}
}

func costBy(all []linear, x, y float64) float64 {
	var cost float64
	for _, b := range all {
		cost += b.factor * math.Max(0, b.depth+b.gx*x+b.gy*y)
	}
	return cost
}

// Out of one overlap the way is straight.
func TestBestStepOutOfOneIsStraight(t *testing.T) {
	to := bestStep([]linear{{depth: 1, gx: 0.6, gy: 0.8, factor: 2}}, window{-5, -5, 5, 5}, 1e-12)
	require.InDelta(t, -0.6, to.x, 1e-12)
	require.InDelta(t, -0.8, to.y, 1e-12)
	require.InDelta(t, 0, to.cost, 1e-12)
}

func BenchmarkBestStep(b *testing.B) {
	all := []linear{{0.5, 1, 0, 1}, {0.2, 0, 1, 2}, {-0.3, -0.6, 0.8, 1}, {-0.1, -0.8, -0.6, 1}}
	for b.Loop() {
		bestStep(all, window{-1, -1, 1, 1}, 1e-12)
	}
}
