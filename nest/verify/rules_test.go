package verify

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/require"

	"ellwand/nest/layout"
)

// A placement means the same to the proof as to everyone else, although each
// computes it by itself.
func TestPlacedAgreesWithTheProblem(t *testing.T) {
	rng := rand.New(rand.NewPCG(2, 9))
	outline := orb.Ring{{0, 0}, {7, 1}, {3, 5}}
	for _, degrees := range []float64{0, 90, 180, 270, -90, 360, 450, -180, 45, 17.3, 360 * rng.Float64()} {
		for _, mirrored := range []bool{false, true} {
			for _, tilt := range []float64{0, 1.5, -90} {
				item := layout.Item{Outline: outline, Copies: 1, Turns: []layout.Turn{{}, {Degrees: degrees, Mirrored: mirrored}}}
				at := layout.Placement{Turn: 1, Tilt: tilt, X: 10 * rng.Float64(), Y: -3}
				want := layout.Problem{Items: []layout.Item{item}}.Placed(at)
				for i, q := range placed(item, at) {
					require.InDeltaSlice(t, want[i][:], q[:], 1e-12, "%g degrees, mirrored %t, tilt %g", degrees, mirrored, tilt)
				}
			}
		}
	}
	// Quarter turns are exact, so that what lies on an edge stays on it.
	right := layout.Item{Outline: outline, Turns: []layout.Turn{{Degrees: 90}, {Degrees: 180}, {Degrees: 270}}}
	require.Equal(t, orb.Ring{{0, 0}, {-1, 7}, {-5, 3}}, placed(right, layout.Placement{}))
	require.Equal(t, orb.Ring{{0, 0}, {-7, -1}, {-3, -5}}, placed(right, layout.Placement{Turn: 1}))
	require.Equal(t, orb.Ring{{0, 0}, {1, -7}, {5, -3}}, placed(right, layout.Placement{Turn: 2}))
}

// Each number of a placement must be one, in each way in which it may not be.
func TestPlacementsAreNumbers(t *testing.T) {
	p := layout.Problem{
		Width: 10,
		Items: []layout.Item{{Name: "tab", Outline: square(4), Copies: 1, Turns: []layout.Turn{{}}, Tilt: 1}},
	}
	for _, value := range []float64{math.NaN(), math.Inf(1), math.Inf(-1)} {
		for _, at := range []layout.Placement{{X: value}, {Y: value}, {Tilt: value}} {
			err := Layout(p, layout.Layout{Length: 4, Placements: []layout.Placement{at}})
			require.ErrorContains(t, err, "tab has no place: its position is not a number")
		}
	}
}

// The copies of a group share one direction, whichever of the items they are of,
// and whatever other groups do.
func TestGroupsOfSeveralItems(t *testing.T) {
	ways := []layout.Turn{{Direction: 3}, {Degrees: 180, Direction: 4}}
	item := func(name string, group int) layout.Item {
		return layout.Item{Name: name, Outline: square(4), Copies: 1, Turns: ways, Group: group}
	}
	p := layout.Problem{
		Width: 4,
		Items: []layout.Item{item("free", 0), item("front", 1), item("back", 1), item("hood", 2)},
	}
	lay := func(turns ...int) error {
		l := layout.Layout{Length: 16}
		for i, turn := range turns {
			at := layout.Placement{Item: i, Turn: turn, X: 4 * float64(i)}
			if turn == 1 {
				at.X, at.Y = at.X+4, 4
			}
			l.Placements = append(l.Placements, at)
		}
		return Layout(p, l)
	}
	for _, turns := range [][]int{{0, 1, 1, 0}, {1, 0, 0, 1}, {0, 0, 0, 0}, {1, 1, 1, 1}} {
		require.NoError(t, lay(turns...), "%v", turns)
	}
	require.ErrorContains(t, lay(0, 1, 0, 0), "back points the other way than front, and they must point the same way")
	require.ErrorContains(t, lay(1, 0, 1, 1), "back points the other way than front")
}

// A tilt may go as far as the item allows, either way, and no farther.
func TestTilt(t *testing.T) {
	p := layout.Problem{
		Width: 20,
		Items: []layout.Item{{Name: "tab", Outline: square(4), Copies: 1, Turns: []layout.Turn{{}}, Tilt: 2}},
	}
	for tilt, allowed := range map[float64]bool{2: true, -2: true, 1: true, 2.01: false, -2.01: false} {
		l := layout.Layout{Placements: []layout.Placement{{Tilt: tilt, X: 5, Y: 5}}}
		l.Length = lengthOf(p, l)
		if allowed {
			require.NoError(t, Layout(p, l), "%g", tilt)
		} else {
			require.ErrorContains(t, Layout(p, l), "tab is tilted by 2.01 degrees; 2 are allowed")
		}
	}
}

