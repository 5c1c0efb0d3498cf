package plan_test

import (
	"context"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/fabric/plan"
	"ellwand/nest"
	"ellwand/pieces"
)

// What a search tells as it goes is a length of cloth: never below what the lay takes in
// the end, nor above it with its bound. A lay of two beds tells it of both.
func TestToldLengthsAreOfTheCloth(t *testing.T) {
	told := map[lay.Kind]nest.Progress{}
	first, second := pieces.Rectangle("first", 420, 300), pieces.Rectangle("second", 260, 210)
	first.Cut, second.Cut = 4, 6
	found, err := plan.Require(context.Background(), cloth.Cloth{Name: "shell", Width: 1000},
		[]pieces.Piece{first, second},
		plan.Options{Passes: 3, Workers: 1, Progress: func(kind lay.Kind, p nest.Progress) { told[kind] = p }})
	require.NoError(t, err)
	assert.Contains(t, told, lay.FoldedAcross)
	assert.Contains(t, told, lay.SelvedgeIn)
	assert.Contains(t, told, lay.InStretches)
	for _, p := range found.Lays {
		if last, ok := told[p.Lay]; ok && p.Possible() {
			assert.GreaterOrEqual(t, last.Length, p.Taken-1e-6, "%s", p.Lay)
			assert.LessOrEqual(t, last.Bound, p.Taken+1e-6, "%s", p.Lay)
		}
	}
}
