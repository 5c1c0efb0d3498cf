package verify

import (
	"fmt"
	"math"
	"slices"
	"testing"

	"ellwand/nest/layout"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// moron is the first squared rectangle published: nine different squares tile
// 33 x 32 (Z. Moron, "O rozkladach prostokatow na kwadraty", Przeglad
// Matematyczno-Fizyczny 3, 1925). Coordinates worked out by hand.
var moron = []struct{ side, x, y float64 }{
	{18, 0, 0}, {15, 18, 0}, {7, 18, 15}, {8, 25, 15}, {14, 0, 18}, {4, 14, 18}, {10, 14, 22}, {1, 24, 22}, {9, 24, 23},
}

func moronTiling() (layout.Problem, layout.Layout) {
	p, l := layout.Problem{Width: 32}, layout.Layout{Length: 33}
	for i, s := range moron {
		p.Items = append(
			p.Items,
			layout.Item{Name: fmt.Sprintf("square %g", s.side), Outline: square(s.side), Copies: 1, Turns: []layout.Turn{{}}},
		)
		l.Placements = append(l.Placements, layout.Placement{Item: i, X: s.x, Y: s.y})
	}
	return p, l
}

func TestVerifyMoronsSquaredRectangle(t *testing.T) {
	p, l := moronTiling()
	require.NoError(t, Layout(p, l))
	for i := range l.Placements {
		for _, move := range []orb.Point{{0.01, 0}, {-0.01, 0}, {0, 0.01}, {0, -0.01}} {
			_, moved := moronTiling()
			moved.Placements[i].X += move[0]
			moved.Placements[i].Y += move[1]
			assert.Error(t, Layout(p, moved), "square %g moved by %v", moron[i].side, move)
		}
	}
}

func TestVerifyMoronTurnedAndScaled(t *testing.T) {
	// The tiling as pieces on a sheet that stands at an angle, so that no
	// contact is exact in float64.
	for _, degrees := range []float64{0, 17, 90, 211.3} {
		p, l := moronTiling()
		for i := range p.Items {
			p.Items[i].Turns[0].Degrees = degrees
			at := layout.Turned(orb.Ring{{l.Placements[i].X, l.Placements[i].Y}}, degrees, false)[0]
			l.Placements[i].X, l.Placements[i].Y = at[0], at[1]
		}
		p.Sheets = []orb.Polygon{{layout.Turned(oblong(0, 0, 33, 32), degrees, false)}}
		l.Length = 0
		require.NoError(t, Layout(p, l), "%g degrees", degrees)
		l.Placements[7].X += 0.01
		require.Error(t, Layout(p, l), "%g degrees", degrees)
	}
}

// Each case lays b at (x, y) against a at the origin, on a wide strip.
func TestVerifyContact(t *testing.T) {
	//  a "u" of 30 x 30 with a slot of 10 from the top
	u := orb.Ring{{0, 0}, {30, 0}, {30, 30}, {20, 30}, {20, 10}, {10, 10}, {10, 30}, {0, 30}}
	//  an "L" of 90 x 90, 40 thick
	ell := orb.Ring{{0, 0}, {90, 0}, {90, 40}, {40, 40}, {40, 90}, {0, 90}}
	diamond := orb.Ring{{5, 0}, {10, 5}, {5, 10}, {0, 5}}
	tests := []struct {
		name string
		a, b orb.Ring
		x, y float64
		fits bool
	}{
		{"edge to edge", square(10), square(10), 10, 0, true},
		{"part of an edge", square(10), square(10), 10, 3, true},
		{"corner to corner", square(10), square(10), 10, 10, true},
		{"corner to edge", square(10), diamond, 10, 0, true},
		{"corner in edge", square(10), diamond, 9.999, 0, false},
		{"on top of each other", square(10), square(10), 0, 0, false},
		{"concave, on top of each other", u, u, 0, 0, false},
		{"inside", square(30), square(10), 10, 10, false},
		{"inside, sharing an edge", square(30), square(10), 0, 10, false},
		{"inside, sharing corners", square(10), diamond, 0, 0, false},
		{"in the slot, touching three sides", u, oblong(0, 0, 10, 20), 10, 10, true},
		{"in the slot, too deep", u, oblong(0, 0, 10, 20), 10, 9.99, false},
		{"over the slot", u, oblong(0, 0, 10, 20), 10, 30, true},
		{"across the arms", u, oblong(0, 0, 30, 10), 0, 15, false},
		{"crossing bars, no corner inside", oblong(0, 10, 30, 5), oblong(10, 0, 5, 30), 0, 0, false},
		{"same bar, shifted along", oblong(0, 0, 30, 5), oblong(0, 0, 30, 5), 5, 0, false},
		{"within the tolerance", square(50), square(50), 50 - 0.9e-5, 0, true},
		{"beyond the tolerance", square(50), square(50), 50 - 1.1e-5, 0, false},
		{"part of an edge, within the tolerance", square(50), square(40), 50 - 0.9e-5, 7, true},
		{"part of an edge, beyond the tolerance", square(50), square(40), 50 - 1.1e-5, 7, false},
		{"in the corner", ell, square(50), 40, 40, true},
		{"in the corner, within the tolerance", ell, square(50), 40 - 0.6e-5, 40 - 0.6e-5, true},
		{"in the corner, beyond the tolerance at the corner only", ell, square(50), 40 - 0.9e-5, 40 - 0.9e-5, false},
		{"narrow, beyond the area", oblong(0, 0, 10, 1), oblong(0, 0, 10, 1), 0, 1 - 0.9e-5, false},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			// 100 wide: a depth of 1e-5 is the tolerance. Squares of 50 lose
			// less than AreaTolerance at that depth.
			p := layout.Problem{Width: 100, Items: []layout.Item{
				{Name: "a", Outline: test.a, Copies: 1, Turns: []layout.Turn{{}}},
				{Name: "b", Outline: test.b, Copies: 1, Turns: []layout.Turn{{}}},
			}}
			l := layout.Layout{Placements: []layout.Placement{{Item: 0}, {Item: 1, X: test.x, Y: test.y}}}
			l.Length = lengthOf(p, l)
			for range 2 {
				err := Layout(p, l)
				if test.fits {
					require.NoError(t, err)
				} else {
					require.ErrorContains(t, err, "a and b overlap")
				}
				// And with the rings running the other way.
				for i := range p.Items {
					p.Items[i].Outline = slices.Clone(p.Items[i].Outline)
					slices.Reverse(p.Items[i].Outline)
				}
			}
		})
	}
}

