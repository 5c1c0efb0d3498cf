package plan_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/fabric/cloth"
	"ellwand/fabric/internal/fabrictest"
	"ellwand/fabric/lay"
	"ellwand/fabric/plan"
)

// A lay that by its bound cannot come near the shortest is searched little, and shown all
// the same: two long panels, which lie beside each other, take twice their length folded
// or cut across.
func TestHopelessLaysHaveLittleEffort(t *testing.T) {
	c := cloth.Cloth{Width: 1020, Selvedge: 10}
	all := fabrictest.InGarment("curtain", fabrictest.Rectangle("panel", 480, 1500, 2))
	options := plan.Options{Passes: 100, Seed: 1}
	work := func(kinds ...lay.Kind) (plan.Requirement, int) {
		options.Lays = kinds
		need, err := plan.Require(t.Context(), c, all, options)
		require.NoError(t, err)
		return need, need.Work.Due
	}
	_, along := work(lay.FoldedAlong)
	_, across := work(lay.FoldedAcross)
	assert.Equal(t, along, across)
	need, both := work(lay.FoldedAlong, lay.FoldedAcross)
	assert.Equal(t, along+across/40, both, "a tenth of the quarter that it has beside others")
	require.Len(t, need.Found, 2)
	assert.InDelta(t, 1500, need.Length, 1e-3)
	assert.GreaterOrEqual(t, need.Lays[1].Taken, 3000.0)
}
