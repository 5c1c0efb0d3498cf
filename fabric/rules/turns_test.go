package rules

import (
	"math"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/fabric/cloth"
	"ellwand/fabric/internal/motion"
	"ellwand/nest/layout"
	"ellwand/pieces"
	"ellwand/pieces/seams"
)

func degreesOf(turns []layout.Turn) []float64 {
	out := []float64{}
	for _, turn := range turns {
		out = append(out, turn.Degrees)
	}
	return out
}

// TestTurnsOf states the rules of grain and nap for a piece drawn with its
// grainline up the page: turned by 270 degrees it points along the warp.
func TestTurnsOf(t *testing.T) {
	for _, c := range []struct {
		name     string
		lie      pieces.GrainLie
		nap      cloth.Nap
		mirrored bool
		want     []float64
	}{
		{"straight, either way", pieces.StraightGrain, cloth.EitherWay, false, []float64{270, 90}},
		{"straight, one way", pieces.StraightGrain, cloth.OneWay, false, []float64{270}},
		{"straight, one way, face down", pieces.StraightGrain, cloth.OneWay, true, []float64{270}},
		{"straight, one way per garment", pieces.StraightGrain, cloth.OneWayPerGarment, false, []float64{270, 90}},
		{"cross, either way", pieces.CrossGrain, cloth.EitherWay, false, []float64{0, 180}},
		// With the nap across it, the left of a pair points the other way, as
		// it does when both are cut from folded cloth.
		{"cross, one way", pieces.CrossGrain, cloth.OneWay, false, []float64{0}},
		{"cross, one way, face down", pieces.CrossGrain, cloth.OneWay, true, []float64{180}},
		{"bias, either way", pieces.Bias, cloth.EitherWay, false, []float64{315, 45, 135, 225}},
		{"bias, one way", pieces.Bias, cloth.OneWay, false, []float64{315, 225}},
	} {
		t.Run(c.name, func(t *testing.T) {
			piece := pieces.Rectangle("strip", 50, 300)
			piece.Grain.Lie = c.lie
			turns := turnsOf(piece, c.nap, c.mirrored)
			assert.Equal(t, c.want, degreesOf(turns))
			for _, turn := range turns {
				assert.Equal(t, c.mirrored, turn.Mirrored)
			}
		})
	}
}

// TestFoldTurns turns a half piece whose fold edge points every way on paper:
// there are always two ways onto the fold, end for end, and only the one up
// the cloth when the nap is one way.
func TestFoldTurns(t *testing.T) {
	half := pieces.Piece{Name: "back", Cut: 1, Fold: seams.Called("d"),
		Grain: pieces.Grain{From: orb.Point{50, 50}, To: orb.Point{50, 200}}}
	corners := []orb.Point{{0, 0}, {120, 0}, {100, 300}, {0, 260}}
	for i, p := range corners {
		half.Edges = append(half.Edges, pieces.Edge{Name: seams.Called(string(rune('a' + i))),
			Path: pieces.Path{pieces.Line{From: p, To: corners[(i+1)%4]}}})
	}
	for drawn := 0.0; drawn < 360; drawn += 30 {
		piece := half.Map(motion.MotionOf(drawn, false, 70, -30))
		either := foldTurns(piece, cloth.EitherWay, layout.PinLow)
		require.Len(t, either, 2)
		assert.NotEqual(t, either[0].Direction, either[1].Direction)
		for _, turn := range either {
			assertOnFold(t, piece, turn)
		}
		one := foldTurns(piece, cloth.OneWay, layout.PinLow)
		require.Len(t, one, 1)
		moved := piece.Map(motion.MotionOf(one[0].Degrees, one[0].Mirrored, 0, 0))
		assert.Greater(t, moved.Grain.To[0], moved.Grain.From[0])
	}
	half.Grain.Lie = pieces.CrossGrain
	assert.Empty(t, foldTurns(half, cloth.EitherWay, layout.PinLow), "a grain along the fold cannot lie across the cloth")
	half.Grain = pieces.Grain{From: orb.Point{10, 10}, To: orb.Point{60, 60}, Lie: pieces.Bias}
	assert.Len(t, foldTurns(half, cloth.EitherWay, layout.PinLow), 2, "drawn at 45 degrees to the fold")
}

func assertOnFold(t *testing.T, piece pieces.Piece, turn layout.Turn) {
	t.Helper()
	assert.Equal(t, layout.PinLow, turn.Pin)
	moved := piece.Map(motion.MotionOf(turn.Degrees, turn.Mirrored, 0, 0))
	edge, ok := moved.Edge(piece.Fold)
	require.True(t, ok)
	start, end := motion.EndsOf(edge)
	assert.InDelta(t, start[1], end[1], 1e-6, "the fold edge lies along the warp")
	for _, p := range moved.SeamOutline(0.1) {
		assert.GreaterOrEqual(t, p[1], start[1]-1e-6, "the piece lies above its fold edge")
	}
	assert.InDelta(t, moved.Grain.From[1], moved.Grain.To[1], 1e-6)
}

func TestMotions(t *testing.T) {
	p := orb.Point{3, 7}
	turned := motion.MotionOf(90, true, 10, 20).Apply(p)
	assert.InDelta(t, 10-7.0, turned[0], 1e-12)
	assert.InDelta(t, 20-3.0, turned[1], 1e-12)
	for degrees := 0.0; degrees < 360; degrees += 22.5 {
		for _, mirrored := range []bool{false, true} {
			m := motion.MotionOf(degrees, mirrored, 1, 2)
			assert.InDelta(t, 0, math.Remainder(motion.TurnedBy(m)-degrees, 360), 1e-9)
			assert.Equal(t, mirrored, m.Mirrors())
		}
	}
	image := motion.Reflection(orb.Point{5, 0}, 90)
	assert.Equal(t, orb.Point{7, 7}, image.Apply(p))
	again := image.Then(image)
	assert.InDelta(t, 3, again.Apply(p)[0], 1e-12)
}
