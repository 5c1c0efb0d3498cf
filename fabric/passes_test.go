package fabric_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/fabric"
	"ellwand/fabric/cloth"
	"ellwand/testdata/sample"
)

// With a budget of passes the answer is the same whatever the number of cores:
// of every lay, and of a remnant that is enough, cannot be known to be, or is
// filled.
func TestPassesAreTheSameOnAnyMachine(t *testing.T) {
	t.Parallel()
	all := draftedBlouse("14")
	c := cloth.Cloth{Width: 1400, Selvedge: 10}
	lays := []fabric.Lay{fabric.FoldedAlong, fabric.SelvedgeIn, fabric.Open}
	if sample.Long() {
		lays = fabric.AllLays()
	}
	var needs []fabric.Requirement
	for _, workers := range []int{1, 3} {
		need, err := fabric.Require(t.Context(), c, all, fabric.Options{Iterations: 2, Seed: 2, Workers: workers, Lays: lays})
		require.NoError(t, err)
		needs = append(needs, need)
		assert.Equal(t, needs[0], need, "%d workers", workers)
	}
	for _, share := range []float64{1.02, 0.98} {
		var fits []fabric.RemnantFit
		for _, workers := range []int{1, 3} {
			remnant := fabric.Remnant{Cloth: c, Length: share * needs[0].Length}
			got, err := fabric.Fit(t.Context(), remnant, all, fabric.Options{Iterations: 10, Seed: 2, Workers: workers})
			require.NoError(t, err)
			fits = append(fits, got)
			assert.Equal(t, fits[0], got, "%g of the length, %d workers", share, workers)
		}
	}
}
