package app

import (
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/pieces"
	"ellwand/pieces/drawing"
	"ellwand/pieces/found"
)

// Each kind of line has its own dashes, small as the whole, and no shorter than can be
// seen; what counts is black.
func TestPenOfAKind(t *testing.T) {
	assert.Equal(t, drawing.Pen{Width: 0.2, Grey: 150, Dashes: []float64{2, 0.3}},
		penOf(found.LineKind{Dashes: []float64{6, 0.6}}))
	assert.Equal(t, drawing.Pen{Width: 0.4}, penOf(found.LineKind{Chosen: true}))
}

// The picture of what was found has what lies inside a piece.
func TestPictureHasWhatLiesInside(t *testing.T) {
	square := orb.Ring{{0, 0}, {100, 0}, {100, 100}, {0, 100}, {0, 0}}
	piece := found.Piece{Name: "pocket"}
	for i, from := range square[:4] {
		piece.Outline = append(piece.Outline, found.Step{Curve: pieces.Line{From: from, To: square[i+1]}})
	}
	lines := func(p found.Piece) int {
		page, err := Imported{Found: []Found{{Number: 1, Piece: p}}}.Picture(Answers{}, false)
		require.NoError(t, err)
		return len(page.Lines())
	}
	plain := lines(piece)
	piece.Inner = []found.Inner{
		{Kind: found.InternalLine, Path: pieces.Path{pieces.Line{From: orb.Point{20, 20}, To: orb.Point{80, 20}}}},
		{Kind: found.DrillHole, At: orb.Point{50, 50}},
	}
	assert.Equal(t, plain+1, lines(piece))
}