// On a sheet, pins hold to the sheet's own low and high edge.
func TestPinsOnSheets(t *testing.T) {
	tab := layout.Item{
		Name:    "tab",
		Outline: square(4),
		Copies:  1,
		Turns:   []layout.Turn{{Pin: layout.PinLow}, {Pin: layout.PinHigh}},
	}
	p := layout.Problem{Sheets: []orb.Polygon{{oblong(0, 0, 9, 9)}, {oblong(0, 0, 9, 14)}}, Items: []layout.Item{tab}}
	at := func(sheet, turn int, y float64) error {
		return Layout(p, layout.Layout{Placements: []layout.Placement{{Sheet: sheet, Turn: turn, Y: y}}})
	}
	require.NoError(t, at(0, 0, 0))
	require.NoError(t, at(0, 1, 5))
	require.NoError(t, at(1, 1, 10))
	require.ErrorContains(t, at(1, 1, 5), "tab must lie on its edge and is 5 away from it")
	require.ErrorContains(t, at(0, 0, 1), "tab must lie on its edge and is 1 away from it")
}

// What the depth alone would let pass, a thin band along a long contact, its area
// tells.
func TestThinBandsAreRefused(t *testing.T) {
	const long, thin = 1000, 0.01
	strip := func(name string) layout.Item {
		return layout.Item{Name: name, Outline: oblong(0, 0, long, thin), Copies: 1, Turns: []layout.Turn{{}}}
	}
	p := layout.Problem{Width: 1, Items: []layout.Item{strip("tape"), strip("ribbon")}}
	const band = 0.9e-7 // within the depth of 1e-7
	lay := func(y0, y1 float64) error {
		return Layout(p, layout.Layout{Length: long, Placements: []layout.Placement{{Y: y0}, {Item: 1, Y: y1}}})
	}
	require.NoError(t, lay(0, thin))
	require.ErrorContains(t, lay(0, thin-band), "tape and ribbon overlap with an area of 9e-05")
	require.ErrorContains(t, lay(-band, thin), "tape hangs over the edge with an area of 9e-05")
	p.Zones = []orb.Ring{oblong(0, 0.5, long, 0.1)}
	require.NoError(t, lay(0, 0.5-thin))
	require.ErrorContains(
		t,
		lay(0, 0.5-thin+band),
		"ribbon lies over zone 1, which may not be used, with an area of 9e-05",
	)
}

// Zones belong to the first sheet, pieces on different sheets do not meet, and
// a layout on sheets has no length.
func TestSheetsAreApart(t *testing.T) {
	tab := layout.Item{Name: "tab", Outline: square(4), Copies: 2, Turns: []layout.Turn{{}}}
	p := layout.Problem{
		Sheets: []orb.Polygon{{oblong(0, 0, 9, 9)}, {oblong(0, 0, 9, 9)}}, Items: []layout.Item{tab},
		Zones: []orb.Ring{oblong(5, 5, 2, 2)}, Gap: 1,
	}
	lay := func(length float64, placements ...layout.Placement) error {
		return Layout(p, layout.Layout{Length: length, Placements: placements})
	}
	require.NoError(t, lay(0, layout.Placement{}, layout.Placement{Copy: 1, Sheet: 1, X: 4, Y: 4}))
	require.ErrorContains(
		t,
		lay(0, layout.Placement{X: 4, Y: 4}, layout.Placement{Copy: 1, Sheet: 1}),
		"tab (copy 1) lies 1 over zone 1",
	)
	require.ErrorContains(
		t,
		lay(8, layout.Placement{}, layout.Placement{Copy: 1, Sheet: 1}),
		"says that it is 8 long; its pieces reach to 0",
	)
}

// A hole that lies wholly under a piece is found from the hole's side: no corner
// of the piece is outside the sheet.
func TestHoleUnderAPiece(t *testing.T) {
	tab := layout.Item{Name: "tab", Outline: square(8), Copies: 1, Turns: []layout.Turn{{}}}
	p := layout.Problem{Sheets: []orb.Polygon{{oblong(0, 0, 9, 9), oblong(2, 2, 1, 1)}}, Items: []layout.Item{tab}}
	err := Layout(p, layout.Layout{Placements: []layout.Placement{{}}})
	require.ErrorContains(t, err, "tab hangs over the edge by 3 at x 3, y ")
}
