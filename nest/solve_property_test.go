package nest

import (
	"context"
	"math"
	"testing"

	"ellwand/nest/bound"
	"ellwand/nest/layout"
	"ellwand/nest/verify"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// drawOutline is a rectangle, an L, a triangle or a star-shaped blob of up to
// 40 by 40.
func drawOutline(t *rapid.T) orb.Ring {
	x, y := rapid.Float64Range(2, 40).Draw(t, "x"), rapid.Float64Range(2, 40).Draw(t, "y")
	switch rapid.IntRange(0, 3).Draw(t, "kind") {
	case 0:
		return rect(x, y)
	case 1:
		return orb.Ring{{0, 0}, {x, 0}, {x, y / 2}, {x / 3, y / 2}, {x / 3, y}, {0, y}}
	case 2:
		return orb.Ring{{0, 0}, {x, y / 4}, {x / 2, y}}
	}
	n := rapid.IntRange(5, 30).Draw(t, "corners")
	var ring orb.Ring
	for i := range n {
		r := 0.5 * rapid.Float64Range(0.4, 1).Draw(t, "radius")
		sin, cos := math.Sincos(2 * math.Pi * float64(i) / float64(n))
		ring = append(ring, orb.Point{x * r * cos, y * r * sin})
	}
	return ring
}

func drawTurns(t *rapid.T) []layout.Turn {
	all := []layout.Turn{
		{Degrees: 0}, {Degrees: 180, Direction: 1}, {Degrees: 0, Mirrored: true},
		{
			Degrees:   180,
			Mirrored:  true,
			Direction: 1,
		}, {Degrees: 90}, {Degrees: 45}, {Degrees: 270, Mirrored: true, Direction: 1},
	}
	turns := all[:rapid.IntRange(1, len(all)).Draw(t, "turns")]
	turns = append([]layout.Turn(nil), turns...)
	if rapid.IntRange(0, 3).Draw(t, "pinned") == 0 {
		for i := range turns {
			turns[i].Pin = layout.Pin(rapid.IntRange(0, 2).Draw(t, "pin"))
		}
	}
	return turns
}

func drawItem(t *rapid.T) layout.Item {
	item := layout.Item{
		Name:    "piece",
		Outline: drawOutline(t),
		Copies:  rapid.IntRange(1, 3).Draw(t, "copies"),
		Turns:   drawTurns(t),
	}
	switch rapid.IntRange(0, 5).Draw(t, "rule") {
	case 0:
		item.Group = rapid.IntRange(1, 2).Draw(t, "group")
	case 1:
		item.PeriodX = rapid.Float64Range(3, 20).Draw(t, "period")
		item.Turns[0].OffsetX = rapid.Float64Range(0, 20).Draw(t, "offset")
	case 2:
		if item.Turns[0].Pin == layout.PinNone {
			item.PeriodY = rapid.Float64Range(3, 12).Draw(t, "period")
			item.Turns = item.Turns[:1]
		}
	case 3:
		item.Tilt = rapid.Float64Range(0, 3).Draw(t, "tilt")
	}
	return item
}

func drawProblem(t *rapid.T) layout.Problem {
	p := layout.Problem{Width: rapid.Float64Range(70, 120).Draw(t, "width")}
	for range rapid.IntRange(1, 6).Draw(t, "items") {
		p.Items = append(p.Items, drawItem(t))
	}
	if rapid.IntRange(0, 2).Draw(t, "gapped") == 0 {
		p.Gap = rapid.Float64Range(0, 5).Draw(t, "gap")
	}
	for range rapid.IntRange(0, 2).Draw(t, "zones") {
		x, y := rapid.Float64Range(0, 100).Draw(t, "zone x"), rapid.Float64Range(0, 60).Draw(t, "zone y")
		p.Zones = append(p.Zones, orb.Ring{{x, y}, {x + 9, y + 2}, {x + 4, y + 8}})
	}
	return p
}

// Any valid problem gives a layout that verifies, no shorter than the bound,
// the same whatever the number of workers.
func TestAnyProblemIsLaid(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawProblem(t)
		if p.Check() != nil {
			t.Skip("not a valid problem")
		}
		one, err := Solve(context.Background(), p, Options{Passes: 12, Seed: 1, Workers: 1})
		require.NoError(t, err)
		require.True(t, one.Fits)
		require.NoError(t, verify.Layout(p, one.Layout))
		require.GreaterOrEqual(t, one.Layout.Length, bound.Length(p)*(1-1e-9))
		two, err := Solve(context.Background(), p, Options{Passes: 12, Seed: 1, Workers: 2})
		require.NoError(t, err)
		require.Equal(t, one.Layout, two.Layout)
	})
}

