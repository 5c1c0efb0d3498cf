package sheet

import (
	"slices"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/pieces"
	"ellwand/pieces/drawing"
	"ellwand/pieces/paper"
)

// A print that is not what was asked for, in full size, is refused.
func TestPrintsAreProven(t *testing.T) {
	var asked, laid []DrawnPiece
	for i, p := range []pieces.Piece{pieces.Rectangle("side", 120, 140), pieces.Rectangle("strap", 80, 400)} {
		f, err := NewDrawnPiece(p)
		require.NoError(t, err)
		asked = append(asked, f)
		laid = append(laid, f.Map(pieces.Motion{A: 0, B: 1, C: 1, D: 0, E: 200, F: 300 + 500*float64(i)}))
	}
	good := Layout{Title: "Bag", Paper: paper.A4, Figures: laid}
	pages, err := good.Pages()
	require.NoError(t, err)
	require.NoError(t, good.Proven(asked, pages))

	enlarged := func(by float64) DrawnPiece { return asked[0].Map(pieces.Motion{A: by, D: -by}) }
	for want, figures := range map[string][]DrawnPiece{
		"of cutting line are printed as": {enlarged(1.001), laid[1]},
		"is printed turned over":         {asked[0].Map(pieces.Motion{A: 1, D: 1}), laid[1]},
		"strap, ,  is not printed":       {laid[0]},
		"is printed once too often":      {laid[0], laid[1], laid[1]},
		"of seam line are printed as": {{Sizes: []Drawn{{enlarged(1.001).Sizes[0].Piece, laid[0].Sizes[0].Cutting}}},
			laid[1]},
	} {
		spoiled := good
		spoiled.Figures = figures
		assert.ErrorContains(t, spoiled.Proven(asked, pages), want)
	}

	var smaller drawing.Picture
	for _, side := range []float64{99.9, 101.6} {
		smaller.Frame(drawing.Pen{}, orb.Bound{Max: orb.Point{side, side}})
	}
	longer := orb.Bound{Max: orb.Point{100, 100.1}}
	smaller.Frame(drawing.Pen{}, longer)
	smaller.Line(drawing.Pen{}, orb.Point{0, 0}, orb.Point{100, 0}, orb.Point{120, 97.98}, orb.Point{20, 97.98},
		orb.Point{0, 0})
	spoiled := []drawing.Page{{Width: 210, Height: 297, Picture: smaller}}
	assert.ErrorContains(t, good.Proven(asked, spoiled), "no square of 100.0 mm")
	smaller.Frame(drawing.Pen{}, orb.Bound{Min: orb.Point{5, 5}, Max: orb.Point{105, 105}})
	spoiled[0].Picture = smaller
	assert.NoError(t, good.Proven(asked, slices.Clone(spoiled)))
}
