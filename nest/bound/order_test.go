package bound

import (
	"math/rand/v2"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/nest/layout"
	"ellwand/nest/verify"
)

// wedge narrows from its foot, at x = 0, to its top; its lower edge is straight.
func wedge(length, foot, top float64) orb.Ring {
	return orb.Ring{{0, 0}, {length, 0}, {length, top}, {0, foot}}
}

// By hand: wedges 100 long, 60 wide at the foot and 30 at the top, that all point the
// same way on a strip of 100. The foot of one fits beside another where that is 40 wide,
// at 2/3 of its length: each lies 66.7 behind the one before it. Turned head to foot two
// lie side by side, 90 wide together. Ten spires 80 high lie half their foot of 20 behind
// each other, or 9.75 where there are 2 more; twelve walls of 60 their 10, and the foot of
// the last, of 50, behind them.
func TestBoundOfPiecesThatLieOneBehindTheOther(t *testing.T) {
	spire := orb.Ring{{0, 0}, {20, 0}, {10, 80}}
	wall := orb.Ring{{0, 0}, {60, 0}, {60, 10}, {10, 10}, {10, 60}, {0, 60}}
	for name, c := range map[string]struct {
		width float64
		item  layout.Item
		want  float64
	}{
		"two wedges":           {100, item("wedge", wedge(100, 60, 30), 2), 166.7},
		"five wedges":          {100, item("wedge", wedge(100, 60, 30), 5), 366.7},
		"wedges head to foot":  {100, item("wedge", wedge(100, 60, 30), 2, layout.Turn{}, layout.Turn{Degrees: 180}), 100},
		"spires":               {80, item("spire", spire, 10), 110},
		"spires, wider":        {82, item("spire", spire, 10), 107.75},
		"walls with long feet": {100, item("wall", wall, 12), 170},
	} {
		got := Length(strip(c.width, c.item))
		assert.LessOrEqual(t, got, c.want+0.1, name)
		assert.GreaterOrEqual(t, got, 0.985*c.want, name)
	}
}

// What is laid is never shorter: wide wedges one behind the other, as near as their feet
// and tops let them, in any order and either way.
func TestOrderNeverAboveALayout(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 8))
	near := 0
	for n := range 100 {
		width := 80 + 60*r.Float64()
		p := layout.Problem{Width: width, Gap: float64(r.IntN(2)) * 3 * r.Float64()}
		var l layout.Layout
		at, end := 0.0, 0.0
		for i := range 2 + r.IntN(4) {
			length, foot, top := 50+80*r.Float64(), width*(0.5+0.4*r.Float64()), width*(0.2+0.6*r.Float64())
			p.Items = append(p.Items, item("wedge", wedge(length, foot, top), 1, layout.Turn{}, layout.Turn{Degrees: 180}))
			turn := r.IntN(2)
			here := layout.Placement{Item: i, Turn: turn}
			box := p.Placed(here).Bound()
			here.Y = -box.Min[1]
			if i%2 == 1 { // the one low, the next high
				here.Y = width - box.Max[1]
			}
			here.X = at - box.Min[0]
			l.Placements = append(l.Placements, here)
			one := p
			one.Items = p.Items[:i+1]
			for verify.Layout(one, layout.Layout{Placements: l.Placements, Length: lengthOf(one,
				layout.Layout{Placements: l.Placements})}) != nil {
				l.Placements[i].X += 0.5
			}
			at = l.Placements[i].X + box.Min[0]
			end = max(end, p.Placed(l.Placements[i]).Bound().Max[0])
		}
		l.Length = end
		require.NoError(t, verify.Layout(p, l), "case %d", n)
		bound := Length(p)
		require.LessOrEqual(t, bound, end*(1+1e-6), "case %d", n)
		if bound > 0.95*end {
			near++
		}
	}
	assert.Greater(t, near, 10, "the bound is often near")
}