// What was laid on a strip fits on a sheet of that length when it is the
// start, with any of its pieces locked; and a sheet cut into two with a hole
// gives either a layout that verifies or the pieces that are out.
func TestFitFromAStart(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawProblem(t)
		if p.Check() != nil {
			t.Skip("not a valid problem")
		}
		strip, err := Solve(context.Background(), p, Options{Passes: 8, Seed: 2})
		require.NoError(t, err)
		p.Length = strip.Layout.Length
		locked := make([]bool, len(strip.Layout.Placements))
		for i := range locked {
			locked[i] = rapid.Bool().Draw(t, "locked")
		}
		fit, err := Solve(context.Background(), p, Options{Passes: 3, Start: &strip.Layout, Locked: locked})
		require.NoError(t, err)
		require.True(t, fit.Fits)
		require.NoError(t, verify.Layout(p, fit.Layout))
		for i, at := range strip.Layout.Placements {
			if locked[i] {
				require.Contains(t, fit.Layout.Placements, at)
			}
		}
	})
}

func TestSheetsWithHoles(t *testing.T) {
	sheet := orb.Polygon{
		{{0, 0}, {100, 0}, {100, 60}, {60, 60}, {60, 100}, {0, 100}, {0, 0}},
		{{40, 40}, {40, 50}, {50, 50}, {50, 40}, {40, 40}},
	}
	p := layout.Problem{Sheets: []orb.Polygon{sheet, {rect(50, 40)}}}
	for range 3 {
		p.Items = append(p.Items, layout.Item{Outline: rect(38, 38), Copies: 1, Turns: bothWays})
	}
	p.Items = append(p.Items, layout.Item{Outline: rect(50, 40), Copies: 1, Turns: []layout.Turn{{Degrees: 90}, {}}})
	got, err := Solve(context.Background(), p, Options{Passes: 400, Seed: 1})
	require.NoError(t, err)
	require.True(t, got.Fits)
	require.NoError(t, verify.Layout(p, got.Layout))
}

// The least bad layout names what is out and by how much: two squares of 10
// on a sheet of 10 by 19 overlap by 1.
func TestWhatDoesNotFitIsNamed(t *testing.T) {
	p := layout.Problem{Width: 10, Length: 19, Items: []layout.Item{{Outline: rect(10, 10), Copies: 2, Turns: bothWays}}}
	got, err := Solve(context.Background(), p, Options{Passes: 50})
	require.NoError(t, err)
	require.False(t, got.Fits)
	require.Len(t, got.Out, 2)
	require.InDelta(t, 1, got.Out[0].Depth, 0.1)
}

func TestContextStopsEarlyWithALayout(t *testing.T) {
	ctx, cancel := context.WithCancel(context.Background())
	cancel()
	p := layout.Problem{
		Width: 30,
		Items: []layout.Item{{Outline: orb.Ring{{0, 0}, {9, 1}, {5, 7}}, Copies: 20, Turns: bothWays}},
	}
	got, err := Solve(ctx, p, Options{})
	require.NoError(t, err)
	require.NoError(t, verify.Layout(p, got.Layout))
}
