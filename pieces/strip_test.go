package pieces_test

import (
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/pieces"
	"ellwand/pieces/marks"
	"ellwand/pieces/seams"
)

// A band of 900 mm by 80 with two joins is three of 300 mm, each with the allowances
// of the band, so that 930 mm with the seams of both ends become 990.
func TestJoinedStrip(t *testing.T) {
	for _, lying := range []bool{true, false} {
		band := pieces.Rectangle("band", 900, 80)
		fold := pieces.Line{From: orb.Point{0, 40}, To: orb.Point{900, 40}}
		if !lying {
			band = pieces.Rectangle("band", 80, 900)
			fold = pieces.Line{From: orb.Point{40, 0}, To: orb.Point{40, 900}}
		}
		for i := range band.Edges {
			band.Edges[i].Allowance = 15
		}
		band.Marks = []pieces.Mark{{Name: marks.FoldLine, Path: pieces.Path{fold}},
			{Name: marks.Button, At: orb.Point{40, 40}}}
		strip, ok := pieces.StripOf(band)
		require.True(t, ok)
		assert.Equal(t, !lying, strip.GrainAlong)
		assert.Equal(t, band, strip.Joined(0))
		got := strip.Joined(2)
		require.NoError(t, got.Check())
		assert.Equal(t, 3, got.Cut)
		outline, err := got.CuttingOutline(0.1)
		require.NoError(t, err)
		size := outline.Bound()
		assert.InDelta(t, 330, max(size.Max[0]-size.Min[0], size.Max[1]-size.Min[1]), 1e-6)
		assert.InDelta(t, 110, min(size.Max[0]-size.Min[0], size.Max[1]-size.Min[1]), 1e-6)
		require.Len(t, got.Marks, 1, "a button lies on one of the strips only")
		assert.InDelta(t, 300, got.Marks[0].Path.Length(), 1e-9)
	}
}

func TestWhatIsNoStrip(t *testing.T) {
	folded := pieces.Rectangle("half", 200, 80)
	folded.Fold = seams.Left
	slanting := pieces.Rectangle("slant", 200, 80).Map(pieces.Turn(10))
	round := pieces.Rectangle("round", 200, 80)
	round.Edges[0].Path = pieces.Path{pieces.Bezier{P0: orb.Point{0, 0}, P1: orb.Point{60, -9}, P2: orb.Point{140, -9},
		P3: orb.Point{200, 0}}}
	for _, p := range []pieces.Piece{folded, slanting, round} {
		_, ok := pieces.StripOf(p)
		assert.False(t, ok, p.Name)
	}
}
