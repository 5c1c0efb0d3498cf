package strict

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"
)

func TestNearest(t *testing.T) {
	known := []string{"name", "width", "widths", "selvedge", "nap", "step", "bust_girth", "waist_girth"}
	tests := []struct{ typed, want string }{
		{"widht", "width"},
		{"Selvage", "selvedge"},
		{"bust girth", "bust_girth"},
		{"BUST-GIRTH", "bust_girth"},
		{"waist", "waist_girth"},
		{"steps", "step"},
		{"zzzzzz", ""},
		{"", ""},
	}
	for _, tt := range tests {
		assert.Equal(t, tt.want, Nearest(tt.typed, known), tt.typed)
	}
}

// Worked examples of the Levenshtein distance as textbooks print them.
func TestDistance(t *testing.T) {
	assert.Equal(t, 3, distance("kitten", "sitting"))
	assert.Equal(t, 3, distance("saturday", "sunday"))
	assert.Equal(t, 2, distance("flaw", "lawn"))
	assert.Equal(t, 4, distance("", "fold"))
}

func TestDistanceIsAMetric(t *testing.T) {
	word := rapid.StringMatching(`[a-e]{0,6}`)
	rapid.Check(t, func(t *rapid.T) {
		a, b, c := word.Draw(t, "a"), word.Draw(t, "b"), word.Draw(t, "c")
		assert.Equal(t, a == b, distance(a, b) == 0)
		assert.Equal(t, distance(a, b), distance(b, a))
		assert.LessOrEqual(t, distance(a, c), distance(a, b)+distance(b, c))
	})
}
