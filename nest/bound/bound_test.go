package bound

import (
	"math"
	"testing"

	"ellwand/nest/layout"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

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

func moveRing(ring orb.Ring, x, y float64) orb.Ring {
	out := make(orb.Ring, len(ring))
	for i, q := range ring {
		out[i] = orb.Point{q[0] + x, q[1] + y}
	}
	return out
}

// wave is a garment-like outline of n corners.
func wave(n int, size float64) orb.Ring {
	ring := make(orb.Ring, n)
	for i := range ring {
		a := 2 * math.Pi * float64(i) / float64(n)
		r := size * (1 + 0.25*math.Cos(3*a) + 0.1*math.Sin(7*a))
		ring[i] = orb.Point{r * math.Cos(a), r * math.Sin(a)}
	}
	return ring
}

func item(name string, outline orb.Ring, copies int, turns ...layout.Turn) layout.Item {
	if len(turns) == 0 {
		turns = []layout.Turn{{}}
	}
	return layout.Item{Name: name, Outline: outline, Copies: copies, Turns: turns}
}

// strip is a problem without gap or zones.
func strip(width float64, items ...layout.Item) layout.Problem {
	return layout.Problem{Width: width, Items: items}
}

// Each case is worked out by hand. The area bound alone is given beside it.
func TestBoundByHand(t *testing.T) {
	quarters := []layout.Turn{{}, {Degrees: 90}}
	// An L: a foot of 60 x 10 and a wall of 10 x 60.
	tests := []struct {
		name string
		p    layout.Problem
		area float64
		want float64
	}{
		{"area", strip(100, item("a", oblong(0, 0, 20, 50), 4)), 40, 40},
		{"longest", strip(100, item("belt", oblong(0, 0, 300, 5), 1)), 15, 300},
		{"longest, turned", strip(200, item("belt", oblong(0, 0, 300, 5), 1, quarters...)), 7.5, 300},
		{"longest, may lie across", strip(300, item("belt", oblong(0, 0, 300, 5), 1, quarters...)), 5, 5},
		{
			"longest, tilted",
			layout.Problem{
				Width: 100,
				Items: []layout.Item{{Name: "belt", Outline: layout.Turned(oblong(0, 0, 90, 30), 10, false),
					Copies: 1, Turns: []layout.Turn{{Degrees: 90}}, Tilt: 10}},
			},
			27,
			30,
		},
		// 60 + 60 > 100: one behind the other.
		{"queue", strip(100, item("a", oblong(0, 0, 20, 60), 3), item("b", oblong(0, 0, 10, 51), 2)), 46.2, 80},
		// Two of 50 pass, and fill as much as one of 60.
		{"queue with halves", strip(100, item("a", oblong(0, 0, 20, 60), 1), item("b", oblong(0, 0, 20, 50), 2)), 32, 40},
		// Of 34, two lie side by side.
		{"thirds", strip(100, item("a", oblong(0, 0, 10, 34), 8)), 27.2, 40},
		// 70 leaves no room for 31, of which three lie side by side.
		{"70 and 31", strip(100, item("a", oblong(0, 0, 10, 70), 3), item("b", oblong(0, 0, 10, 31), 3)), 30.3, 40},
		// Triangles of height 80, base 20: at most one is over 50 high at any
		// x; each is so over 20 * 30 / 80 = 7.5.
		// With a gap of 2, pieces of 49.5 no longer pass: 49.5 + 2 + 49.5 = 101.
		{"gap", layout.Problem{Width: 100, Gap: 2, Items: []layout.Item{item("a", oblong(0, 0, 20, 49.5), 2)}}, 19.8, 40},
		{
			"gap that is kept",
			layout.Problem{Width: 100, Gap: 1, Items: []layout.Item{item("a", oblong(0, 0, 20, 49.5), 2)}},
			19.8,
			20,
		},
		// Ten triangles on the fold, 20 along it each.
		{
			"pinned low",
			strip(100, item("a", orb.Ring{{0, 0}, {20, 0}, {10, 10}}, 10, layout.Turn{Pin: layout.PinLow})),
			10,
			200,
		},
		{
			"pinned to either edge",
			strip(100, item("a", oblong(0, 0, 20, 10), 10, layout.Turn{Pin: layout.PinLow}, layout.Turn{Pin: layout.PinHigh})),
			20,
			100,
		},
		{
			"pinned, or not",
			strip(100, item("a", oblong(0, 0, 20, 10), 10, layout.Turn{Pin: layout.PinLow}, layout.Turn{})),
			20,
			20,
		},
		// 3 of 20 with 2 gaps of 5.
		{
			"pinned with gaps",
			layout.Problem{
				Width: 100,
				Gap:   5,
				Items: []layout.Item{item("a", oblong(0, 0, 20, 10), 3, layout.Turn{Pin: layout.PinLow})},
			},
			6,
			70,
		},
		// On the line y = 45, both are 30 long.
		{"pinned from both sides", layout.Problem{Width: 100, Items: []layout.Item{
			item(
				"a",
				oblong(0, 0, 30, 60),
				1,
				layout.Turn{Pin: layout.PinLow},
			), item("b", oblong(0, 0, 30, 60), 1, layout.Turn{Pin: layout.PinHigh})}}, 36, 60},
		// A flaw over the whole width of 7 delays everything by 7.
		{
			"zone",
			layout.Problem{
				Width: 100,
				Zones: []orb.Ring{oblong(5, 0, 7, 100)},
				Items: []layout.Item{item("a", oblong(0, 0, 20, 50), 4)},
			},
			40,
			47,
		},
		// Pieces may touch a zone whatever the gap: 40 + 20 + 40 fill the width.
		{
			"zone between, with a gap",
			layout.Problem{
				Width: 100,
				Gap:   10,
				Zones: []orb.Ring{oblong(0, 40, 20, 20)},
				Items: []layout.Item{item("a", oblong(0, 0, 20, 40), 2)},
			},
			16,
			20,
		},
		{
			"zone that lies behind",
			layout.Problem{
				Width: 100,
				Zones: []orb.Ring{oblong(40, 0, 7, 100)},
				Items: []layout.Item{item("a", oblong(0, 0, 20, 50), 4)},
			},
			40,
			40,
		},
		// On a lattice of 50 from 20, a piece whose corner is its reference point
		// begins at 20 at the earliest; one that reaches 30 before it, at 40.
		{
			"lattice",
			layout.Problem{
				Width: 100,
				Items: []layout.Item{
					{Name: "a", Outline: oblong(0, 0, 30, 40), Copies: 1, Turns: []layout.Turn{{OffsetX: 20}}, PeriodX: 50},
				},
			},
			12,
			50,
		},
		{
			"lattice, reaching before",
			layout.Problem{
				Width: 100,
				Items: []layout.Item{
					{Name: "a", Outline: oblong(-30, 0, 60, 40), Copies: 1, Turns: []layout.Turn{{OffsetX: 20}}, PeriodX: 50},
				},
			},
			24,
			100,
		},
		{
			"lattice, the nearer turn",
			layout.Problem{
				Width: 100,
				Items: []layout.Item{
					{
						Name:    "a",
						Outline: oblong(0, 0, 30, 40),
						Copies:  1,
						Turns:   []layout.Turn{{OffsetX: 20}, {OffsetX: 55, Mirrored: true}},
						PeriodX: 50,
					},
				},
			},
			12,
			50,
		},
		// On a lattice of 50, pieces of 30 that cannot pass each other begin at 0,
		// 50 and 100; one of another place of the repeat, between two of them.
		{
			"queue on a lattice",
			layout.Problem{
				Width: 100,
				Items: []layout.Item{
					{Name: "a", Outline: oblong(0, 0, 30, 60), Copies: 3, Turns: []layout.Turn{{}}, PeriodX: 50},
				},
			},
			54,
			130,
		},
		{
			"queue on a lattice, with a gap",
			layout.Problem{
				Width: 100,
				Gap:   21,
				Items: []layout.Item{
					{Name: "a", Outline: oblong(0, 0, 30, 60), Copies: 2, Turns: []layout.Turn{{}}, PeriodX: 50},
				},
			},
			36,
			130,
		},
		{"queue of two kinds", layout.Problem{Width: 100, Items: []layout.Item{
			{Name: "a", Outline: oblong(0, 0, 30, 60), Copies: 2, Turns: []layout.Turn{{}}, PeriodX: 50},
			{Name: "b", Outline: oblong(0, 0, 20, 60), Copies: 1, Turns: []layout.Turn{{OffsetX: 30}}, PeriodX: 50}}}, 48, 80},
		{
			"queue on the fold",
			layout.Problem{
				Width: 100,
				Items: []layout.Item{
					{Name: "a", Outline: oblong(0, 0, 30, 10), Copies: 3, Turns: []layout.Turn{{Pin: layout.PinLow}}, PeriodX: 50},
				},
			},
			9,
			130,
		},
		// Across, side by side, they would take 0 to 30 and 50 to 80, so that they
		// lie one behind the other: 80 long, less what four halvings of 5 leave.
		{
			"queue across",
			layout.Problem{
				Width: 79,
				Items: []layout.Item{
					{Name: "a", Outline: oblong(0, 0, 40, 30), Copies: 2, Turns: []layout.Turn{{}}, PeriodY: 50},
				},
			},
			2400.0 / 79,
			79.6875,
		},
		{
			"zone, half",
			layout.Problem{
				Width: 100,
				Zones: []orb.Ring{oblong(5, 0, 7, 51)},
				Items: []layout.Item{item("a", oblong(0, 0, 20, 50), 4)},
			},
			40,
			47,
		},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			area := 0.0
			for _, it := range test.p.Items {
				area += float64(it.Copies) * layout.Area(it.Outline)
			}
			require.InDelta(t, test.area, area/test.p.Width, 0.01, "area bound")
			require.InEpsilon(t, test.want, Length(test.p), 1e-3)
		})
	}
}

func TestBoundOfNothing(t *testing.T) {
	assert.Zero(t, Length(layout.Problem{}))
	p := strip(100, item("cuff", square(10), 1))
	p.Sheets = []orb.Polygon{{square(50)}}
	assert.Zero(t, Length(p))
}
