package plan

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/fabric/bed"
	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/fabric/purchase"
	"ellwand/fabric/rules"
	"ellwand/nest"
	"ellwand/pieces"
)

// By hand: 30 mm of straightening, 4 % of the warp and 5 % of safety make
// (930 + 30) / 0.96 * 1.05 = 1050 mm of 930.
func TestAboveStep(t *testing.T) {
	goods := cloth.Cloth{PurchaseStep: 50, Straighten: 30, Shrinkage: cloth.Shrinkage{Warp: 0.04},
		Safety: cloth.Addition{Share: 0.05}}
	assert.InDelta(t, 1050, purchase.Need(goods, 930), 1e-9)
	for _, c := range []struct {
		lay    lay.Kind
		length float64
		near   bool
		target float64
	}{
		{lay.Open, 930.4, true, 930}, {lay.Open, 930.6, false, 0}, {lay.Open, 929.9, false, 0},
		{lay.FoldedAcross, 465.2, true, 465},
	} {
		target, near := aboveIncrement(goods, bed.Bed{Kind: c.lay}, c.length)
		assert.Equal(t, c.near, near, "%s, %g", c.lay, c.length)
		if c.near {
			assert.InDelta(t, c.target, target, 1e-6)
		}
	}
	goods.HandLaying = cloth.Addition{Share: 0.02, Length: 4} // (910 * 1.02 + 4 + 27.8) / 0.96 * 1.05 = 1050 mm of 910
	goods.Straighten = 27.8
	assert.InDelta(t, 1050, purchase.Need(goods, 910), 1e-9)
	target, near := aboveIncrement(goods, bed.Bed{Kind: lay.Open}, 910.4)
	assert.True(t, near)
	assert.InDelta(t, 910, target, 1e-6)
	goods.PurchaseStep = 0
	_, near = aboveIncrement(goods, bed.Bed{Kind: lay.Open}, 910.4)
	assert.False(t, near)
}

// TestBelowStep: a layout of 400.3 mm, whose second piece could lie 0.3 mm
// nearer, costs a whole step until it does.
func TestBelowStep(t *testing.T) {
	c := cloth.Cloth{Width: 200, PurchaseStep: 100}
	piece := pieces.Rectangle("square", 200, 200)
	piece.Cut = 2
	wanted, err := rules.DemandsOf([]pieces.Piece{piece})
	require.NoError(t, err)
	b := bed.Of(c, lay.Open)
	templates, err := rules.TemplatesOf(c, b, wanted)
	require.NoError(t, err)
	problem, err := rules.ProblemOf(c, b, templates)
	require.NoError(t, err)
	found := SolvedBed{Bed: b, Templates: templates, Problem: problem, Bound: 400}
	result, err := nest.Solve(t.Context(), problem, nest.Options{Passes: 20})
	require.NoError(t, err)
	found.Layout = result.Layout
	last := &found.Layout.Placements[0]
	if found.Layout.Placements[1].X > last.X {
		last = &found.Layout.Placements[1]
	}
	last.X += 0.3
	found.Layout.Length = LengthOf(problem, found.Layout)
	require.InDelta(t, 400.3, found.Layout.Length, 1e-3)
	desk := &Planner{Ctx: t.Context(), Cloth: c, Options: Options{Passes: 100, Seed: 1}}
	require.NoError(t, desk.belowIncrement(&found, 1))
	assert.Equal(t, 400.0, purchase.RoundUp(c, purchase.Need(c, found.Layout.Length)))
}
