package sleeve

import (
	"math"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/draft/construct"
)

func measures(front, back float64) Measures {
	return Measures{
		FrontArmhole: front * inch, BackArmhole: back * inch,
		FrontNotch: front * inch / 2, BackNotch: back * inch / 2, ShoulderToWrist: 23 * inch,
	}
}

// The practitioner's draft (common practice) for a front armhole of 8 1/2 in
// and a back armhole of 9 in, by hand:
//
//	head height  (8.5 + 9) / 3 - 0.5                      = 5.3333
//	front half   sqrt(8.5^2 - 5.3333^2) = sqrt(43.8056)   = 6.6186
//	back half    sqrt(9^2 - 5.3333^2)   = sqrt(52.5556)   = 7.2495
//	wrist        0.75 x (6.6186 + 7.2495)                 = 10.4011
func TestFiguresByHand(t *testing.T) {
	block, err := Draft(measures(8.5, 9), Options{})
	require.NoError(t, err)
	assert.InDelta(t, 5.3333*inch, block.HeadHeight, 0.01)
	assert.InDelta(t, (6.6186+7.2495)*inch, block.BicepLine, 0.01)
	assert.InDelta(t, 10.4011*inch, block.WristWidth, 0.01)

	front, _ := block.Piece.Edge("front underarm")
	back, _ := block.Piece.Edge("back underarm")
	assert.InDelta(t, 6.6186*inch, front.Path.End()[0], 0.01)
	assert.InDelta(t, -7.2495*inch, back.Path.Start()[0], 0.01)
	crown := 5.3333 * inch
	assert.InDelta(t, 23*inch, crown-front.Path.Start()[1], 0.01, "full length from the crown")
}

// The points that the head passes through, by hand, in inches from the middle
// of the bicep line. Front: the square to the slanted line outward is
// (5.3333, 6.6186) / 8.5 = (0.6275, 0.7787).
//
//	break   4.25 + 0.5 = 4.75 down the line: (0.5588 x 6.6186, 0.4412 x 5.3333) = (3.6986, 2.3529)
//	bulge   middle of crown and break (1.8493, 3.8431), out 0.625:  (2.2415, 4.3298)
//	hollow  middle of break and end (5.1586, 1.1765), in 0.375:     (4.9233, 0.8845)
//
// Back: the square outward is (-5.3333, 7.2495) / 9 = (-0.5926, 0.8055).
//
//	break   4.5 - 0.5 = 4 down the line: (-3.2220, 2.9630)
//	bulge   middle (-1.6110, 4.1481), out 0.375:   (-1.8332, 4.4502)
//	hollow  middle (-5.2357, 1.4815), in 0.25:     (-5.0876, 1.2801)
func TestHeadPassesThroughItsPoints(t *testing.T) {
	block, err := Draft(measures(8.5, 9), Options{})
	require.NoError(t, err)
	head, _ := block.Piece.Edge("sleeve head")
	points := head.Path.Flatten(0.001)
	for name, want := range map[string]orb.Point{
		"front break": {3.6986, 2.3529}, "front bulge": {2.2415, 4.3298}, "front hollow": {4.9233, 0.8845},
		"back break": {-3.2220, 2.9630}, "back bulge": {-1.8332, 4.4502}, "back hollow": {-5.0876, 1.2801},
		"front flat": {0.375, 5.3333}, "back flat": {-0.375, 5.3333}, "crown": {0, 5.3333},
	} {
		nearest := math.Inf(1)
		for _, p := range points {
			nearest = min(nearest, construct.Distance(p, orb.Point{want[0] * inch, want[1] * inch}))
		}
		assert.Less(t, nearest, 0.05, name)
	}
}

// Whatever the size, the draft gives about 1.5 cm of ease (common practice).
func TestEaseWhateverTheSize(t *testing.T) {
	for front := 6.5; front <= 12; front += 0.5 {
		for _, more := range []float64{-0.25, 0, 0.25, 0.75} {
			block, err := Draft(measures(front, front+more), Options{})
			require.NoError(t, err)
			ease := block.Head - (2*front+more)*inch
			assert.InDelta(t, 15, ease, 2, "armhole %g and %g in", front, front+more)
		}
	}
}

