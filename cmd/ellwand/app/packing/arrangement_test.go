package packing

import (
	"context"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/pieces/measure"
	"ellwand/pieces/paper"
)

// What was packed before is packed so again, without a search; what is no packing of
// these figures is searched.
func TestPackAgain(t *testing.T) {
	a4, err := paper.Parse("a4", measure.Millimetre)
	require.NoError(t, err)
	figures := rectangles(t, 4, 150, 240)
	var kept Arrangement
	searches := 0
	options := Options{Passes: 3, Seed: 1, Found: func(a Arrangement) { kept = a }, Counted: func(int, int) { searches++ }}
	first, err := Pack(context.Background(), figures, a4, options)
	require.NoError(t, err)
	require.NotZero(t, searches)
	require.Len(t, kept.Placements, len(figures))

	again := kept
	options.Kept, searches = &again, 0
	second, err := Pack(context.Background(), figures, a4, options)
	require.NoError(t, err)
	assert.Zero(t, searches)
	assert.Equal(t, first, second)

	for name, spoil := range map[string]func(a *Arrangement){
		"overlap":    func(a *Arrangement) { a.Placements[1].X, a.Placements[1].Y = a.Placements[0].X, a.Placements[0].Y },
		"one less":   func(a *Arrangement) { a.Placements = a.Placements[1:] },
		"twice":      func(a *Arrangement) { a.Placements[1].Item = a.Placements[0].Item },
		"no item":    func(a *Arrangement) { a.Placements[0].Item = 99 },
		"no turn":    func(a *Arrangement) { a.Placements[0].Turn = -1 },
		"no columns": func(a *Arrangement) { a.Columns = 0 },
	} {
		spoilt := kept
		spoilt.Placements = slices.Clone(kept.Placements)
		spoil(&spoilt)
		options.Kept, searches = &spoilt, 0
		_, err := Pack(context.Background(), figures, a4, options)
		require.NoError(t, err, name)
		assert.NotZero(t, searches, name)
	}
}
