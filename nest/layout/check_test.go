package layout

import (
	"math"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func oblong(x, y, width, height float64) orb.Ring {
	return orb.Ring{{x, y}, {x + width, y}, {x + width, y + height}, {x, y + height}}
}

func square(side float64) orb.Ring { return oblong(0, 0, side, side) }

// one is a valid problem of one item, to be spoilt by a test.
func one() Problem {
	return Problem{Width: 100, Items: []Item{{Name: "cuff", Outline: square(10), Copies: 1, Turns: []Turn{{}}}}}
}

func TestCheckNamesEveryFault(t *testing.T) {
	nan := math.NaN()
	tests := []struct {
		name  string
		spoil func(*Problem)
		want  string
	}{
		{"valid", func(*Problem) {}, ""},
		{"width", func(p *Problem) { p.Width = 0 }, "the width of the strip is 0; it must be positive"},
		{"width not a number", func(p *Problem) { p.Width = nan }, "the width of the strip is NaN"},
		{"length", func(p *Problem) { p.Length = -1 }, "the length of the sheet is -1; it cannot be negative"},
		{"gap", func(p *Problem) { p.Gap = -0.5 }, "the gap between pieces is -0.5; it cannot be negative"},
		{"nothing", func(p *Problem) { p.Items = nil }, "there is nothing to lay"},
		{"empty sheet", func(p *Problem) { p.Sheets = []orb.Polygon{{}} }, "sheet 1: it has no outline"},
		{"hole beyond", func(p *Problem) { p.Sheets = []orb.Polygon{{square(50), oblong(40, 40, 20, 5)}} },
			"sheet 1: hole 1 reaches beyond the outline of the sheet"},
		{"hole elsewhere", func(p *Problem) { p.Sheets = []orb.Polygon{{square(50), oblong(60, 60, 5, 5)}} },
			"sheet 1: hole 1 reaches beyond the outline of the sheet"},
		{"zone", func(p *Problem) { p.Zones = []orb.Ring{{{0, 0}, {1, 0}}} },
			"zone 1 that may not be used: its outline has 2 different corners"},
		{"no name", func(p *Problem) { p.Items[0].Name, p.Items[0].Copies = "", 0 }, "item 1: 0 copies are asked"},
		{"copies", func(p *Problem) { p.Items[0].Copies = -2 }, "cuff: -2 copies are asked"},
		{"turns", func(p *Problem) { p.Items[0].Turns = nil }, "cuff: no turn is allowed"},
		{
			"turn not a number",
			func(p *Problem) { p.Items[0].Turns[0].OffsetX = nan },
			"cuff: turn 1 holds something that is not a number",
		},
		{"pin", func(p *Problem) { p.Items[0].Turns[0].Pin = 7 }, "cuff: turn 1 is pinned to an unknown edge (7)"},
		{"tilt", func(p *Problem) { p.Items[0].Tilt = -1 }, "cuff: the tilt is -1 degrees; it cannot be negative"},
		{"period", func(p *Problem) { p.Items[0].PeriodY = math.Inf(1) }, "cuff: the repeat is 0 by +Inf"},
		{"corner", func(p *Problem) { p.Items[0].Outline[2][1] = nan }, "cuff: corner 3 of its outline is not a number"},
		{"two corners", func(p *Problem) { p.Items[0].Outline = orb.Ring{{0, 0}, {1, 1}, {1, 1}, {0, 0}} },
			"cuff: its outline has 2 different corners; it needs 3 or more"},
		{"bow-tie", func(p *Problem) { p.Items[0].Outline = orb.Ring{{0, 0}, {10, 10}, {10, 0}, {0, 10}} },
			"cuff: its outline crosses or touches itself near"},
		{
			"corner on an edge",
			func(p *Problem) { p.Items[0].Outline = orb.Ring{{0, 0}, {10, 0}, {10, 10}, {5, 0}, {0, 10}} },
			"cuff: its outline crosses or touches itself near (5, 0)",
		},
		{"corner on a corner", func(p *Problem) {
			p.Items[0].Outline = orb.Ring{{0, 0}, {5, 5}, {0, 10}, {10, 10}, {5, 5}, {10, 0}}
		}, "cuff: its outline crosses or touches itself near (5, 5)"},
		{"spike", func(p *Problem) { p.Items[0].Outline = orb.Ring{{0, 0}, {10, 0}, {20, 0}, {10, 0}, {10, 10}} },
			"cuff: its outline crosses or touches itself near (20, 0)"},
		{"flat", func(p *Problem) { p.Items[0].Outline = orb.Ring{{0, 0}, {3, 1}, {9, 3}} },
			"cuff: its outline crosses or touches itself near"},
		{"straight corners are fine", func(p *Problem) {
			p.Items[0].Outline = orb.Ring{{0, 0}, {5, 0}, {5, 0}, {10, 0}, {10, 10}, {0, 10}, {0, 0}}
		}, ""},
		{"too wide", func(p *Problem) { p.Items[0].Outline = oblong(0, 0, 50, 102.5) },
			"cuff: it is 2.5 too wide for the strip in every turn that is allowed: " +
				"at least 102.5 across, and the strip has 100"},
		{"too wide but for a turn", func(p *Problem) {
			p.Items[0].Outline, p.Items[0].Turns = oblong(0, 0, 50, 102.5), []Turn{{}, {Degrees: 90}}
		}, ""},
		{"too wide but for the tilt", func(p *Problem) {
			// A bar at 3 degrees is 5 cos 3 + 120 sin 3 = 11.3 across, level 5.
			p.Width, p.Items[0].Outline = 5, Turned(oblong(0, 0, 120, 5), 3, false)
			p.Items[0].Tilt = 4
		}, ""},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			p := one()
			test.spoil(&p)
			err := p.Check()
			if test.want == "" {
				require.NoError(t, err)
				return
			}
			require.ErrorContains(t, err, test.want)
		})
	}
}

