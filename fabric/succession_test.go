package fabric_test

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/fabric"
	"ellwand/pieces"
)

// TestTogetherNeverTakesMoreThanInSuccession: several garments laid together,
// however short the search, take no more than one behind the other, each of
// which by itself is a jigsaw of known length.
func TestTogetherNeverTakesMoreThanInSuccession(t *testing.T) {
	cloth := fabric.Cloth{Width: 1220, Selvedge: 10}
	var all []pieces.Piece
	for i := range 12 {
		all = append(all, inGarment(fmt.Sprintf("dress %d", i+1),
			rectangle("front", 700, 400, 1), rectangle("back", 500, 300, 1), rectangle("yoke", 500, 100, 1))...)
	}
	got, err := fabric.Require(t.Context(), cloth, all, fabric.Options{Iterations: 1, Lays: []fabric.Lay{fabric.Open}})
	require.NoError(t, err)
	assert.LessOrEqual(t, got.Lays[0].Taken, 12*400+0.01)

	// With a gap there is one between the garments too, and not before the first.
	cloth.Gap = 2
	for i := range all {
		all[i] = inGarment(fmt.Sprintf("scarf %d", i+1), rectangle("scarf", 1198, 398, 1))[0]
	}
	got, err = fabric.Require(t.Context(), cloth, all, fabric.Options{Iterations: 40, Lays: []fabric.Lay{fabric.Open}})
	require.NoError(t, err)
	assert.LessOrEqual(t, got.Lays[0].Taken, 36*398+35*2+0.01)
}
