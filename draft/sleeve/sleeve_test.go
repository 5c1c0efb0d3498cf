package sleeve

import (
	"math"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/draft/construct"
	"ellwand/pieces"
	"ellwand/pieces/marks"
	"ellwand/pieces/seams"
)

// armholeOf draws a half of an armhole for the tests: so wide and so high at its
// narrowest place, level at the underarm, and on to a shoulder.
func armholeOf(width, across, depth, shoulder float64) pieces.Path {
	at := func(x, y float64) orb.Point { return orb.Point{300 - x, y} }
	return pieces.Path{
		pieces.Bezier{P0: at(0, 0), P1: at(0.7*width, 0), P2: at(width, 0.45*across), P3: at(width, across)},
		pieces.Bezier{P0: at(width, across), P1: at(width, across+30), P2: at(width-5, depth-40),
			P3: at(width-shoulder, depth)},
	}
}

// measures of a woman of a middle size.
func measures() Measures {
	front, back := armholeOf(68, 78, 172, 18), armholeOf(66, 95, 192, 14)
	return Measures{
		FrontArmhole: front, BackArmhole: back, FrontNotch: front[0].Length(), BackNotch: back[0].Length(),
		ShoulderToWrist: 590, UpperArm: 280,
	}
}

func (m Measures) whole() float64 { return m.FrontArmhole.Length() + m.BackArmhole.Length() }

func drafted(t *testing.T, o Options) Block {
	block, err := Draft(measures(), o)
	require.NoError(t, err)
	require.NoError(t, block.Piece.Check())
	return block
}

func edge(t *testing.T, p pieces.Piece, name seams.Name) pieces.Path {
	e, ok := p.Edge(name)
	require.True(t, ok, name)
	return e.Path
}

func TestEaseIsDividedFrontAndBack(t *testing.T) {
	m := measures()
	for _, ease := range []float64{0, 10, 22.5, 30, 36} {
		block := drafted(t, Options{Ease: &ease})
		assert.InDelta(t, m.whole()+ease, block.Head, 0.1)
		assert.InDelta(t, m.FrontArmhole.Length()+0.45*ease, block.FrontHead, 0.1)
	}
}

// The head is level at the crown, square to the underarm seams at both ends, and
// its direction and its bend go on without a jump.
func TestHeadIsSmooth(t *testing.T) {
	for name, o := range map[string]Options{
		"set-in": {}, "shirt": {Style: Shirt}, "short": {Reach: Short},
		"bishop": {HemFullness: 1.8},
		"puff":   {HeadFullness: 1.5, Reach: Short},
	} {
		block := drafted(t, o)
		head := edge(t, block.Piece, seams.SleeveHead)
		crown := head.Tangent(block.FrontHead)
		assert.InDelta(t, 0, crown[1], 1e-6, "%s: level at the crown", name)
		front, back := edge(t, block.Piece, seams.FrontUnderarm), edge(t, block.Piece, seams.BackUnderarm)
		for _, at := range [][2]orb.Point{
			{front.Tangent(front.Length()), head.Tangent(0)}, {back.Tangent(0), head.Tangent(head.Length())},
		} {
			assert.InDelta(t, 0, at[0][0]*at[1][0]+at[0][1]*at[1][1], 1e-3, "%s: square to the underarm", name)
		}
		assert.InDelta(t, front.Length(), back.Length(), 0.01, name)
		for i := 1; i < len(head); i++ {
			before, after := endOf(head[i-1:i]), endOf(pieces.Path{head[i].Reverse()})
			assert.InDelta(t, 0, construct.Distance(head[i-1].Tangent(1), head[i].Tangent(0)), 1e-6, name)
			assert.InDelta(t, before.bend, -after.bend, 1e-5, "%s: curve %d", name, i)
		}
	}
}

// Fullness lies between the notches: the lower head and the underarm seams stay
// as they are in the sleeve that is not gathered.
func TestGathersLieBetweenTheNotches(t *testing.T) {
	m := measures()
	plain := drafted(t, Options{Reach: Short})
	was := edge(t, plain.Piece, seams.SleeveHead)
	for _, times := range []float64{1.15, 1.4, 2, 3} {
		full := drafted(t, Options{Reach: Short, HeadFullness: times})
		is := edge(t, full.Piece, seams.SleeveHead)
		between := m.whole() - m.FrontNotch - m.BackNotch
		assert.InDelta(t, times*between, full.Head-m.FrontNotch-m.BackNotch, 0.1)
		for _, at := range []float64{0, 30, 60, m.FrontNotch} {
			moved := construct.Distance(was.Start(), is.Start())
			assert.InDelta(t, moved, construct.Distance(was.At(at), is.At(at)), 0.01, "front, %g along", at)
		}
		for _, name := range []seams.Name{seams.FrontUnderarm, seams.BackUnderarm} {
			a, b := edge(t, plain.Piece, name), edge(t, full.Piece, name)
			assert.InDelta(t, a.Length(), b.Length(), 0.01, name)
			assert.InDelta(t, 0, construct.Distance(a.Tangent(0), b.Tangent(0)), 1e-6, "%s leans as before", name)
		}
		assert.InDelta(t, full.BicepLine-plain.BicepLine, full.Spread, 0.01)
		assert.InDelta(t, full.Spread, full.WristWidth-plain.WristWidth, 0.01)
	}
}

