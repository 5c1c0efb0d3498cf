package marker

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
)

// TestEdgeLines: which edges are folds, with and without a selvedge. Seen from
// the far edge to the near one, length by length.
func TestEdgeLines(t *testing.T) {
	for kind, want := range map[lay.Kind][]bool{
		lay.Open: {false, false}, lay.FoldedAlong: {false, true}, lay.FoldedAcross: {false, false},
		lay.CutAcross:  {false, false},
		lay.SelvedgeIn: {false, true}, lay.BothSelvedgesIn: {true, true}, lay.InStretches: {false, true, false, false},
	} {
		for _, selvedge := range []float64{0, 10} {
			plan := lay.Plan{Cloth: cloth.Cloth{Width: 1000, Selvedge: selvedge}, Lay: kind, Plies: kind.Plies(), Width: 980,
				Length: 900, Buy: 1000, Beds: []lay.Bed{{Length: 400}, {X: 400, Length: 500}}}
			var got []bool
			for _, edge := range EdgeLines(plan) {
				got = append(got, edge.IsFold)
				assert.InDelta(t, edge.From[1], edge.To[1], 0)
				assert.Less(t, edge.From[0], edge.To[0])
			}
			assert.Equal(t, want, got, "%s, selvedge %g", kind, selvedge)
		}
	}
}