func oblong(x, y, width, height float64) orb.Ring {
	return orb.Ring{{x, y}, {x + width, y}, {x + width, y + height}, {x, y + height}}
}

func square(side float64) orb.Ring { return oblong(0, 0, side, side) }

func lengthOf(p layout.Problem, l layout.Layout) float64 {
	longest := 0.0
	for _, at := range l.Placements {
		longest = max(longest, p.Placed(at).Bound().Max[0])
	}
	return longest
}

func TestVerifyNamesEveryFault(t *testing.T) {
	valid := func() (layout.Problem, layout.Layout) {
		p := layout.Problem{Width: 100, Items: []layout.Item{
			{Name: "front", Outline: square(20), Copies: 2, Turns: []layout.Turn{{}, {Degrees: 90, Direction: 1}}, Group: 1},
			{
				Name:    "back",
				Outline: square(20),
				Copies:  1,
				Turns:   []layout.Turn{{Pin: layout.PinLow}, {Pin: layout.PinHigh, Direction: 1}},
			},
		}}
		return p, layout.Layout{Length: 60, Placements: []layout.Placement{
			{Item: 0, Copy: 0}, {Item: 0, Copy: 1, X: 40, Y: 30}, {Item: 1, X: 20},
		}}
	}
	tests := []struct {
		name  string
		spoil func(*layout.Problem, *layout.Layout)
		want  string
	}{
		{"valid", func(*layout.Problem, *layout.Layout) {}, ""},
		{
			"faulty problem",
			func(p *layout.Problem, _ *layout.Layout) { p.Gap = -1 },
			"the gap between pieces is -1; it cannot be negative",
		},
		{"missing", func(_ *layout.Problem, l *layout.Layout) { l.Placements[1].Copy = 0 },
			"front (copy 1) is placed 2 times\nfront (copy 2) is not placed"},
		{
			"one too many",
			func(p *layout.Problem, _ *layout.Layout) { p.Items[0].Copies = 1 },
			"front (copy 2) is placed, but only 1 copies are asked for",
		},
		{"no such item", func(_ *layout.Problem, l *layout.Layout) {
			l.Placements = append(l.Placements, layout.Placement{Item: 5})
		},
			"placement 4 is of item 6, which is not asked for"},
		{
			"no such turn",
			func(_ *layout.Problem, l *layout.Layout) { l.Placements[0].Turn = 2 },
			"front (copy 1) lies in turn 3; it has 2",
		},
		{
			"no such sheet",
			func(_ *layout.Problem, l *layout.Layout) { l.Placements[0].Sheet = 1 },
			"front (copy 1) lies on sheet 2; there are 1",
		},
		{
			"nowhere",
			func(_ *layout.Problem, l *layout.Layout) { l.Placements[0].X = math.NaN() },
			"front (copy 1) has no place: its position is not a number",
		},
		{
			"tilt",
			func(_ *layout.Problem, l *layout.Layout) { l.Placements[1].Tilt = -1 },
			"front (copy 2) is tilted by 1 degrees; 0 are allowed",
		},
		{
			"below",
			func(_ *layout.Problem, l *layout.Layout) { l.Placements[0].Y = -0.5 },
			"front (copy 1) hangs over the edge by 0.5 at x 10, y -0.5",
		},
		{"below, within the tolerance", func(_ *layout.Problem, l *layout.Layout) { l.Placements[0].Y = -0.9e-5 }, ""},
		{
			"below, beyond the tolerance",
			func(_ *layout.Problem, l *layout.Layout) { l.Placements[0].Y = -1.1e-5 },
			"front (copy 1) hangs over the edge by 1.1e-05",
		},
		{
			"before",
			func(_ *layout.Problem, l *layout.Layout) { l.Placements[0].X = -3 },
			"front (copy 1) hangs over the edge by 3 at x -3, y 0",
		},
		{
			"above",
			func(_ *layout.Problem, l *layout.Layout) { l.Placements[1].Y = 81 },
			"front (copy 2) hangs over the edge by 1 at x 60, y 101",
		},
		{
			"far out",
			func(_ *layout.Problem, l *layout.Layout) { l.Placements[1].Y = 181 },
			"front (copy 2) hangs over the edge by 101 at x 60, y 201",
		},
		{
			"beyond the sheet",
			func(p *layout.Problem, _ *layout.Layout) { p.Length = 59 },
			"front (copy 2) hangs over the edge by 1 at x 60, y 30",
		},
		{
			"length",
			func(_ *layout.Problem, l *layout.Layout) { l.Length = 60.1 },
			"the layout says that it is 60.1 long; its pieces reach to 60",
		},
		{
			"pin low",
			func(_ *layout.Problem, l *layout.Layout) { l.Placements[2].Y = 0.25 },
			"back must lie on its edge and is 0.25 away from it",
		},
		{
			"pin high",
			func(_ *layout.Problem, l *layout.Layout) { l.Placements[2].Turn = 1 },
			"back must lie on its edge and is 80 away from it",
		},
		{"lattice", func(p *layout.Problem, _ *layout.Layout) { p.Items[0].PeriodX, p.Items[0].Turns[0].OffsetX = 12, 4 },
			"front (copy 1) is 4 off the repeat along the cloth"},
		{"lattice kept", func(p *layout.Problem, l *layout.Layout) {
			p.Items[0].PeriodY, p.Items[0].Turns[0].OffsetY, l.Placements[0].Y = 15, -15, 60
		}, ""},
		{"group", func(_ *layout.Problem, l *layout.Layout) { l.Placements[1].Turn = 1; l.Placements[1].X = 60 },
			"front (copy 2) points the other way than front (copy 1)"},
		{
			"overlap",
			func(_ *layout.Problem, l *layout.Layout) { l.Placements[2].X = 18 },
			"front (copy 1) and back overlap by 2",
		},
		{"gap kept", func(p *layout.Problem, l *layout.Layout) {
			p.Gap, l.Placements[2].X, l.Placements[1].X, l.Length = 2, 22, 44, 64
		}, ""},
		{"gap", func(p *layout.Problem, l *layout.Layout) { p.Gap, l.Placements[2].X = 2, 21.5 },
			"front (copy 1) and back are 1.5 apart at x 20, y 0; the gap is 2"},
		{"edge kept clear", func(p *layout.Problem, _ *layout.Layout) { p.ClearLow = 1 },
			"lies nearer to an edge than it must keep clear of it"},
		{"zone touched", func(p *layout.Problem, _ *layout.Layout) { p.Zones = []orb.Ring{oblong(0, 20, 20, 20)} }, ""},
		{"zone", func(p *layout.Problem, _ *layout.Layout) { p.Zones = []orb.Ring{oblong(0, 19, 20, 1)} },
			"front (copy 1) lies 1 over zone 1, which may not be used, at x 10, y 19"},
		{"zone inside", func(p *layout.Problem, _ *layout.Layout) { p.Zones = []orb.Ring{oblong(9, 9, 1, 1)} },
			"front (copy 1) lies 10 over zone 1, which may not be used, at x 10, y 10"},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			p, l := valid()
			test.spoil(&p, &l)
			err := Layout(p, l)
			if test.want == "" {
				require.NoError(t, err)
				return
			}
			require.ErrorContains(t, err, test.want)
		})
	}
}
