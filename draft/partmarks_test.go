package draft

import (
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/draft/part"
	"ellwand/draft/sleeve"
	"ellwand/pieces/marks"
	"ellwand/pieces/seams"
)

// The slit lies a quarter of the wrist in (common practice); the pleats take up
// what the sleeve has over the cuff, its overlap left out: 26 cm and 2 cm less
// wrist 16.25 and 2 cm of ease and 2 cm of overlap.
func TestSleeveIsMarkedForItsCuff(t *testing.T) {
	request := shirt(size(t, "women", "12"))
	request.Sleeve = &sleeve.Options{Style: sleeve.Shirt, WristWidth: 260}
	result, err := Draft(request)
	require.NoError(t, err)
	piece := pieceNamed(t, result, "sleeve")
	slits, pleats := 0, 0.0
	for _, n := range piece.Notches {
		switch {
		case n.Match == marks.Placket:
			slits++
			assert.InDelta(t, 65, n.At, 1e-6)
		case n.Match.Kind() == marks.Pleat:
			pleats = n.At - pleats
		}
	}
	assert.Equal(t, 1, slits)
	// Two pleats, 1 cm apart: the alternating sum of their notches.
	assert.InDelta(t, 280-202.5, pleats, 1e-6)
	for _, m := range piece.Marks {
		if m.Name == marks.PlacketSlit {
			assert.InDelta(t, 100, m.Path.Length(), 1e-6)
		}
	}
}

// A pocket bag reaches 2 cm beyond both ends of an opening of 16 cm (common
// practice), and its notches meet those of the side seams.
func TestPocketBagMeetsTheSides(t *testing.T) {
	result, err := Draft(dress(size(t, "women", "12")))
	require.NoError(t, err)
	assert.InDelta(t, 200, seam(pieceNamed(t, result, "pocket bag"), seams.PocketSide), 1e-6)
	for _, name := range []string{"pocket bag", "front skirt", "back skirt"} {
		at := map[marks.Name]float64{}
		for _, n := range pieceNamed(t, result, name).Notches {
			at[n.Match] = n.At
		}
		assert.InDelta(t, 160, at[marks.PocketTop]-at[marks.PocketEnd], 1e-6, name)
	}
}

// The upper edge of a patch pocket lies 3 cm above the bust line (our own choice), its
// middle over the bust point; where it would lie over a seam nothing is marked.
func TestFrontIsMarkedForItsPocket(t *testing.T) {
	request := shirt(size(t, "women", "12"))
	request.Interfacings = nil
	request.Parts = []part.Options{{Kind: part.PatchPocket}, {Kind: part.PatchPocket, Name: "second pocket"}}
	result, err := Draft(request)
	require.NoError(t, err)
	front := pieceNamed(t, result, "front bodice")
	var places, lines []orb.Point
	for _, m := range front.Marks {
		switch m.Name {
		case marks.PatchPocket:
			places = append(places, m.Path.Start(), m.Path.End())
		case marks.BustLine:
			lines = append(lines, m.Path.End())
		}
	}
	require.Len(t, places, 2, "one pocket has its place")
	assert.InDelta(t, lines[0][1]+30, places[0][1], 1e-6)
	assert.InDelta(t, lines[0][0], (places[0][0]+places[1][0])/2, 1e-6)
	assert.InDelta(t, 130, places[1][0]-places[0][0], 1e-6)

	request.Parts = []part.Options{{Kind: part.PatchPocket, Length: 220}}
	result, err = Draft(request)
	require.NoError(t, err)
	for _, m := range pieceNamed(t, result, "front bodice").Marks {
		assert.NotEqual(t, marks.PatchPocket, m.Name)
	}
}