// The bicep line is never less than the arm and 4 cm, nor more than 1.45 times the
// arm, 1.6 in a shirt, as far as the height of the head can bring it there.
func TestHeadHeightFollowsTheArm(t *testing.T) {
	for _, style := range []Style{SetIn, Shirt} {
		for arm := 220.; arm <= 270; arm += 10 {
			m := measures()
			m.UpperArm = arm
			block, err := Draft(m, Options{Style: style})
			require.NoError(t, err)
			within := Options{Style: style}.BicepLimits(arm)
			assert.GreaterOrEqual(t, block.BicepLine, within.Least, "arm %g", arm)
			assert.LessOrEqual(t, block.BicepLine, within.Most, "arm %g", arm)
		}
	}
	block := drafted(t, Options{BicepEase: 45})
	assert.InDelta(t, 280+45, block.BicepLine, 0.1)
}

func TestOptions(t *testing.T) {
	plain := drafted(t, Options{})
	low := drafted(t, Options{HeadHeight: plain.HeadHeight - 3})
	assert.InDelta(t, plain.HeadHeight-3, low.HeadHeight, 1e-9)
	assert.Greater(t, low.BicepLine, plain.BicepLine, "a lower head is wider")

	assert.InDelta(t, 400, drafted(t, Options{WristWidth: 400}).WristWidth, 1e-9)
	short := drafted(t, Options{Length: 260})
	assert.Greater(t, short.WristWidth, plain.WristWidth, "a short sleeve ends where the long one is wider")
	assert.Len(t, short.Piece.Marks, 1, "no elbow line on a short sleeve")
	assert.Len(t, plain.Piece.Marks, 2)

	wrist, ok := drafted(t, Options{Cuffed: true}).Piece.Edge(seams.Wrist)
	assert.True(t, ok)
	assert.False(t, wrist.Hem)
}

// A gathered hem is as many times its width in the draft as was asked for,
// also where that is wider than the bicep line.
func TestHemFullness(t *testing.T) {
	plain := drafted(t, Options{})
	for _, times := range []float64{1.2, 1.5, 2, 3} {
		full := drafted(t, Options{HemFullness: times})
		assert.InDelta(t, times*0.75*full.BicepLine, full.WristWidth, 0.01)
		assert.Greater(t, full.WristWidth, plain.WristWidth)
	}
}

func TestRefusals(t *testing.T) {
	far := 200.0
	for want, o := range map[string]Options{
		"a head height of 1 cm makes no smooth head on this " +
			"armhole, which is 18.2 cm deep; ask for": {HeadHeight: 10},
		"a head height of 25 cm makes no smooth head on this armhole":                  {HeadHeight: 250},
		"sleeve: a length of 10 cm ends above the underarm; from the crown it must be": {Length: 100},
		"sleeve: the wrist width is -1 cm; it cannot be negative":                      {WristWidth: -10},
		"sleeve: an ease of 20 cm cannot be sewn in; 0 to 1.5 cm suits a " +
			"shirt, 2 to 4.5 cm a set-in sleeve": {Ease: &far},
		"sleeve: a bicep ease of 1 cm cannot be; ask for 4 cm to 30 cm": {BicepEase: 10},
		"leave out one of the head height and the bicep ease":           {BicepEase: 50, HeadHeight: 130},
		"a head fullness of 4 cannot be gathered":                       {HeadFullness: 4},
		"a head fullness of 1.05 cannot be gathered":                    {HeadFullness: 1.05},
	} {
		_, err := Draft(measures(), o)
		assert.ErrorContains(t, err, want)
	}
}

func TestNotchesMeetTheArmhole(t *testing.T) {
	m := measures()
	block := drafted(t, Options{})
	counts := map[marks.Name]int{}
	for _, n := range block.Piece.Notches {
		counts[n.Match] += n.Count
	}
	assert.Equal(t, map[marks.Name]int{marks.FrontArmhole: 1, marks.BackArmhole: 2, marks.Shoulder: 1, marks.Elbow: 2},
		counts)
	assert.InDelta(t, m.FrontNotch, block.Piece.Notches[0].At, 1e-9)
	assert.InDelta(t, m.BackNotch, block.Head-block.Piece.Notches[2].At, 1e-9)
}

// A stretch whose bend changes evenly: against a fine sum of its directions.
func TestAfterIsAClothoid(t *testing.T) {
	begin := node{orb.Point{3, 4}, 0.4, 0.012}
	end := begin.after(80, -0.02)
	const steps = 200000
	at := begin.at
	for i := range steps {
		s := 80 * (float64(i) + 0.5) / steps
		heading := 0.4 + 0.012*s - 0.032*s*s/160
		at[0] += math.Cos(heading) * 80 / steps
		at[1] += math.Sin(heading) * 80 / steps
	}
	assert.InDelta(t, 0, construct.Distance(at, end.at), 1e-6)
	assert.InDelta(t, 0.4+80*(-0.008)/2, end.heading, 1e-12)
}
