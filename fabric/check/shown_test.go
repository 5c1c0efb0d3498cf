package check

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestShown(t *testing.T) {
	for _, tt := range []struct {
		text         string
		length, step float64
		want         bool
	}{
		{"1.82 m", 1824.9, 10, true}, {"1.82 m", 1826, 10, false}, {"8.5 cm", 85.4, 1, true}, {"8.5 cm", 85.6, 1, false},
		{"16 3/8 in", 16.375 * 25.4, 25.4 / 16, true}, {"16 1/4 in", 16.375 * 25.4, 25.4 / 16, false},
		{"about 2 m", 2000, 10, false},
	} {
		assert.Equal(t, tt.want, Shown(tt.text, tt.length, tt.step) == nil, tt.text)
	}
	for text, want := range map[string]bool{"1.90 m": true, "1.80 m": false, "2.00 m": false, "2 1/8 yd": false,
		"1.81 m": false} {
		assert.Equal(t, want, ShownToBuy(text, 1815, 100) == nil, text)
	}
	for text, want := range map[string]bool{"1.81 m": true, "1.82 m": false, "1.80 m": false, "a yard": false} {
		assert.Equal(t, want, ShownAtLeast(text, 1816, 10) == nil, text)
	}
	assert.NoError(t, ShownToBuy("2 yd", 1815, 914.4/8))
	assert.Error(t, ShownToBuy("2 1/8 yd", 1815, 914.4/8))
}
