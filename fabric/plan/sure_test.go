package plan_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/fabric/cloth"
	"ellwand/fabric/internal/fabrictest"
	"ellwand/fabric/lay"
	"ellwand/fabric/plan"
	"ellwand/fabric/quote"
	"ellwand/pieces"
)

// A rectangle drawn about a piece of another shape proves nothing: the bound is that of
// the other pieces, 200 mm of the panel and not 700 of both, in every lay; nor may
// compare say that a remnant of 500 mm cannot do. Without other pieces nothing is proven.
func TestApproximatePiecesProveNothing(t *testing.T) {
	c := cloth.Cloth{Width: 520, Selvedge: 10}
	about := fabrictest.Rectangle("collar", 500, 250, 2)
	panel := fabrictest.Rectangle("panel", 500, 200, 1)
	certain, err := plan.Require(t.Context(), c, []pieces.Piece{about, panel}, fabrictest.Brief)
	require.NoError(t, err)
	assert.InDelta(t, 700, certain.Lays[0].Bound, 1e-3)
	about.Approximate = true
	for _, test := range []struct {
		all   []pieces.Piece
		bound float64
	}{{[]pieces.Piece{about, panel}, 200}, {[]pieces.Piece{about}, 0}} {
		got, err := plan.Require(t.Context(), c, test.all, fabrictest.Brief)
		require.NoError(t, err)
		for _, p := range got.Lays {
			if p.Possible() {
				assert.InDelta(t, test.bound, p.Least(), 1e-3, p.Lay)
				assert.Equal(t, lay.Note{Of: lay.Unsure, Pieces: []string{"collar"}}, p.Notes[len(p.Notes)-1])
			}
		}
		offer := quote.Offer{Name: "end", Cloth: c, Remnant: &quote.Remnant{Length: 500}}
		ranked := quote.Compare([]quote.Candidate{{Offer: offer, Found: quote.FoundIn(got)}}, quote.Units{})
		assert.NotContains(t, ranked[0].Refused, "cannot do")
	}
	about = fabrictest.Rectangle("collar", 480, 250, 2)
	about.Accuracy = 5
	got, err := plan.Require(t.Context(), c, []pieces.Piece{about}, fabrictest.Brief)
	require.NoError(t, err)
	assert.InDelta(t, 480, got.Lays[0].Bound, 1, "two of 240 mm, as small as they may be")
}
