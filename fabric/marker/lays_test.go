package marker

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/fabric/plan"
	"ellwand/pieces"
	"ellwand/pieces/geometry"
	"ellwand/pieces/seams"
)

// everyLay has a few pieces in each kind of lay but the usual two.
func everyLay(t *testing.T) map[lay.Kind]lay.Plan {
	goods := cloth.Cloth{Name: "linen", Width: 1220, Selvedge: 10, PurchaseStep: 100}
	fold := pieces.Rectangle("back", 200, 500)
	fold.Fold = seams.Left
	cape := pieces.Rectangle("cape", 700, 500)
	cape.Cut = 2
	yoke := pieces.Rectangle("yoke", 600, 200)
	out := map[lay.Kind]lay.Plan{}
	for kind, all := range map[lay.Kind][]pieces.Piece{
		lay.FoldedAcross: {cape}, lay.CutAcross: {cape}, lay.SelvedgeIn: {fold, yoke}, lay.BothSelvedgesIn: {fold},
		lay.InStretches: {fold, yoke},
	} {
		got, err := plan.Require(t.Context(), goods, all, plan.Options{Passes: 40, Seed: 1, Lays: []lay.Kind{kind}})
		require.NoError(t, err)
		out[kind] = got.Lays[0]
	}
	return out
}

// TestWordsOfEveryLay: each lay is drawn with its folds and selvedges named,
// and says with which measures it is folded.
func TestWordsOfEveryLay(t *testing.T) {
	plans := everyLay(t)
	for kind, words := range map[lay.Kind][]string{
		lay.FoldedAcross: {"fold", "both selvedges", "both ends of the cloth", "At least 100 cm must be left",
			"at least 50 cm"},
		lay.CutAcross: {"two cut ends", "Measure 50 cm along both selvedges", "its pinned end on your left",
			"cut end, cm"},
		lay.SelvedgeIn:      {"edge folded in", "Put pins 42 cm from the edge", "2 and 1", "selvedge"},
		lay.BothSelvedgesIn: {"selvedges meet", "61 cm from either edge", "from fold to fold"},
		lay.InStretches: {"cut across here, 50 cm", "Measure 50 cm along both selvedges",
			"fold, then selvedge nearest to you", "fold or selvedge"},
	} {
		t.Run(kind.String(), func(t *testing.T) {
			require.NoError(t, Proven(plans[kind], Options{}))
			require.NoError(t, Proven(plans[kind], Options{Inches: true}))
			text := textOf(t, written(t, plans[kind], Options{Job: "Cape for Ilse Marlow"}))
			for _, want := range append(words, "lay "+kind.String()) {
				assert.Contains(t, text, want)
			}
		})
	}
}

// What lies within a millimetre of a fold reaches it, and what is cut on the fold does
// not: by hand, on a part from 100 to 600 across.
func TestReachesFold(t *testing.T) {
	plan := lay.Plan{Beds: []lay.Bed{{Y: 100, Width: 500, FoldLow: true}, {Y: 100, Width: 500, FoldHigh: true}}}
	for _, c := range []struct {
		part    int
		low     float64 // of a piece 50 wide
		onFold  bool
		reaches bool
	}{
		{0, 100, false, true}, {0, 100.9, false, true}, {0, 101.1, false, false}, {0, 100, true, false},
		{0, 550, false, false},
		{1, 550, false, true}, {1, 549.1, false, true}, {1, 548.9, false, false}, {1, 550, true, false},
		{1, 100, false, false},
	} {
		laid := lay.Laid{Bed: c.part, OnFold: c.onFold, Outline: geometry.Rectangle(0, c.low, 80, c.low+50)}
		assert.Equal(t, c.reaches, reachesFold(plan, laid), "%+v", c)
	}
}
