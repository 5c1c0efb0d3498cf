package remnant_test

import (
	"context"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/fabric/plan"
	"ellwand/fabric/remnant"
	"ellwand/pieces"
)

// By hand, on cloth of 1 m: a piece of 60 by 50 cm that was cut from the end is followed
// by one of 100 by 40; where it was cut 40 cm further on, the other goes before it.
func TestFixedPiecesStay(t *testing.T) {
	goods := cloth.Cloth{Width: 1000}
	cut := rectangle("cut", 600, 500, 1)
	first, err := remnant.Fit(context.Background(), remnant.Remnant{Cloth: goods, Length: 2000}, []pieces.Piece{cut},
		plan.Options{Passes: 2, Lays: []lay.Kind{lay.Open}})
	require.NoError(t, err)
	require.Len(t, first.Plan.Pieces, 1)
	all := []pieces.Piece{cut, rectangle("new", 1000, 400, 1)}
	for _, at := range []float64{0, 400} {
		fixed := first.Plan
		fixed.Pieces = []lay.Laid{first.Plan.Pieces[0]}
		fixed.Pieces[0].X += at
		fit := func(length float64) remnant.Result {
			out, err := remnant.Fit(context.Background(), remnant.Remnant{Cloth: goods, Length: length}, all,
				plan.Options{Passes: 20, Fixed: fixed})
			require.NoError(t, err)
			return out
		}
		enough := fit(901)
		require.Equal(t, remnant.Enough, enough.Answer, "at %g: takes %g", at, enough.Plan.Taken)
		require.Len(t, enough.Plan.Pieces, 2)
		for _, l := range enough.Plan.Pieces {
			if l.Name == "cut" {
				assert.Equal(t, []float64{fixed.Pieces[0].X, fixed.Pieces[0].Y}, []float64{l.X, l.Y}, "it stays")
			}
		}
		assert.Equal(t, remnant.TooLittle, fit(890).Answer)
	}
	fixed := first.Plan
	fixed.Pieces = []lay.Laid{first.Plan.Pieces[0]}
	fixed.Pieces[0].X += 200
	out, err := remnant.Fit(context.Background(), remnant.Remnant{Cloth: goods, Length: 950}, all,
		plan.Options{Passes: 20, Fixed: fixed})
	require.NoError(t, err)
	assert.Equal(t, remnant.NotFound, out.Answer, "it would fit if the cut piece could move")
	fixed.Pieces[0].Y += 600
	_, err = remnant.Fit(context.Background(), remnant.Remnant{Cloth: goods, Length: 2000}, all,
		plan.Options{Passes: 2, Fixed: fixed})
	assert.Error(t, err, "it lies over the edge")
}
