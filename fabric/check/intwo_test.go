package check_test

import (
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/fabric/check"
	"ellwand/fabric/cloth"
	"ellwand/fabric/internal/fabrictest"
	"ellwand/fabric/lay"
	"ellwand/fabric/plan"
)

// Laid round what a hand has laid in a lay of two parts, a plan is proven; with that piece
// written on the other part, or moved onto it, it is refused.
func TestProofHoldsWhatAHandLaidInTwoParts(t *testing.T) {
	c := cloth.Cloth{Name: "shell", Width: 1400, Selvedge: 10}
	all := fabrictest.Blouse()
	for _, kind := range []lay.Kind{lay.InStretches, lay.SelvedgeIn} {
		was := laid(t, c, kind, all...)
		require.Len(t, was.Beds, 2, "%s", kind)
		at := slices.IndexFunc(was.Pieces, func(l lay.Laid) bool { return l.Bed == 1 })
		l := was.Pieces[at]
		by := c
		by.ByHand = []cloth.HandLaid{{Width: c.Width, Lay: int(kind), FoldedIn: was.FoldedIn, Pieces: []cloth.HandPiece{{
			Name: l.Name, Garment: l.Garment, Copy: l.Copy, At: [2]float64{l.X + 30, l.Y}, Turn: l.Turn,
			FaceDown: l.Mirrored, OnFold: l.OnFold, OnOpen: true,
		}}}}
		options := fabrictest.Brief
		options.Fixed = plan.HandLays(by, nil)[0]
		need, err := plan.Require(t.Context(), by, all, options)
		require.NoError(t, err, "%s", kind)
		found := need.Lays[need.Chosen]
		require.NoError(t, check.Plan(found, all), "%s", kind)
		hand := slices.IndexFunc(found.Pieces, func(l lay.Laid) bool { return l.ByHand })
		require.GreaterOrEqual(t, hand, 0, "%s", kind)

		other := found
		other.Pieces = slices.Clone(found.Pieces)
		other.Pieces[hand].Bed = 0
		assert.Error(t, check.Plan(other, all), "%s: on the other part", kind)
		other.Pieces = slices.Clone(found.Pieces)
		to := other.Pieces[slices.IndexFunc(other.Pieces, func(l lay.Laid) bool { return l.Bed == 0 })]
		from := other.Pieces[hand].Outline.Bound().Center()
		moved(&other.Pieces[hand], to.Outline.Bound().Center()[0]-from[0], to.Outline.Bound().Center()[1]-from[1])
		assert.Error(t, check.Plan(other, all), "%s: moved onto the other part", kind)
	}
}
