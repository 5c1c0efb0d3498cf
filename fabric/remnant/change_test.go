package remnant

import (
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/pieces"
)

// Of two things given up at once the last that has a measure is looked for; the other is
// given up whole.
func TestMeasureOfAChange(t *testing.T) {
	two := Change{Gives: []Given{{Most: 15}, {Most: 40}, {}}, Most: 40}
	limited := two.upTo(25)
	assert.InDelta(t, 25, limited.Most, 0)
	assert.Equal(t, []Given{{Most: 15}, {Most: 25}, {}}, limited.Gives)
	assert.InDelta(t, 40, two.Gives[1].Most, 0, "the change that was limited stays")
	assert.Equal(t, []Given{{Most: 15, By: 15}, {Most: 25, By: 7}, {}}, limited.With(7))
	none := Change{Gives: []Given{{}}}.upTo(9)
	assert.Equal(t, []Given{{}}, none.Gives)
}

// Half a band keeps its grainline: in its middle, and as the whole band's runs.
func TestGrainOfHalfABand(t *testing.T) {
	for _, size := range [][2]float64{{900, 80}, {80, 900}} {
		band := pieces.Rectangle("band", size[0], size[1])
		half, ok := halved(band)
		require.True(t, ok)
		box := half.Boundary(0.1).Bound()
		whole := band.Boundary(0.1).Bound()
		assert.InDelta(t, (whole.Max[0]-whole.Min[0])*(whole.Max[1]-whole.Min[1])/2,
			(box.Max[0]-box.Min[0])*(box.Max[1]-box.Min[1]), 1e-6)
		middle := orb.LineString{half.Grain.From, half.Grain.To}.Bound().Center()
		assert.InDeltaSlice(t, []float64{box.Center()[0], box.Center()[1]}, middle[:], 1e-9)
		assert.True(t, box.Contains(half.Grain.From) && box.Contains(half.Grain.To))
	}
}
