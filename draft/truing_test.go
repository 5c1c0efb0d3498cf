package draft

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/draft/part"
	"ellwand/draft/sleeve"
	"ellwand/pieces/seams"
)

func TestSkirtPanelsGatherIntoTheWaist(t *testing.T) {
	request := blouse(size(t, "women", "12"))
	request.Parts = []part.Options{{Kind: part.GatheredSkirt, Depth: 600, Fullness: 1.5}, {Kind: part.Waistband},
		{Kind: part.StraightPanel, Name: "tie", Length: 100, Depth: 900}}
	result, err := Draft(request)
	require.NoError(t, err)
	checkSound(t, result)
	front := pieceNamed(t, result, "gathered skirt front")
	assert.InDelta(t, 1.5*seam(pieceNamed(t, result, "front bodice"), seams.Waist), seam(front, seams.Waist), 1e-6)
	// Waist 76, ease 1.5 and overlap 3 cm (common practice).
	assert.InDelta(t, 805, seam(pieceNamed(t, result, "waistband"), seams.Bottom), 1e-6)
}

func TestBothCentresOnTheFoldIsWarnedOf(t *testing.T) {
	request := blouse(size(t, "women", "12"))
	request.Bodice.BackOnFold = true
	result, err := Draft(request)
	require.NoError(t, err)
	assert.Contains(t, warnings(result), "no opening for the head")
}

func TestSleeveHeadEaseIsJudged(t *testing.T) {
	for _, c := range []struct {
		style sleeve.Style
		ease  float64
		want  string
	}{
		{sleeve.SetIn, 30, "suits a set-in sleeve"}, {sleeve.SetIn, 5, "1.7 cm too short"}, {sleeve.SetIn, 45,
			"0.8 cm too long"},
		{sleeve.Shirt, 5, "suits a shirt sleeve"}, {sleeve.Shirt, 20, "0.7 cm too long"},
		{sleeve.TwoPiece, 32, "suits a two-piece sleeve"},
	} {
		request := blouse(size(t, "women", "12"))
		request.Parts = nil
		request.Sleeve = &sleeve.Options{Style: c.style, Ease: &c.ease}
		result, err := Draft(request)
		require.NoError(t, err)
		for _, row := range result.Truing.Rows {
			if row.Of == "sleeve head" {
				assert.Equal(t, c.want, row.Verdict.String())
				assert.InDelta(t, c.ease, row.Difference, 0.05)
			}
		}
	}
}

// The report must be able to say that seams do not match.
func TestTruingFindsAFault(t *testing.T) {
	request := blouse(size(t, "women", "12"))
	request.Sleeve = &sleeve.Options{WristWidth: 150}
	result, err := Draft(request)
	require.NoError(t, err)
	assert.False(t, result.Truing.InRange())
	assert.Contains(t, warnings(result), "wrist to cuff: the sleeve wrist is 3.3 cm too short against the cuff")
}
