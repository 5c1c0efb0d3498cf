package nofit

import (
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/require"

	"ellwand/nest/internal/convex"
)

// pictured is a field of 20 x 20 places about two outlines that lie apart, each
// with a view of its own, and what they weigh.
func pictured(rng *rand.Rand) (*Field, [2]View, [2][2]float64, [2]float64) {
	flip := func() float64 { return float64(2*rng.IntN(2) - 1) }
	var views [2]View
	for k := range views {
		views[k] = Build(convex.Parts(star(rng, 12)), convex.Parts(star(rng, 8)), 0, 48, 1e-9).View(flip(), flip())
	}
	f := &Field{X: -9 + rng.Float64(), Y: -9 + rng.Float64(), StepX: 0.9, StepY: 0.8}
	f.Reset(20, 20)
	at := [2][2]float64{{-3 * rng.Float64(), rng.Float64()}, {4 * rng.Float64(), -5 * rng.Float64()}}
	return f, views, at, [2]float64{1, 5 * rng.Float64()}
}

// The oracle is the depth at each place, which changes by no more than the way
// to the nearest corner and is itself exact to a cell.
func TestFieldIsAboutTheSumOfDepths(t *testing.T) {
	rng := rand.New(rand.NewPCG(21, 22))
	for range 30 {
		f, views, at, factors := pictured(rng)
		for k := range views {
			views[k].AddTo(f, at[k][0], at[k][1], factors[k])
		}
		for i, cost := range f.Costs {
			x, y := f.X+float64(i%f.NX)*f.StepX, f.Y+float64(i/f.NX)*f.StepY
			var want, slack float64
			for k := range views {
				want += factors[k] * views[k].Depth(x-at[k][0], y-at[k][1])
				slack += factors[k] * 1.7 * views[k].table.side
			}
			require.InDelta(t, want, float64(cost), slack, "place %d", i)
		}
	}
}

// In one table of eight d / (d/255) comes out above 255 where d is the greatest
// depth: its byte must not turn over to 0.
func TestDepthsOfATableAreThoseOfItsCells(t *testing.T) {
	rng := rand.New(rand.NewPCG(25, 26))
	for range 40 {
		table := Build(convex.Parts(star(rng, 12)), convex.Parts(star(rng, 8)), 0, 48, 1e-9)
		for k, cell := range table.cells {
			depth := max(0, float64(cell.corners[0])*table.unit)
			require.InDelta(t, depth, float64(table.depths[k])*table.depthUnit, table.depthUnit+table.unit)
		}
	}
}

func TestFieldWithoutAnExtentOrFarAway(t *testing.T) {
	rng := rand.New(rand.NewPCG(23, 24))
	f, views, _, _ := pictured(rng)
	f.Reset(1, 5)
	f.X, f.Y, f.StepX, f.StepY = 0, 0, 0, 0
	views[0].AddTo(f, 0.1, 0, 1)
	want := views[0].Depth(-0.1, 0)
	for _, cost := range f.Costs {
		require.InDelta(t, want, float64(cost), 1.7*views[0].table.side)
	}
	f.Reset(1, 5)
	views[0].AddTo(f, 1e6, 0, 1)
	f.StepX, f.StepY = 1e7, 1e7 // a single step is longer than the table
	views[0].AddTo(f, 0, -1e6, 1)
	require.Equal(t, []float32{0, 0, 0, 0, 0}, f.Costs)
}

func TestUndercut(t *testing.T) {
	f := &Field{}
	f.Reset(3, 2)
	copy(f.Costs, []float32{
		1, 2, 0,
		1, 3, 1,
	})
	for i, want := range []bool{false, true, false, true, true, true} {
		require.Equal(t, want, f.Undercut(i), "place %d", i)
	}
}

func BenchmarkField(b *testing.B) {
	rng := rand.New(rand.NewPCG(25, 26))
	f, views, at, _ := pictured(rng)
	for b.Loop() {
		for k := range views {
			views[k].AddTo(f, at[k][0], at[k][1], 1)
		}
	}
}
