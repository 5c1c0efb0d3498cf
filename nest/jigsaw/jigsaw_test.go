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

// The sets are what they say, and so is what they were cut from.
func TestSetsFillTheirRectangle(t *testing.T) {
	for seed := range uint64(4) {
		sets := jigsaw.Sets(seed)
		require.Len(t, sets, 20)
		for _, set := range sets {
			require.NoError(t, verify.Layout(set.Problem, set.Solved), "%s, seed %d", set.Name, seed)
			area := 0.0
			for _, item := range set.Problem.Items {
				area += math.Abs(planar.Area(item.Outline)) * float64(item.Copies)
			}
			require.InEpsilon(t, set.Solved.Length*set.Problem.Width, area, 1e-12, set.Name)
		}
	}
	require.NotEqual(t, jigsaw.Sets(1), jigsaw.Sets(2))
}

func TestTheSameSeedMakesTheSamePuzzle(t *testing.T) {
	assert.Equal(t, jigsaw.New(3, jigsaw.Curved, 900, 500, 4, 3), jigsaw.New(3, jigsaw.Curved, 900, 500, 4, 3))
	assert.NotEqual(t, jigsaw.New(3, jigsaw.Curved, 900, 500, 4, 3), jigsaw.New(4, jigsaw.Curved, 900, 500, 4, 3))
}

// The search puts every puzzle together, and says of nothing longer that it cannot be
// beaten.
func TestSearchOfPuzzles(t *testing.T) {
	for _, set := range jigsaw.Sets(1) {
		t.Run(set.Name, func(t *testing.T) {
			got, err := nest.Solve(t.Context(), set.Problem, nest.Options{Passes: 300, Seed: 1})
			require.NoError(t, err)
			require.NoError(t, verify.Layout(set.Problem, got.Layout))
			assert.InEpsilon(t, set.Solved.Length, got.Layout.Length, 1e-6)
			assert.LessOrEqual(t, got.Bound, set.Solved.Length*(1+1e-6))
		})
	}
}

// A strip that is a little wider is not filled: it takes the search.
func TestPuzzlesWithWaste(t *testing.T) {
	const length = 900.0
	for _, cut := range jigsaw.Cuts() {
		t.Run(cut.String(), func(t *testing.T) {
			puzzle := jigsaw.New(1, cut, length, 500, 3, 2)
			puzzle.Problem.Width += 5
			got, err := nest.Solve(t.Context(), puzzle.Problem, nest.Options{Passes: 60, Seed: 1})
			require.NoError(t, err)
			require.NoError(t, verify.Layout(puzzle.Problem, got.Layout))
			assert.GreaterOrEqual(t, got.Layout.Length, got.Bound)
			assert.LessOrEqual(t, got.Layout.Length, 1.5*length)
		})
	}
}
