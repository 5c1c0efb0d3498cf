package search

import (
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/require"
)

// With more shapes than have a table of all pairs, depths are the same, and what is
// kept is bounded.
func TestPairsOfManyShapes(t *testing.T) {
	m := sample(5, 600)
	few, many := newPairs(m), newPairs(m)
	many.dense, many.sparse, many.sparseMost = nil, map[int64]*shapePair{}, 20
	rng := rand.New(rand.NewPCG(7, 8))
	most := 0
	for k := range 60_000 {
		a, b := rng.IntN(len(m.Shapes)), rng.IntN(len(m.Shapes))
		if k%32 > 0 { // one pair in turn is asked about often enough for its table
			a, b = k/6000, 9-k/6000
		}
		x, y := (rng.Float64()-0.5)*200, (rng.Float64()-0.5)*200
		require.Equal(t, few.of(a, b).overlaps(x, y), many.of(a, b).overlaps(x, y))
		many.of(a, b).depth(x, y)
		require.LessOrEqual(t, len(many.sparse)-many.tables, 20)
		if k > 54_000 { // all tables but one have been made
			most = max(most, len(many.sparse)-many.tables)
		}
	}
	require.Positive(t, many.tables)
	require.Equal(t, 20, most, "tables take no room from other pairs")
	ready := 0
	for _, v := range many.sparse {
		if v.view.Ready() {
			ready++
		}
	}
	require.Equal(t, many.tables, ready, "a table is not forgotten")
}

// While a search is in haste a descent asks directly, until a table pays.
func TestDescentsWaitForTables(t *testing.T) {
	for patient, asked := range map[bool]int{false: 0, true: promoteAfter} {
		pairs := newPairs(sample(5, 600))
		pairs.patient = patient
		pair := pairs.of(0, 1)
		for range asked {
			pair.signed(1, 1)
		}
		require.False(t, pair.view.Ready(), "patient: %v", patient)
		pair.signed(1, 1)
		require.True(t, pair.view.Ready(), "patient: %v", patient)
	}
}
