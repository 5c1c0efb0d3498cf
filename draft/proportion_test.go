package draft_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/draft"
)

// Every size of every table is in proportion, against its own table; a woman who is a
// size larger below than above, and one with a full waist, too.
func TestTablesAreInProportion(t *testing.T) {
	for _, name := range draft.Tables() {
		for _, size := range draft.Sizes(name) {
			body, err := draft.Size(name, size)
			require.NoError(t, err)
			assert.Empty(t, body.Odd(name), "%s %s", name, size)
		}
	}
	twelve, err := draft.Size("women", "12")
	require.NoError(t, err)
	twenty, err := draft.Size("women", "20")
	require.NoError(t, err)
	pear := twelve.With(draft.Body{draft.HipGirth: twenty[draft.HipGirth], draft.WaistGirth: twenty[draft.WaistGirth]})
	assert.Empty(t, pear.Odd(""))
	assert.Empty(t, draft.Body{draft.WaistGirth: 700}.Odd(""), "nothing to hold it against")
}

// Slips that lie within what a body can have: a bust of 27 in beside a waist of 30, a
// sleeve of 13 1/4 for 23 1/4 in.
func TestSlipsAreOutOfProportion(t *testing.T) {
	bust := draft.Body{draft.BustGirth: 27 * 25.4, draft.WaistGirth: 30 * 25.4}.Odd("")
	require.Len(t, bust, 1)
	assert.Equal(t, draft.WaistGirth, bust[0].Name)
	assert.InDelta(t, 36.2*25.4, bust[0].UsualBeside, 20, "a waist of 76 cm is that of a bust of 92")

	sleeve := draft.Body{draft.BustGirth: 36 * 25.4, draft.WaistGirth: 29 * 25.4,
		draft.ShoulderToWrist: 13.25 * 25.4}.Odd("")
	require.Len(t, sleeve, 1)
	assert.Equal(t, draft.ShoulderToWrist, sleeve[0].Name)
	assert.InDelta(t, 23.25*25.4, sleeve[0].Usual, 20)
}
