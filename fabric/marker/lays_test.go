package marker

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/fabric/plan"
	"ellwand/pieces"
	"ellwand/pieces/seams"
)

// TestWordsOfEveryLay: each lay is drawn with its folds and selvedges named,
// and says with which measures it is folded.
func TestWordsOfEveryLay(t *testing.T) {
	goods := cloth.Cloth{Name: "linen", Width: 1220, Selvedge: 10, Step: 100}
	fold := pieces.Rectangle("back", 200, 500)
	fold.Fold = seams.Left
	cape := pieces.Rectangle("cape", 700, 500)
	cape.Cut = 2
	yoke := pieces.Rectangle("yoke", 600, 200)
	for _, c := range []struct {
		lay  lay.Kind
		all  []pieces.Piece
		want []string
	}{
		{lay.FoldedAcross, []pieces.Piece{cape},
			[]string{"fold", "both selvedges", "both ends of the cloth", "At least 100 cm must be left", "at least 50 cm"}},
		{lay.CutAcross, []pieces.Piece{cape}, []string{"two cut ends", "Measure 50 cm along both selvedges",
			"its pinned end on your left", "cut end, cm"}},
		{lay.SelvedgeIn, []pieces.Piece{fold, yoke},
			[]string{"edge folded in", "Put pins 42 cm from the edge", "2 and 1", "selvedge"}},
		{lay.BothSelvedgesIn, []pieces.Piece{fold},
			[]string{"selvedges meet", "61 cm from either edge", "from fold to fold"}},
		{lay.InStretches, []pieces.Piece{fold, yoke},
			[]string{"cut across here, 50 cm", "Measure 50 cm along both selvedges", "fold, then selvedge nearest to you",
				"fold or selvedge"}},
	} {
		t.Run(c.lay.String(), func(t *testing.T) {
			got, err := plan.Require(t.Context(), goods, c.all, plan.Options{Passes: 40, Seed: 1, Lays: []lay.Kind{c.lay}})
			require.NoError(t, err)
			require.NoError(t, Proven(got.Lays[0], Options{}))
			require.NoError(t, Proven(got.Lays[0], Options{Inches: true}))
			text := textOf(t, written(t, got.Lays[0], Options{Job: "Cape for Ilse Marlow"}))
			for _, want := range append(c.want, "lay "+c.lay.String()) {
				assert.Contains(t, text, want)
			}
		})
	}
}
