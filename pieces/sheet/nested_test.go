package sheet

import (
	"os/exec"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestSizesDifferWithoutColour(t *testing.T) {
	for i := range 20 {
		for j := range i {
			assert.NotEqual(t, LineOf(i), LineOf(j), "sizes %d and %d", i, j)
		}
	}
}

func TestNestedFigure(t *testing.T) {
	small, large := sleeve(1), sleeve(1.1)
	small.Size, large.Size = "12", "14"
	f := figureOf(t, small, large)
	assert.Equal(t, []string{"sleeve", "smock", "cut 2, a pair, from linen"}, f.Label)
	around := f.Around().Bound()
	for _, d := range f.Sizes {
		assert.True(t, around.Contains(d.Cutting.Bound().Min) && around.Contains(d.Cutting.Bound().Max))
	}
	layout := Layout{Title: "nest", Paper: named(t, "a3"), Figures: []DrawnPiece{f.Map(onto(220, 900))}}
	text, err := exec.Command("pdftotext", "-layout", written(t, layout), "-").Output()
	require.NoError(t, err)
	assert.Contains(t, string(text), "Nested sizes")
	assert.Contains(t, string(text), "allowance 1 cm")
	assert.Regexp(t, `\b12\b[\s\S]*\b14\b`, string(text))
}
