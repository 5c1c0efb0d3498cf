package marker

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"ellwand/fabric"
	"ellwand/fabric/cloth"
)

// TestEdgeLines: which edges are folds, with and without a selvedge. Seen from
// the far edge to the near one, length by length.
func TestEdgeLines(t *testing.T) {
	for lay, want := range map[fabric.Lay][]bool{
		fabric.Open: {false, false}, fabric.FoldedAlong: {false, true}, fabric.FoldedAcross: {false, false}, fabric.CutAcross: {false, false},
		fabric.SelvedgeIn: {false, true}, fabric.BothSelvedgesIn: {true, true}, fabric.InStretches: {false, true, false, false},
	} {
		for _, selvedge := range []float64{0, 10} {
			plan := fabric.LayPlan{Cloth: cloth.Cloth{Width: 1000, Selvedge: selvedge}, Lay: lay, Plies: lay.Plies(), Width: 980, Length: 900, Buy: 1000,
				Parts: []fabric.Part{{Length: 400}, {X: 400, Length: 500}}}
			var got []bool
			for _, edge := range EdgeLines(plan) {
				got = append(got, edge.IsFold)
				assert.InDelta(t, edge.From[1], edge.To[1], 0)
				assert.Less(t, edge.From[0], edge.To[0])
			}
			assert.Equal(t, want, got, "%s, selvedge %g", lay, selvedge)
		}
	}
}
