package nest_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/nest"
	"ellwand/nest/jigsaw"
)

// Tables that an earlier search has filled change nothing of what is found.
func TestSharedTablesChangeNoResult(t *testing.T) {
	puzzle := jigsaw.New(7, jigsaw.Curved, 60, 40, 4, 3)
	problem := puzzle.Problem
	options := nest.Options{Passes: 60, Seed: 3}
	options.Tables = nest.NewTables(problem.Width)
	first, err := nest.Solve(t.Context(), problem, options)
	require.NoError(t, err)
	again, err := nest.Solve(t.Context(), problem, options)
	require.NoError(t, err)
	assert.Equal(t, first.Layout, again.Layout)
	options.Tables = nil
	alone, err := nest.Solve(t.Context(), problem, options)
	require.NoError(t, err)
	assert.Equal(t, first.Layout, alone.Layout, "the width is that of the tables")
}
