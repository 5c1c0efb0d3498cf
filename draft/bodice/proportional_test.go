package bodice

import (
	"math"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/draft/construct"
	"ellwand/pieces"
	"ellwand/pieces/seams"
)

// The worked example of the Bunka bodice block, bust 83, waist 64 and back
// length 38 cm, by the figures of its table of quick reference (Bunka Fashion
// College, Fundamentals of Garment Design, from memory), in cm: width 47.5,
// nape to bust line 20.6, back width 17.8, bust line to front neck 24.9, chest
// 16.6, B/32 2.6, front neck 6.9 wide and 7.4 deep, bust dart 18.3 degrees,
// back neck 7.1, back shoulder dart 1.8. The points below follow from them by
// hand, from the centre line at the waist; every one within 5 mm.
//
//	bust line       38 - 20.6                              = 17.4
//	dart level      17.4 + (20.6 - 8) / 2 - 0.5            = 23.2
//	front shoulder  (16.6 - 6.9) / cos 22 + 1.8            = 12.26 long
//	back shoulder   12.26 + 1.8                            = 14.06 long
//	side seam       (47.5 - 17.8 - 19.2) / 2               = 5.25 beyond either
//	armhole, 45 degrees out of its corners: a third of 5.25, and 0.5 or 0.8
func TestBunkaBlock(t *testing.T) {
	block, err := Draft(Measures{Bust: 830, Waist: 640, BackNeckPointToWaist: 380},
		Options{Method: Proportional, Shaping: ArmholeDart})
	require.NoError(t, err)
	assert.InDelta(t, 475, block.BustWidth, 0.5)
	end := func(p pieces.Piece, name seams.Name) orb.Point {
		e, ok := p.Edge(name)
		require.True(t, ok, name)
		return e.Path.End()
	}
	front, back := block.Front, block.Back
	require.Equal(t, []seams.Name{seams.Armhole.Dart(0), seams.Shoulder.Dart(0)},
		[]seams.Name{front.Darts[len(front.Darts)-1].Name, back.Darts[len(back.Darts)-1].Name})
	bust, blade := front.Darts[len(front.Darts)-1], back.Darts[len(back.Darts)-1]
	for name, c := range map[string]struct {
		got orb.Point
		cm  [2]float64
	}{
		"back neck point":            {end(back, seams.Neck), [2]float64{0, 38}},
		"neck point of the back":     {end(back, seams.Shoulder.Stretch(2)), [2]float64{7.1, 40.37}},
		"back shoulder tip":          {end(back, seams.Armhole), [2]float64{20.47, 36.02}},
		"back underarm":              {end(back, seams.SideSeam), [2]float64{23.05, 17.4}},
		"point of the back dart":     {blade.Apex, [2]float64{9.9, 30}},
		"neck point of the front":    {end(front, seams.Shoulder), [2]float64{6.9, 42.3}},
		"centre front of the neck":   {end(front, seams.Neck), [2]float64{0, 34.9}},
		"front shoulder tip":         {end(front, seams.Armhole.Stretch(2)), [2]float64{18.27, 37.71}},
		"lower leg of the bust dart": {bust.Start, [2]float64{19.2, 23.2}},
		"front underarm":             {end(front, seams.SideSeam), [2]float64{24.45, 17.4}},
		"armhole of the back": {nearestOn(t, back, seams.Armhole, orb.Point{196, 192}),
			[2]float64{17.8 + 2.55/math.Sqrt2, 17.4 + 2.55/math.Sqrt2}},
		"armhole of the front": {nearestOn(t, front, seams.Armhole.Stretch(1), orb.Point{208, 190}),
			[2]float64{19.2 + 2.25/math.Sqrt2, 17.4 + 2.25/math.Sqrt2}},
	} {
		assert.InDelta(t, 10*c.cm[0], c.got[0], 5, name)
		assert.InDelta(t, 10*c.cm[1], c.got[1], 5, name)
	}
	point := front.Marks[1].At
	assert.InDelta(t, 90, point[0], 5, "bust point: half the chest and 0.7 cm")
	assert.InDelta(t, 174, point[1], 5)
	angle := 2 * math.Asin(construct.Distance(bust.Start, bust.End)/2/construct.Distance(point,
		bust.Start)) * 180 / math.Pi
	assert.InDelta(t, 18.3, angle, 0.1, "bust dart")
	assert.InDelta(t, 18, construct.Distance(blade.Start, blade.End), 2, "back shoulder dart")
	// 47.5 less half the waist and 3 cm of ease is taken in all round.
	taken := block.BustWidth - construct.SeamLength(front, seams.Waist) - construct.SeamLength(back, seams.Waist)
	assert.InDelta(t, 125, taken, 1)
}

// nearestOn is the point of an edge that is nearest to another.
func nearestOn(t *testing.T, p pieces.Piece, name seams.Name, to orb.Point) orb.Point {
	e, ok := p.Edge(name)
	require.True(t, ok, name)
	best := e.Path.Start()
	for at := 0.0; at <= e.Path.Length(); at++ {
		if q := e.Path.At(at); construct.Distance(q, to) < construct.Distance(best, to) {
			best = q
		}
	}
	return best
}

// What the proportional draft cannot be combined with is refused.
func TestProportionalRefusals(t *testing.T) {
	stout := size12
	stout.NeckBase = 500
	_, err := Draft(stout, Options{Method: Proportional})
	assert.ErrorContains(t, err, "the neck base girth of 50 cm does not go into a neck of 39")
	for want, o := range map[string]Options{
		"the proportional draft has one fit":      {Fit: Shirt},
		"the proportional draft shapes a bust":    {Shaping: NoDart},
		"neither princess seams nor a yoke":       {Princess: FromShoulder},
		"has a dart in the back shoulder, and ne": {Yoke: 80},
	} {
		o.Method = Proportional
		_, err := Draft(size12, o)
		assert.ErrorContains(t, err, want)
	}
}
