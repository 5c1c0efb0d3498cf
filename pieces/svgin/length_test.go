package svgin

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// The units of CSS by hand: 96 pixels to the inch, 72 points, 6 picas; a font of 16.
func TestLengthInEveryUnit(t *testing.T) {
	for text, want := range map[string]float64{
		"12": 12, "12px": 12, "1in": 96, "2.54cm": 96, "25.4mm": 96, "101.6Q": 96, "72pt": 96, "6pc": 96,
		"2em": 32, "2rem": 32, "2 ex": 16, "25%": 50,
	} {
		got, err := length(text, 200)
		require.NoError(t, err, text)
		assert.InDelta(t, want, got, 1e-9, text)
	}
	_, err := length("3 ell", 200)
	assert.Error(t, err)
}
