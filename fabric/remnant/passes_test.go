package remnant_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/fabric/cloth"
	"ellwand/fabric/internal/fabrictest"
	"ellwand/fabric/lay"
	"ellwand/fabric/plan"
	"ellwand/fabric/remnant"
	"ellwand/testdata/sample"
)

// With a budget of passes the answer is the same whatever the number of cores:
// of every lay, and of a remnant that is enough, cannot be known to be, or is
// filled.
func TestPassesAreTheSameOnAnyMachine(t *testing.T) {
	t.Parallel()
	all := fabrictest.DraftedBlouse("14")
	c := cloth.Cloth{Width: 1400, Selvedge: 10}
	lays := []lay.Kind{lay.FoldedAlong, lay.SelvedgeIn, lay.Open}
	if sample.Long() {
		lays = lay.Kinds()
	}
	var needs []plan.Requirement
	for _, workers := range []int{1, 3} {
		need, err := plan.Require(t.Context(), c, all, plan.Options{Passes: 2, Seed: 2, Workers: workers, Lays: lays})
		require.NoError(t, err)
		needs = append(needs, need)
		assert.Equal(t, needs[0], need, "%d workers", workers)
	}
	for _, share := range []float64{1.02, 0.98} {
		var fits []remnant.Result
		for _, workers := range []int{1, 3} {
			r := remnant.Remnant{Cloth: c, Length: share * needs[0].Length}
			got, err := remnant.Fit(t.Context(), r, all, plan.Options{Passes: 10, Seed: 2, Workers: workers})
			require.NoError(t, err)
			fits = append(fits, got)
			assert.Equal(t, fits[0], got, "%g of the length, %d workers", share, workers)
		}
	}
}
