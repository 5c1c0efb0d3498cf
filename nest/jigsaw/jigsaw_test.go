package jigsaw_test

import (
	"math"
	"testing"

	"github.com/paulmach/orb/planar"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/nest"
	"ellwand/nest/bound"
	"ellwand/nest/jigsaw"
	"ellwand/nest/verify"
)

// The rectangle put together again is a layout, and it is full: so it is the
// shortest.
func TestPuzzlesFillTheirRectangle(t *testing.T) {
	for _, cut := range jigsaw.Cuts() {
		t.Run(cut.String(), func(t *testing.T) {
			for seed := range uint64(40) {
				puzzle := jigsaw.New(seed, cut, 900, 500, 1+int(seed%6), 1+int(seed/6%5))
				require.NoError(t, puzzle.Problem.Check(), "seed %d", seed)
				require.NoError(t, verify.Layout(puzzle.Problem, puzzle.Solved), "seed %d", seed)
				area := 0.0
				for _, item := range puzzle.Problem.Items {
					area += math.Abs(planar.Area(item.Outline))
				}
				require.InDelta(t, 900*500, area, 1e-6, "seed %d", seed)
				require.LessOrEqual(t, bound.Length(puzzle.Problem), 900*(1+1e-6), "seed %d", seed)
			}
		})
	}
}

func TestTheSameSeedMakesTheSamePuzzle(t *testing.T) {
	assert.Equal(t, jigsaw.New(3, jigsaw.Curved, 900, 500, 4, 3), jigsaw.New(3, jigsaw.Curved, 900, 500, 4, 3))
	assert.NotEqual(t, jigsaw.New(3, jigsaw.Curved, 900, 500, 4, 3), jigsaw.New(4, jigsaw.Curved, 900, 500, 4, 3))
}

// The search comes near to the rectangle, never below it, and says of nothing
// longer that it cannot be beaten. How near is what we measured, and a little.
func TestSearchOfPuzzles(t *testing.T) {
	const length = 900.0
	most := map[jigsaw.Cut]float64{jigsaw.Straight: 1 + 1e-6, jigsaw.Slanted: 1.02, jigsaw.Curved: 1.35}
	for _, cut := range jigsaw.Cuts() {
		t.Run(cut.String(), func(t *testing.T) {
			puzzle := jigsaw.New(1, cut, length, 500, 3, 2)
			got, err := nest.Solve(t.Context(), puzzle.Problem, nest.Options{Passes: 300, Seed: 1})
			require.NoError(t, err)
			require.NoError(t, verify.Layout(puzzle.Problem, got.Layout))
			assert.GreaterOrEqual(t, got.Layout.Length, length*(1-1e-6))
			assert.LessOrEqual(t, got.Bound, length*(1+1e-6))
			assert.LessOrEqual(t, got.Layout.Length, length*most[cut])
			t.Logf("%s: %.1f of %.0f, bound %.1f", cut, got.Layout.Length, length, got.Bound)
		})
	}
}