func TestCheckJoinsAllFaults(t *testing.T) {
	p := one()
	p.Gap = -1
	p.Items[0].Copies = 0
	p.Items = append(p.Items, Item{Name: "belt", Outline: orb.Ring{{0, 0}, {1, 1}, {1, 0}, {0, 1}}, Copies: 1})
	err := p.Check()
	for _, want := range []string{"gap", "cuff: 0 copies", "belt: its outline crosses", "belt: no turn"} {
		assert.ErrorContains(t, err, want)
	}
}

// A triangle whose corner misses the line by one unit in the last place is
// told from a flat one only by exact arithmetic.
func TestOrientationIsExact(t *testing.T) {
	a, b := orb.Point{0.5, 0.5}, orb.Point{12, 12}
	assert.Equal(t, 0, orientation(a, b, orb.Point{24, 24}))
	assert.Equal(t, 1, orientation(a, b, orb.Point{24, math.Nextafter(24, 25)}))
	assert.Equal(t, -1, orientation(a, b, orb.Point{24, math.Nextafter(24, 23)}))
	assert.Equal(t, 1, orientation(a, b, orb.Point{0.5, math.Nextafter(0.5, 1)}))
}

func TestLeastExtentWithTilt(t *testing.T) {
	bar := Item{Outline: Turned(oblong(0, 0, 120, 5), 3, true), Turns: []Turn{{}}}
	bar.Tilt = 2 // not enough to lie level
	at := 1 * math.Pi / 180
	assert.InDelta(t, 5*math.Cos(at)+120*math.Sin(at), bar.LeastExtent(1), 1e-9)
	bar.Tilt = 5
	assert.InDelta(t, 5, bar.LeastExtent(1), 1e-9)
	bar.Tilt = 100
	assert.InDelta(t, 5, bar.LeastExtent(0), 1e-9)
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

func BenchmarkCheck(b *testing.B) {
	p := Problem{Width: 1500}
	for range 500 {
		p.Items = append(p.Items, Item{Outline: wave(100, 200), Copies: 1, Turns: []Turn{{}, {Degrees: 180}}})
	}
	for b.Loop() {
		if err := p.Check(); err != nil {
			b.Fatal(err)
		}
	}
}