func TestOptions(t *testing.T) {
	m := measures(8.5, 9)
	plain, err := Draft(m, Options{})
	require.NoError(t, err)

	for _, ease := range []float64{0, 10, 25, 40} {
		block, err := Draft(m, Options{Ease: &ease})
		require.NoError(t, err)
		assert.InDelta(t, ease, block.Head-17.5*inch, 0.05)
		assert.Equal(t, plain.HeadHeight, block.HeadHeight)
	}

	low, err := Draft(m, Options{HeadHeight: 90})
	require.NoError(t, err)
	assert.Equal(t, 90.0, low.HeadHeight)
	assert.Greater(t, low.BicepLine, plain.BicepLine, "a lower head is wider")

	wide, err := Draft(m, Options{WristWidth: 400})
	require.NoError(t, err)
	assert.InDelta(t, 400, wide.WristWidth, 1e-9)

	short, err := Draft(m, Options{Length: 220})
	require.NoError(t, err)
	assert.Greater(t, short.WristWidth, plain.WristWidth, "a short sleeve ends where the long one is wider")
	assert.Len(t, short.Piece.Marks, 1, "no elbow line on a short sleeve")
	assert.Len(t, plain.Piece.Marks, 2)

	cuffed, err := Draft(m, Options{Cuffed: true})
	require.NoError(t, err)
	wrist, ok := cuffed.Piece.Edge("wrist")
	assert.True(t, ok)
	assert.False(t, wrist.Hem)
}

// A gathered hem is as many times its width in the draft as was asked for,
// also where that is wider than the bicep line.
func TestHemFullness(t *testing.T) {
	plain, err := Draft(measures(8.5, 9), Options{})
	require.NoError(t, err)
	for _, times := range []float64{1.2, 1.5, 2, 3} {
		full, err := Draft(measures(8.5, 9), Options{HemFullness: times})
		require.NoError(t, err)
		assert.InDelta(t, times*plain.WristWidth, full.WristWidth, 0.01)
	}
}

func TestRefusals(t *testing.T) {
	far := 200.0
	little := -15.0
	for want, o := range map[string]Options{
		"sleeve: a head height of 1 cm is too low; it must be 2 cm or more":                                                    {HeadHeight: 10},
		"sleeve: a head height of 25 cm is too high for an armhole whose shorter half is 21.6 cm; ask for 19.8 cm or less":     {HeadHeight: 250},
		"sleeve: a length of 10 cm ends above the underarm; from the crown it must be 16.6 cm or more":                         {Length: 100},
		"sleeve: the wrist width is -1 cm; it cannot be negative":                                                              {WristWidth: -10},
		"sleeve: an ease of 20 cm cannot be sewn in; 0 to 1.5 cm suits a shirt, 2 to 4.5 cm a set-in sleeve":                   {Ease: &far},
		"sleeve: an ease of -1.5 cm needs a lower head than 19.5 cm on this armhole; ask for a lower head height or more ease": {Ease: &little, HeadHeight: 195},
	} {
		_, err := Draft(measures(8.5, 9), o)
		assert.EqualError(t, err, want)
	}
}

func TestNotchesMeetTheArmhole(t *testing.T) {
	m := measures(8.5, 9)
	block, err := Draft(m, Options{})
	require.NoError(t, err)
	require.NoError(t, block.Piece.Check())
	counts := map[string]int{}
	for _, n := range block.Piece.Notches {
		counts[n.Match] += n.Count
	}
	assert.Equal(t, map[string]int{"front armhole": 1, "back armhole": 2, "shoulder": 1, "elbow": 2}, counts)
	assert.InDelta(t, m.FrontNotch, block.Piece.Notches[0].At, 1e-9)
	assert.InDelta(t, m.BackNotch, block.Head-block.Piece.Notches[2].At, 1e-9)
}
