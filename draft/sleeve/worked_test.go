package sleeve

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

// armholeThrough draws a half of an armhole through places that a book gives, in cm
// from the underarm, the centre of the body to the right: one in its curve, one on the
// across line, where it runs upright, and the shoulder.
func armholeThrough(curve, across, shoulder orb.Point) pieces.Path {
	at := func(p orb.Point) orb.Point { return orb.Point{300 - 10*p[0], 10 * p[1]} }
	low := construct.Through(orb.Point{-1, 0}, []orb.Point{at(orb.Point{}), at(curve), at(across)}, orb.Point{0, 1})
	return construct.Join(low, construct.Through(orb.Point{0, 1}, []orb.Point{at(across), at(shoulder)}, orb.Point{0, 0}))
}

// beyond is how far a head lies outside the straight line from its crown to an end of
// the bicep line, so far along that line from the crown.
func beyond(head pieces.Path, crown, end orb.Point, along float64) float64 {
	way := construct.Direction(crown, end)
	best, off := math.Inf(1), 0.0
	for at := 0.0; at <= head.Length(); at++ {
		q := head.At(at)
		to := orb.Point{q[0] - crown[0], q[1] - crown[1]}
		if away := math.Abs(to[0]*way[0] + to[1]*way[1] - along); away < best && to[0]*way[0] >= 0 {
			best, off = away, math.Abs(cross(way, to))
		}
	}
	return off
}

// The sleeve to the Bunka bodice block of bust 83 (Bunka Fashion College,
// Fundamentals of Garment Design, from memory), every point within 5 mm, at an ease of
// 7.5 % (the book's comes to 7 to 8 %), with upright underarm seams as the book has
// them. Its armhole, in cm, by the figures that bodice.TestBunkaBlock quotes:
//
//	width of each half    (47.5 - 17.8 - 19.2) / 2            =  5.25
//	in the curve          a third of 5.25 and 0.5 or 0.8, 45 degrees out of the corner
//	front shoulder        the bust dart of 18.3 degrees closed:  0.27 over, 16.37 up
//	back shoulder         23.05 - 20.47, 36.02 - 17.4         =  2.58 over, 18.62 up
//	head height           5/6 of (16.37 + 18.62) / 2          = 14.58
//	front end             the front armhole away from the crown: 20.5 -> 14.4
//	back end              the back armhole and 1 cm:            22.6 -> 17.3
//	fullest               a quarter of the front armhole from the crown, 1.8 to 2 out
//	notches               at the level of the dart in the armhole, 5.8
//
// What the book has otherwise is no point of ours: it draws the hollow only as far up
// as the armhole's bottom, about 1.5 cm, and cuts across the straight line at 6.8,
// where its head lies about 1.5 cm off its own armhole.
func TestSleeveOfTheBunkaBlock(t *testing.T) {
	front := armholeThrough(orb.Point{3.66, 1.59}, orb.Point{5.25, 5.8}, orb.Point{0.27, 16.37})
	back := armholeThrough(orb.Point{3.45, 1.80}, orb.Point{5.25, 5.8}, orb.Point{2.58, 18.62})
	m := Measures{
		FrontArmhole: front, BackArmhole: back, FrontNotch: front[:2].Length(), BackNotch: back[:2].Length(),
		ShoulderToWrist: 520, UpperArm: 260,
	}
	ease := 0.075 * m.whole()
	block, err := Draft(m, Options{Ease: &ease, HeadHeight: 145.8, WristWidth: 316})
	require.NoError(t, err)
	head := edge(t, block.Piece, seams.SleeveHead)
	crown := head.At(block.FrontHead)
	leg := func(long float64) float64 { return math.Sqrt(long*long - 145.8*145.8) }
	assert.InDelta(t, 145.8, crown[1], 0.01)
	assert.InDelta(t, leg(front.Length()), head.Start()[0], 5, "front end")
	assert.InDelta(t, -leg(back.Length()+10), head.End()[0], 5, "back end")
	assert.InDelta(t, 18.5, beyond(head, crown, head.Start(), front.Length()/4), 5, "front, fullest")
	assert.InDelta(t, 19.5, beyond(head, crown, head.End(), front.Length()/4), 5, "back, fullest")
	assert.InDelta(t, 58, head.At(m.FrontNotch)[1], 5, "front notch")
	assert.InDelta(t, 58, head.At(head.Length() - m.BackNotch)[1], 5, "back notch")
}

// The flat sleeve of an easy armhole (Aldrich, Metric Pattern Cutting for Women's Wear,
// from memory), every point within 5 mm: the head is a quarter of the armhole high; a
// straight line as long as half of the armhole goes from the crown to either end of
// the bicep line; a quarter of the way down that line the head lies 1.75 cm outside it,
// and a quarter up 6 mm inside, which makes it 8/3 (1.75^2 + 0.6^2) / 12.5 = 7.3 mm
// longer for every 25 cm: an ease of 2.9 %. That last place is no point of ours, whose
// head lies on the armhole there.
func TestFlatSleeveOfAnEasyArmhole(t *testing.T) {
	for _, width := range []float64{74, 82, 90} {
		easy := armholeOf(width, 95, 210, 20)
		m := Measures{
			FrontArmhole: easy, BackArmhole: easy, FrontNotch: easy[0].Length(), BackNotch: easy[0].Length(),
			ShoulderToWrist: 590, UpperArm: 290,
		}
		height := m.whole() / 4
		ease := 0.029 * m.whole()
		block, err := Draft(m, Options{Style: Shirt, HeadHeight: height, Ease: &ease})
		require.NoError(t, err)
		head := edge(t, block.Piece, seams.SleeveHead)
		crown := head.At(block.FrontHead)
		end := math.Sqrt(m.whole()*m.whole()/4 - height*height)
		assert.InDelta(t, height, crown[1], 0.01)
		assert.InDelta(t, end, head.Start()[0], 5, "%g: front end", width)
		assert.InDelta(t, -end, head.End()[0], 5, "%g: back end", width)
		assert.InDelta(t, 17.5, beyond(head, crown, head.Start(), m.whole()/8), 5, "%g: front", width)
		assert.InDelta(t, 17.5, beyond(head, crown, head.End(), m.whole()/8), 5, "%g: back", width)
	}
}
