package plan_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/fabric/check"
	"ellwand/fabric/cloth"
	"ellwand/fabric/internal/fabrictest"
	"ellwand/fabric/lay"
	"ellwand/fabric/plan"
	"ellwand/fabric/words"
	"ellwand/pieces"
)

// A single pocket does not forbid the folded lay: it lies on both plies, is cut from the
// lower one when the cloth has been opened, and that is said. Of three one pair is cut
// from both. A single piece that is not small forbids it still.
func TestOddPocketIsCutFromTheLowerPly(t *testing.T) {
	c := cloth.Cloth{Name: "shirting", Width: 1220, Selvedge: 10}
	shirt := []pieces.Piece{fabrictest.Half("back", 300, 700, 1), fabrictest.Half("front", 300, 500, 1),
		fabrictest.Rectangle("side", 280, 1200, 2)}
	for cut, templates := range map[int]int{1: 1, 3: 2} {
		all := append(shirt[:3:3], fabrictest.Rectangle("pocket", 100, 120, cut))
		p := inLay(t, c, lay.FoldedAlong, all...)
		require.True(t, p.Possible(), words.WhyNot(p))
		var pockets []lay.Laid
		for _, l := range p.Pieces {
			if l.Name == "pocket" {
				pockets = append(pockets, l)
			}
		}
		require.Len(t, pockets, templates)
		assert.Contains(t, p.Notes, lay.Note{Of: lay.CutOnce, Pieces: []string{"pocket"}})
		spoiled := p
		spoiled.Pieces = append([]lay.Laid(nil), p.Pieces...)
		for i := range spoiled.Pieces {
			spoiled.Pieces[i].FromLower = false
		}
		assert.ErrorContains(t, check.Plan(spoiled, all), "pocket: ")
	}
	options := plan.Options{Passes: 1, Lays: []lay.Kind{lay.FoldedAlong}}
	_, err := plan.Require(t.Context(), c, append(shirt[:3:3], fabrictest.Rectangle("yoke", 400, 200, 1)), options)
	assert.ErrorContains(t, words.Refused(c, err), "yoke: a single piece cannot be cut from two plies")
}

// Where as much is bought, the lay with the least to chalk is the one: two pairs of cuffs
// are four outlines of 500 mm open; cut across, two of them and 1,200 mm of chalk for the
// cut, in fewer cuts.
func TestLeastChalkOfEqualLays(t *testing.T) {
	c := cloth.Cloth{Name: "shell", Width: 1220, Selvedge: 10, PurchaseStep: 1000}
	cuffs := []pieces.Piece{fabrictest.Rectangle("cuff", 150, 100, 2), fabrictest.Rectangle("facing", 150, 100, 2)}
	options := fabrictest.Brief
	options.Lays = []lay.Kind{lay.Open, lay.CutAcross}
	got, err := plan.Require(t.Context(), c, cuffs, options)
	require.NoError(t, err)
	assert.Less(t, got.Lays[1].Cuts, got.Lays[0].Cuts)
	assert.Equal(t, lay.Open, got.Lays[got.Chosen].Lay)
}
