package bound

import (
	"encoding/json"
	"fmt"
	"math"
	"math/rand/v2"
	"os"
	"testing"

	"ellwand/nest/layout"
	"ellwand/nest/verify"
	"ellwand/testdata/sample"

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

// Each case is worked out by hand. The area bound alone is given beside it.
func TestBoundByHand(t *testing.T) {
	quarters := []layout.Turn{{}, {Degrees: 90}}
	// An L: a foot of 60 x 10 and a wall of 10 x 60.
	ell := orb.Ring{{0, 0}, {60, 0}, {60, 10}, {10, 10}, {10, 60}, {0, 60}}
	tests := []struct {
		name string
		p    layout.Problem
		area float64
		want float64
	}{
		{"area", layout.Problem{Width: 100, Items: []layout.Item{item("a", oblong(0, 0, 20, 50), 4)}}, 40, 40},
		{"longest", layout.Problem{Width: 100, Items: []layout.Item{item("belt", oblong(0, 0, 300, 5), 1)}}, 15, 300},
		{"longest, turned", layout.Problem{Width: 200, Items: []layout.Item{item("belt", oblong(0, 0, 300, 5), 1, quarters...)}}, 7.5, 300},
		{"longest, may lie across", layout.Problem{Width: 300, Items: []layout.Item{item("belt", oblong(0, 0, 300, 5), 1, quarters...)}}, 5, 5},
		{"longest, tilted", layout.Problem{Width: 100, Items: []layout.Item{{Name: "belt", Outline: layout.Turned(oblong(0, 0, 90, 30), 10, false),
			Copies: 1, Turns: []layout.Turn{{Degrees: 90}}, Tilt: 10}}}, 27, 30},
		// 60 + 60 > 100: one behind the other.
		{"queue", layout.Problem{Width: 100, Items: []layout.Item{item("a", oblong(0, 0, 20, 60), 3), item("b", oblong(0, 0, 10, 51), 2)}}, 46.2, 80},
		// Two of 50 pass, and fill as much as one of 60.
		{"queue with halves", layout.Problem{Width: 100, Items: []layout.Item{item("a", oblong(0, 0, 20, 60), 1), item("b", oblong(0, 0, 20, 50), 2)}}, 32, 40},
		// Of 34, two lie side by side.
		{"thirds", layout.Problem{Width: 100, Items: []layout.Item{item("a", oblong(0, 0, 10, 34), 8)}}, 27.2, 40},
		// 70 leaves no room for 31, of which three lie side by side.
		{"70 and 31", layout.Problem{Width: 100, Items: []layout.Item{item("a", oblong(0, 0, 10, 70), 3), item("b", oblong(0, 0, 10, 31), 3)}}, 30.3, 40},
		// Triangles of height 80, base 20: at most one is over 50 high at any
		// x; each is so over 20 * 30 / 80 = 7.5.
		{"spires", layout.Problem{Width: 80, Items: []layout.Item{item("a", orb.Ring{{0, 0}, {20, 0}, {10, 80}}, 10)}}, 100, 100},
		{"spires, wider", layout.Problem{Width: 82, Items: []layout.Item{item("a", orb.Ring{{0, 0}, {20, 0}, {10, 80}}, 10)}}, 97.56, 97.56},
		// The walls (60 of 100) queue, each 10 long; the feet are 10 high.
		{"interlocking", layout.Problem{Width: 100, Items: []layout.Item{item("l", ell, 12)}}, 132, 132},
		// With a gap of 2, pieces of 49.5 no longer pass: 49.5 + 2 + 49.5 = 101.
		{"gap", layout.Problem{Width: 100, Gap: 2, Items: []layout.Item{item("a", oblong(0, 0, 20, 49.5), 2)}}, 19.8, 40},
		{"gap that is kept", layout.Problem{Width: 100, Gap: 1, Items: []layout.Item{item("a", oblong(0, 0, 20, 49.5), 2)}}, 19.8, 20},
		// Ten triangles on the fold, 20 along it each.
		{"pinned low", layout.Problem{Width: 100, Items: []layout.Item{item("a", orb.Ring{{0, 0}, {20, 0}, {10, 10}}, 10, layout.Turn{Pin: layout.PinLow})}}, 10, 200},
		{"pinned to either edge", layout.Problem{Width: 100, Items: []layout.Item{item("a", oblong(0, 0, 20, 10), 10, layout.Turn{Pin: layout.PinLow}, layout.Turn{Pin: layout.PinHigh})}}, 20, 100},
		{"pinned, or not", layout.Problem{Width: 100, Items: []layout.Item{item("a", oblong(0, 0, 20, 10), 10, layout.Turn{Pin: layout.PinLow}, layout.Turn{})}}, 20, 20},
		// 3 of 20 with 2 gaps of 5.
		{"pinned with gaps", layout.Problem{Width: 100, Gap: 5, Items: []layout.Item{item("a", oblong(0, 0, 20, 10), 3, layout.Turn{Pin: layout.PinLow})}}, 6, 70},
		// On the line y = 45, both are 30 long.
		{"pinned from both sides", layout.Problem{Width: 100, Items: []layout.Item{
			item("a", oblong(0, 0, 30, 60), 1, layout.Turn{Pin: layout.PinLow}), item("b", oblong(0, 0, 30, 60), 1, layout.Turn{Pin: layout.PinHigh})}}, 36, 60},
		// A flaw over the whole width of 7 delays everything by 7.
		{"zone", layout.Problem{Width: 100, Zones: []orb.Ring{oblong(5, 0, 7, 100)}, Items: []layout.Item{item("a", oblong(0, 0, 20, 50), 4)}}, 40, 47},
		// Pieces may touch a zone whatever the gap: 40 + 20 + 40 fill the width.
		{"zone between, with a gap", layout.Problem{Width: 100, Gap: 10, Zones: []orb.Ring{oblong(0, 40, 20, 20)}, Items: []layout.Item{item("a", oblong(0, 0, 20, 40), 2)}}, 16, 20},
		{"zone that lies behind", layout.Problem{Width: 100, Zones: []orb.Ring{oblong(40, 0, 7, 100)}, Items: []layout.Item{item("a", oblong(0, 0, 20, 50), 4)}}, 40, 40},
		// On a lattice of 50 from 20, a piece whose corner is its reference point
		// begins at 20 at the earliest; one that reaches 30 before it, at 40.
		{"lattice", layout.Problem{Width: 100, Items: []layout.Item{{Name: "a", Outline: oblong(0, 0, 30, 40), Copies: 1, Turns: []layout.Turn{{OffsetX: 20}}, PeriodX: 50}}}, 12, 50},
		{"lattice, reaching before", layout.Problem{Width: 100, Items: []layout.Item{{Name: "a", Outline: oblong(-30, 0, 60, 40), Copies: 1, Turns: []layout.Turn{{OffsetX: 20}}, PeriodX: 50}}}, 24, 100},
		{"lattice, the nearer turn", layout.Problem{Width: 100, Items: []layout.Item{{Name: "a", Outline: oblong(0, 0, 30, 40), Copies: 1, Turns: []layout.Turn{{OffsetX: 20}, {OffsetX: 55, Mirrored: true}}, PeriodX: 50}}}, 12, 50},
		// On a lattice of 50, pieces of 30 that cannot pass each other begin at 0,
		// 50 and 100; one of another place of the repeat, between two of them.
		{"queue on a lattice", layout.Problem{Width: 100, Items: []layout.Item{{Name: "a", Outline: oblong(0, 0, 30, 60), Copies: 3, Turns: []layout.Turn{{}}, PeriodX: 50}}}, 54, 130},
		{"queue on a lattice, with a gap", layout.Problem{Width: 100, Gap: 21, Items: []layout.Item{{Name: "a", Outline: oblong(0, 0, 30, 60), Copies: 2, Turns: []layout.Turn{{}}, PeriodX: 50}}}, 36, 130},
		{"queue of two kinds", layout.Problem{Width: 100, Items: []layout.Item{
			{Name: "a", Outline: oblong(0, 0, 30, 60), Copies: 2, Turns: []layout.Turn{{}}, PeriodX: 50},
			{Name: "b", Outline: oblong(0, 0, 20, 60), Copies: 1, Turns: []layout.Turn{{OffsetX: 30}}, PeriodX: 50}}}, 48, 80},
		{"queue on the fold", layout.Problem{Width: 100, Items: []layout.Item{{Name: "a", Outline: oblong(0, 0, 30, 10), Copies: 3, Turns: []layout.Turn{{Pin: layout.PinLow}}, PeriodX: 50}}}, 9, 130},
		// Across, side by side, they would take 0 to 30 and 50 to 80, so that they
		// lie one behind the other: 80 long, less what four halvings of 5 leave.
		{"queue across", layout.Problem{Width: 79, Items: []layout.Item{{Name: "a", Outline: oblong(0, 0, 40, 30), Copies: 2, Turns: []layout.Turn{{}}, PeriodY: 50}}}, 2400.0 / 79, 79.6875},
		{"zone, half", layout.Problem{Width: 100, Zones: []orb.Ring{oblong(5, 0, 7, 51)}, Items: []layout.Item{item("a", oblong(0, 0, 20, 50), 4)}}, 40, 47},
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
	p := layout.Problem{Width: 100, Items: []layout.Item{item("cuff", square(10), 1)}}
	p.Sheets = []orb.Polygon{{square(50)}}
	assert.Zero(t, Length(p))
}

// jigsaw cuts a rectangle into a grid, straight or with its inner corners
// moved, so that an optimal layout is known. Pieces on the low and the high
// edge may be pinned to it, and further turns are allowed.
func jigsaw(rng *rand.Rand, width, length float64, cuts int) layout.Problem {
	p := layout.Problem{Width: width}
	columns, rows := 1+rng.IntN(cuts), 1+rng.IntN(cuts)
	xs, ys := ascending(rng, columns, length), ascending(rng, rows, width)
	wobble := []float64{0, 0.3}[rng.IntN(2)]
	at := func(i, j int) orb.Point {
		q := orb.Point{xs[i], ys[j]}
		local := rand.New(rand.NewPCG(uint64(i*100+j), uint64(length)))
		if i > 0 && i < columns {
			q[0] += wobble * (local.Float64() - 0.5) * min(xs[i+1]-xs[i], xs[i]-xs[i-1])
		}
		if j > 0 && j < rows {
			q[1] += wobble * (local.Float64() - 0.5) * min(ys[j+1]-ys[j], ys[j]-ys[j-1])
		}
		return q
	}
	for i := range columns {
		for j := range rows {
			ring := orb.Ring{at(i, j), at(i+1, j), at(i+1, j+1), at(i, j+1)}
			turns := []layout.Turn{{}}
			if rng.IntN(2) == 0 {
				turns = append(turns, layout.Turn{Degrees: 360 * rng.Float64()}, layout.Turn{Degrees: 90, Mirrored: true})
			}
			if rng.IntN(2) == 0 {
				for k := range turns {
					switch {
					case j == 0:
						turns[k].Pin = layout.PinLow
					case j == rows-1:
						turns[k].Pin = layout.PinHigh
					}
				}
			}
			p.Items = append(p.Items, layout.Item{Name: fmt.Sprint(i, j), Outline: ring, Copies: 1, Turns: turns})
		}
	}
	return p
}

func ascending(rng *rand.Rand, n int, end float64) []float64 {
	list := []float64{0}
	for range n {
		list = append(list, list[len(list)-1]+0.2+rng.Float64())
	}
	for i := range list {
		list[i] *= end / list[n]
	}
	list[n] = end
	return list
}

func TestBoundNeverAboveTheOptimumOfJigsaws(t *testing.T) {
	rng := rand.New(rand.NewPCG(1, 3))
	tight, cases := 0, sample.Of(250, 1500)
	for n := range cases {
		width, length := 50+100*rng.Float64(), 50+100*rng.Float64()
		p := jigsaw(rng, width, length, 6)
		l := layout.Layout{Length: length}
		for i := range p.Items {
			l.Placements = append(l.Placements, layout.Placement{Item: i})
		}
		require.NoError(t, verify.Layout(p, l), "case %d: the jigsaw itself", n)
		bound := Length(p)
		require.LessOrEqual(t, bound, length*(1+1e-6), "case %d", n)
		if bound > length*(1-1e-6) {
			tight++
		}
		// On any lattice on which it is laid already, the jigsaw is as long.
		require.LessOrEqual(t, Length(onLattice(p, rng)), length*(1+1e-6), "case %d, on a lattice", n)
		// With every piece grown smaller, the optimum is no longer; with a
		// gap that the shrinking leaves, neither.
		shrunk := shrink(p, 0.9)
		require.LessOrEqual(t, Length(shrunk), length*(1+1e-6), "case %d, shrunk", n)
	}
	require.Greater(t, tight, cases/3)
}

// The best layouts ever published have these densities (Gardeyn, Vanden
// Berghe, Wauters, arXiv 2509.13329, 2025, tables 2 and 3), in per cent: no
// bound may be above their lengths. 0.005 is what the figures are rounded to.
func TestBoundBelowPublishedLayouts(t *testing.T) {
	for name, density := range map[string]float64{"albano": 89.82, "shirts": 90.92, "swim": 79.83, "trousers": 92.62} {
		t.Run(name, func(t *testing.T) {
			p, area := publishedInstance(t, "../../../shared/bench/"+name+".json")
			bound := Length(p)
			assert.LessOrEqual(t, bound, area/p.Width/(density-0.005)*100)
			assert.GreaterOrEqual(t, bound, area/p.Width*(1-1e-9))
			t.Logf("bound %.6g, %.2f %% of it area", bound, 100*area/p.Width/bound)
		})
	}
}

// publishedInstance reads an instance of the open collection.
func publishedInstance(t *testing.T, path string) (layout.Problem, float64) {
	data, err := os.ReadFile(path)
	if err != nil {
		t.Skipf("the open data are not here: %v", err)
	}
	var file struct {
		Items []struct {
			Demand              int
			AllowedOrientations []float64
			Shape               struct{ Data orb.Ring }
		}
		Strip struct{ Height float64 }
	}
	require.NoError(t, json.Unmarshal(data, &file))
	p, area := layout.Problem{Width: file.Strip.Height}, 0.0
	for _, it := range file.Items {
		laid := layout.Item{Outline: it.Shape.Data, Copies: it.Demand}
		for _, degrees := range it.AllowedOrientations {
			laid.Turns = append(laid.Turns, layout.Turn{Degrees: degrees})
		}
		p.Items = append(p.Items, laid)
		area += float64(it.Demand) * layout.Area(layout.Corners(laid.Outline))
	}
	return p, area
}

// shrink makes every outline smaller about its first corner, and takes its
// pins away.
func shrink(p layout.Problem, by float64) layout.Problem {
	items := make([]layout.Item, len(p.Items))
	for i, it := range p.Items {
		first := it.Outline[0]
		ring := make(orb.Ring, len(it.Outline))
		for j, q := range it.Outline {
			ring[j] = orb.Point{first[0] + by*(q[0]-first[0]), first[1] + by*(q[1]-first[1])}
		}
		it.Outline, it.Turns = ring, []layout.Turn{{}}
		items[i] = it
	}
	p.Items = items
	return p
}

// Layouts with gaps: boxes in random columns, a gap between any two.
func TestBoundNeverAboveLayoutsWithGaps(t *testing.T) {
	rng := rand.New(rand.NewPCG(8, 3))
	for n := range 1000 {
		p := layout.Problem{Width: 100, Gap: 5 * rng.Float64()}
		if n%3 == 0 {
			p.Gap = 0
		}
		var l layout.Layout
		x := 0.0
		for range 1 + rng.IntN(6) {
			y, widest := 0.0, 0.0
			for {
				wide, high := 5+20*rng.Float64(), 5+60*rng.Float64()
				if rng.IntN(2) == 0 {
					high = 100 / float64(1+rng.IntN(4))
				}
				if y+high > 100 {
					break
				}
				ring := oblong(0, 0, wide, high)
				if rng.IntN(3) == 0 { // with a slot from the right
					ring = orb.Ring{{0, 0}, {wide, 0}, {wide, high * 0.4}, {wide / 2, high * 0.4}, {wide / 2, high * 0.43}, {wide, high * 0.43}, {wide, high}, {0, high}}
				}
				if rng.IntN(6) == 0 { // a flaw instead of a piece
					// Pieces may touch it: no gap before or after.
					y = max(0, y-p.Gap)
					p.Zones = append(p.Zones, moveRing(oblong(0, 0, wide, high), x, y))
					y -= p.Gap
				} else {
					p.Items = append(p.Items, item("box", ring, 1))
					l.Placements = append(l.Placements, layout.Placement{Item: len(p.Items) - 1, X: x, Y: y})
				}
				y += high + p.Gap
				widest = max(widest, wide)
			}
			x += widest + p.Gap
		}
		if len(p.Items) == 0 {
			continue
		}
		l.Length = lengthOf(p, l)
		require.NoError(t, verify.Layout(p, l), "case %d", n)
		require.LessOrEqual(t, Length(p), l.Length*(1+1e-6), "case %d", n)
		p.Length = l.Length
		require.Empty(t, Misfit(p), "case %d", n)
	}
}

func TestMisfit(t *testing.T) {
	tests := []struct {
		name string
		p    layout.Problem
		want string
	}{
		{"open strip", layout.Problem{Width: 10, Items: []layout.Item{item("a", oblong(0, 0, 99, 10), 9)}}, ""},
		{"no proof", layout.Problem{Width: 10, Length: 10, Items: []layout.Item{item("a", square(5), 4)}}, ""},
		{"too long", layout.Problem{Width: 10, Length: 10, Items: []layout.Item{item("belt", oblong(0, 0, 12, 1), 1)}},
			"belt is too large in every turn that is allowed: at least 12 along and 1 across"},
		{"too long one way, too wide the other", layout.Problem{Width: 10, Length: 15, Items: []layout.Item{item("a", oblong(0, 0, 16, 9), 1, layout.Turn{}, layout.Turn{Degrees: 90})}},
			"a is too large in every turn that is allowed: at least 9 along and 9 across"},
		{"area", layout.Problem{Width: 10, Length: 10, Items: []layout.Item{item("a", square(5), 5)}},
			"the pieces have 25.00 % more area than there is to lay them on"},
		{"queue along", layout.Problem{Width: 10, Length: 10, Items: []layout.Item{item("a", oblong(0, 0, 4, 6), 3)}},
			"the pieces cannot be laid shorter than 12 on this width, and the sheet is 10 long"},
		{"queue across", layout.Problem{Width: 10, Length: 10, Items: []layout.Item{item("a", oblong(0, 0, 6, 4), 3)}},
			"the pieces cannot be laid narrower than 12 on this length, and the sheet is 10 wide"},
		{"two sheets, area", layout.Problem{Sheets: []orb.Polygon{{square(5)}, {square(10), oblong(2, 2, 5, 5)}}, Items: []layout.Item{item("a", square(5), 5)}},
			"the pieces have 25.00 % more area than there is to lay them on"},
		{"two sheets, too large for both", layout.Problem{Sheets: []orb.Polygon{{oblong(0, 0, 20, 5)}, {oblong(0, 0, 5, 20)}}, Items: []layout.Item{item("a", square(6), 1)}},
			"a is too large in every turn"},
		{"one sheet, by its box", layout.Problem{Sheets: []orb.Polygon{{oblong(40, 40, 10, 10)}}, Items: []layout.Item{item("a", oblong(0, 0, 4, 6), 3)}},
			"the pieces cannot be laid shorter than 12 on this width"},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			got := Misfit(test.p)
			if test.want == "" {
				require.Empty(t, got)
				return
			}
			require.Contains(t, got, test.want)
		})
	}
}

func BenchmarkBound(b *testing.B) {
	for _, items := range []int{12, 50, 500} {
		p := layout.Problem{Width: 1500}
		for i := range items {
			p.Items = append(p.Items, item("leaf", wave(100, 100+float64(i%40)*10), 2, layout.Turn{}, layout.Turn{Degrees: 180}, layout.Turn{Mirrored: true}))
		}
		b.Run(fmt.Sprintf("items=%d", items), func(b *testing.B) {
			for b.Loop() {
				if bound := Length(p); math.IsNaN(bound) || bound <= 0 {
					b.Fatal("no bound")
				}
			}
		})
	}
}
