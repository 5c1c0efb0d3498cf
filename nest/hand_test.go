package nest

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/nest/layout"
	"ellwand/nest/verify"
)

func slab(width, height float64) orb.Ring {
	return orb.Ring{{0, 0}, {width, 0}, {width, height}, {0, height}, {0, 0}}
}

// oneOf each outline, in one turn each.
func oneOf(width float64, rings ...orb.Ring) layout.Problem {
	p := layout.Problem{Width: width}
	for _, ring := range rings {
		p.Items = append(p.Items, layout.Item{Outline: ring, Copies: 1, Turns: []layout.Turn{{}}})
	}
	return p
}

func TestSlideIntoContact(t *testing.T) {
	p := oneOf(1000, slab(300, 400), slab(200, 100))
	hand, err := NewHand(p, 1, []layout.Placement{{Item: 0}}, nil)
	require.NoError(t, err)
	for name, test := range map[string]struct {
		x, y, wantX, wantY float64
		free               bool
	}{
		"far from all it stays":                 {600, 500, 600, 500, true},
		"near an edge it touches":               {304, 200, 300, 200, true},
		"over an edge it comes out":             {280, 200, 300, 200, true},
		"off the cloth it comes back":           {-20, 500, 0, 500, true},
		"near a corner it touches both ways":    {303, 4, 300, 0, true},
		"above the cloth it comes back":         {500, 970, 500, 900, true},
		"in the middle of another it is not":    {50, 150, 50, 150, false},
		"over a corner it takes the nearer way": {290, 380, 300, 380, true},
	} {
		t.Run(name, func(t *testing.T) {
			at, free := hand.Slide(layout.Placement{Item: 1, X: test.x, Y: test.y}, 60, 8)
			assert.Equal(t, test.free, free)
			assert.InDelta(t, test.wantX, at.X, 0.011)
			assert.InDelta(t, test.wantY, at.Y, 0.011)
		})
	}
}

// What has slid into its place verifies, wherever it was held; where it was free it goes
// no further than the snap, and otherwise no further than the reach.
func TestWhatSlidVerifies(t *testing.T) {
	rng := rand.New(rand.NewPCG(26, 1))
	wedge := orb.Ring{{0, 0}, {220, 40}, {150, 190}, {90, 60}, {-60, 150}, {0, 0}}
	p := oneOf(900, slab(300, 180), wedge, orb.Ring{{0, 0}, {260, 0}, {130, 240}, {0, 0}}, slab(90, 90))
	p.Gap = 2
	still := []layout.Placement{{Item: 0, X: 20, Y: 10}, {Item: 1, X: 400, Y: 300}, {Item: 2, X: 60, Y: 400}}
	hand, err := NewHand(p, 3, still, NewTables(900))
	require.NoError(t, err)
	slid := 0
	for range 2000 {
		held := layout.Placement{Item: 3, X: rng.Float64()*800 - 50, Y: rng.Float64()*1000 - 100}
		at, free := hand.Slide(held, 80, 10)
		if !free {
			continue
		}
		slid++
		all := layout.Layout{Placements: append([]layout.Placement{at}, still...)}
		for _, one := range all.Placements {
			all.Length = max(all.Length, p.Placed(one).Bound().Max[0])
		}
		require.NoError(t, verify.Layout(p, all), "held at %v", held)
		onCloth := math.Hypot(held.X-min(max(held.X, 0), 1e9), held.Y-min(max(held.Y, 0), 810))
		assert.LessOrEqual(t, math.Hypot(at.X-held.X, at.Y-held.Y), onCloth+80+0.1)
	}
	assert.Greater(t, slid, 1000)
}

// A piece on a fold stays on it, and one on a lattice on that.
func TestSlideKeepsPinAndLattice(t *testing.T) {
	p := oneOf(1000, slab(300, 400), slab(200, 100))
	p.Items[1].Turns[0].Pin = layout.PinLow
	hand, err := NewHand(p, 1, []layout.Placement{{Item: 0}}, nil)
	require.NoError(t, err)
	at, free := hand.Slide(layout.Placement{Item: 1, X: 250, Y: 70}, 80, 8)
	assert.True(t, free)
	assert.InDelta(t, 300, at.X, 0.011)
	assert.InDelta(t, 0, at.Y, 1e-9)
	p.Items[1].Turns[0] = layout.Turn{}
	p.Items[1].PeriodX = 70
	hand, err = NewHand(p, 1, []layout.Placement{{Item: 0}}, nil)
	require.NoError(t, err)
	at, free = hand.Slide(layout.Placement{Item: 1, X: 290, Y: 70}, 80, 8)
	assert.True(t, free)
	assert.InDelta(t, 0, math.Remainder(at.X, 70), 1e-6)
}

func BenchmarkSlide(b *testing.B) {
	rng := rand.New(rand.NewPCG(26, 2))
	var rings []orb.Ring
	var still []layout.Placement
	for i := range 150 {
		rings = append(rings, slab(60+40*rng.Float64(), 60+40*rng.Float64()))
		still = append(still, layout.Placement{Item: i, X: 110 * float64(i/9), Y: 110 * float64(i%9)})
	}
	p := oneOf(1000, append(rings, slab(70, 50))...)
	hand, err := NewHand(p, 150, still, NewTables(1000))
	require.NoError(b, err)
	places := make([]layout.Placement, 1000)
	for i := range places {
		places[i] = layout.Placement{Item: 150, X: 1700 * rng.Float64(), Y: 900 * rng.Float64()}
		hand.Slide(places[i], 60, 8)
	}
	i := 0
	for b.Loop() {
		hand.Slide(places[i%len(places)], 60, 8)
		i++
	}
}

// A rectangle looks alike face up and face down, with its origin at another corner: it is
// moved from where it lies, and what is laid round it keeps off it.
func TestSlideOfAPieceThatLooksAlikeMirrored(t *testing.T) {
	p := layout.Problem{Width: 500, Items: []layout.Item{{
		Outline: slab(300, 200), Copies: 2, Turns: []layout.Turn{{}, {Mirrored: true}},
	}}}
	hand, err := NewHand(p, 0, nil, nil)
	require.NoError(t, err)
	at, free := hand.Slide(layout.Placement{Turn: 1, X: 290, Y: 310}, 60, 6)
	require.True(t, free)
	assert.InDeltaSlice(t, []float64{300, 300}, []float64{at.X, at.Y}, 1e-6)

	start := &layout.Layout{Placements: []layout.Placement{{Turn: 1, X: 300, Y: 0}}}
	found, err := Solve(t.Context(), p, Options{Passes: 2, Start: start, Locked: []bool{true}})
	require.NoError(t, err)
	assert.InDelta(t, 300, found.Layout.Length, 1e-3)
}
