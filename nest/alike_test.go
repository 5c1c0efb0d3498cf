package nest

import (
	"context"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Many copies are never longer than small lays of them one behind the other, each found
// with the share of the effort that goes to the parts.
func TestCopiesAreNoLongerThanSmallLays(t *testing.T) {
	for seed := uint64(1); seed <= 2; seed++ {
		const times, passes = 3, 5
		small, err := Solve(context.Background(), copiesOf(8, 8), Options{Passes: likeShare * passes, Seed: seed})
		require.NoError(t, err)
		large, err := Solve(context.Background(), copiesOf(8, 8*times), Options{Passes: passes, Seed: seed})
		require.NoError(t, err)
		assert.LessOrEqual(t, large.Layout.Length, times*small.Layout.Length*(1+1e-9))
	}
}
