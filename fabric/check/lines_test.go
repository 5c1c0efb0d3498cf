package check_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/fabric/check"
	"ellwand/fabric/cloth"
	"ellwand/fabric/internal/fabrictest"
	"ellwand/fabric/plan"
	"ellwand/pieces"
)

// What was learned of lines before proves no more and no less than nothing known.
func TestLinesLearnedProveTheSame(t *testing.T) {
	all := []pieces.Piece{fabrictest.Rectangle("panel", 200, 300, 3), fabrictest.Rectangle("belt", 60, 500, 1)}
	need, err := plan.Require(t.Context(), cloth.Cloth{Width: 1000, Gap: 5}, all, plan.Options{Passes: 3})
	require.NoError(t, err)
	known := &check.Lines{}
	known.Learn(all)
	for _, p := range need.Found {
		require.NoError(t, known.Plan(p, all))
		for i := range p.Pieces {
			p.Pieces[i].X += 400
		}
		err := known.Plan(p, all)
		require.Error(t, err)
		assert.Equal(t, check.Plan(p, all).Error(), err.Error())
	}
}
