package nest

import (
	"context"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/nest/internal/search"
	"ellwand/nest/layout"
	"ellwand/nest/verify"
)

// Curved outlines have coarser levels; those of few corners, and sheets, have none.
func TestLevelsOfCurvedOutlinesAlone(t *testing.T) {
	levelsOf := func(p layout.Problem) []coarse {
		q, err := prepare(p, nil, nil, nil)
		require.NoError(t, err)
		return q.coarser()
	}
	found := levelsOf(draftedProblem(8, 1))
	require.NotEmpty(t, found)
	_, parts := found[0].model.Size()
	_, all := modelOf(t, draftedProblem(8, 1)).Size()
	require.LessOrEqual(t, fewerParts*parts, all)
	require.Empty(t, levelsOf(squares(33, 1, 4, 7, 8)))
	sheet := draftedProblem(8, 1)
	sheet.Length = 3000
	require.Empty(t, levelsOf(sheet))
}

// What a search of coarser outlines finds is a layout of the problem, and there sooner.
func TestCoarseLayoutVerifies(t *testing.T) {
	for _, gap := range []float64{0, 6} {
		p := draftedProblem(10, 1)
		p.Gap = gap
		q, err := prepare(p, nil, nil, nil)
		require.NoError(t, err)
		r := newRun(context.Background(), q, Options{Passes: 400, Seed: 3, Clock: wallClock}, 0)
		r.best = make([]search.Outcome, 1)
		c := r.coarsely(0, q.coarser())
		require.Len(t, c.best.Spots, 10)
		require.Equal(t, r.best[0], c.best)
		require.Positive(t, c.made)
		require.LessOrEqual(t, c.made, c.passed)
		require.NoError(t, verify.Layout(p, q.layout(r.best[0].Spots)), "gap %g", gap)

		one, err := Solve(context.Background(), p, Options{Passes: 1, Seed: 3})
		require.NoError(t, err)
		require.Less(t, r.best[0].Length, one.Layout.Length)
	}
}

// A little time does not suffice for the tables of many outlines with many parts.
func TestTablesThatATimeAffords(t *testing.T) {
	q, err := prepare(draftedProblem(40, 1), nil, nil, nil)
	require.NoError(t, err)
	assert.True(t, affords(q.model, 0), "passes may take any time")
	assert.True(t, affords(q.model, time.Hour))
	assert.False(t, affords(q.model, time.Second/10))
	q, err = prepare(squares(33, 1, 4, 7), nil, nil, nil)
	require.NoError(t, err)
	assert.True(t, affords(q.model, time.Second/10))
}
