package plan_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/fabric/plan"
	"ellwand/fabric/words"
	"ellwand/pieces"
	"ellwand/pieces/seams"
)

// A crease down the middle is where the cloth is folded: pieces on the fold
// cannot lie there, and the other lays are given.
func TestCreaseDownTheMiddle(t *testing.T) {
	front, back := pieces.Rectangle("front", 280, 600), pieces.Rectangle("back", 280, 600)
	front.Fold = seams.Left
	back.Cut, back.Pair = 2, true
	c := cloth.Cloth{Name: "shell", Width: 1200, Selvedge: 10, PurchaseStep: 100,
		Flaws: []cloth.Flaw{cloth.BandFlaw("crease", 590, 610)}}
	need, err := plan.Require(t.Context(), c, []pieces.Piece{front, back}, plan.Options{Passes: 3, Seed: 1})
	require.NoError(t, err)
	possible := map[lay.Kind]bool{}
	for _, p := range need.Lays {
		possible[p.Lay] = p.Possible() || p.Throughout != nil
		if p.Lay == lay.FoldedAlong {
			assert.Equal(t, "front: a flaw runs along the fold; lay the cloth open, or fold it elsewhere", words.WhyNot(p))
		}
	}
	assert.True(t, possible[lay.Open])
	assert.True(t, possible[lay.SelvedgeIn], "the fold elsewhere")
	assert.True(t, possible[lay.BothSelvedgesIn], "the folds elsewhere")
	assert.False(t, possible[lay.FoldedAlong])

	// Pieces that need no fold lie beside the crease in two plies.
	_, err = plan.Require(t.Context(), c, []pieces.Piece{back}, plan.Options{Passes: 3, Lays: []lay.Kind{lay.FoldedAlong}})
	assert.NoError(t, err)
	wide := pieces.Rectangle("panel", 700, 500)
	_, err = plan.Require(t.Context(), c, []pieces.Piece{wide}, plan.Options{Passes: 3, Lays: []lay.Kind{lay.Open}})
	assert.ErrorContains(t, words.Refused(c, err),
		"panel: it is 70 cm wide, and flaws that run along the cloth leave only 58 cm "+
			"in one piece")
}
