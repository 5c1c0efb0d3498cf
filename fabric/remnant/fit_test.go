package remnant_test

import (
	"context"
	"fmt"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"ellwand/fabric/cloth"
	"ellwand/fabric/internal/fabrictest"
	"ellwand/fabric/lay"
	"ellwand/fabric/plan"
	"ellwand/fabric/remnant"
	"ellwand/fabric/words"
	"ellwand/pieces"
	"ellwand/testdata/sample"
)

// fit asks a remnant of 1.22 m width, 1.20 m usable.
func fit(t *testing.T, length float64, options plan.Options, all ...pieces.Piece) remnant.Result {
	t.Helper()
	options.Seed = 1
	if options.Passes == 0 {
		options.Passes = 200
	}
	r := remnant.Remnant{Cloth: cloth.Cloth{Width: 1220, Selvedge: 10}, Length: length}
	got, err := remnant.Fit(context.Background(), r, all, options)
	require.NoError(t, err)
	return got
}

func TestRemnantIsEnough(t *testing.T) {
	// 700 x 500 beside 500 x 500 leaves a clean end of 100 over the width of
	// 1200: by hand.
	got := fit(t, 600, plan.Options{}, fabrictest.Rectangle("a", 700, 500, 1), fabrictest.Rectangle("b", 500, 500, 1))
	require.Equal(t, remnant.Enough, got.Answer)
	assert.Equal(t, lay.Open, got.Plan.Lay, "single pieces cannot be cut from two plies")
	assert.Equal(t, []remnant.LayReason{{Lay: lay.FoldedAlong, Why: got.Reasons[0].Why}}, got.Reasons)
	assert.InDelta(t, 100, got.Spare.CleanEnd, 0.01)
	assert.InDelta(t, 1200*100, got.Spare.Length*got.Spare.Width, 2*1300)
	assert.Equal(t, 600.0, got.Plan.Buy)

	// A pair and a fold piece come from the folded cloth, which is less work.
	got = fit(t, 700, plan.Options{}, fabrictest.Half("back", 300, 700, 1), fabrictest.Rectangle("side", 300, 700, 2))
	require.Equal(t, remnant.Enough, got.Answer)
	assert.Equal(t, lay.FoldedAlong, got.Plan.Lay)
	assert.InDelta(t, 0, got.Spare.CleanEnd, 0.01)
}

func TestRemnantIsTooLittle(t *testing.T) {
	for _, c := range []struct {
		name   string
		length float64
		lays   []lay.Kind
		all    []pieces.Piece
		proof  string
	}{
		{"too long a piece", 490, nil, []pieces.Piece{fabrictest.Rectangle("panel", 100, 500, 1)},
			"panel is 50 cm long in every way its grain allows, and there are only 49 cm of cloth"},
		{"area", 490, nil, []pieces.Piece{fabrictest.Rectangle("a", 320, 490, 5)},
			"the pieces cover 0.78 m2 with their allowances, and there are only 0.59 m2 of usable cloth"},
		// Three pieces wider than half the cloth: 3 x 300 = 900.
		{"side by side", 890, nil, []pieces.Piece{fabrictest.Rectangle("a", 610, 300, 3),
			fabrictest.Rectangle("small", 50, 50, 1)},
			"a (3) cannot lie side by side closely enough: however they are laid they take at least 90 cm of length, and " +
				"there are 89 cm"},
		{"too wide", 2000, nil, []pieces.Piece{fabrictest.Rectangle("cape", 1300, 300, 1)},
			"cape: it is 130 cm wide in the narrowest way"},
		{"folded", 600, []lay.Kind{lay.FoldedAlong}, []pieces.Piece{fabrictest.Rectangle("cape", 700, 500, 1)},
			"cape: a single piece cannot be cut from two plies"},
		// Two fold pieces queue along the fold, folded; 2 x 400.
		{"queue along the fold", 700, []lay.Kind{lay.FoldedAlong},
			[]pieces.Piece{fabrictest.Half("front", 200, 400, 1), fabrictest.Half("back", 200, 400, 1)},
			"they take at least 80 cm of length, and there are 70 cm"},
	} {
		t.Run(c.name, func(t *testing.T) {
			got := fit(t, c.length, plan.Options{Lays: c.lays}, c.all...)
			assert.Equal(t, remnant.TooLittle, got.Answer)
			assert.Contains(t, words.Reasons(cloth.Cloth{}, got.Proof), c.proof)
			assert.Empty(t, got.Plan.Pieces)
		})
	}
}

func TestRemnantClosestTry(t *testing.T) {
	// Three discs of 500 mm in a strip of 1200: two side by side and the third
	// in the gap between takes, by Pythagoras, 500 + sqrt(500^2 - 350^2) =
	// 857 mm. The area is no proof at 800 mm, nor is the width.
	disc := func(i int) pieces.Piece {
		var points []orb.Point
		flaw := cloth.RoundFlaw("", orb.Point{250, 250}, 250)
		points = append(points, flaw.Outline[:len(flaw.Outline)-1]...)
		return fabrictest.Polygon(fmt.Sprintf("disc %d", i), points...)
	}
	all := []pieces.Piece{disc(1), disc(2), disc(3)}
	got := fit(t, 800, plan.Options{Lays: []lay.Kind{lay.Open}, Passes: 100}, all...)
	require.Equal(t, remnant.NotFound, got.Answer)
	require.NotEmpty(t, got.Over)
	assert.InDelta(t, 57, got.Over[0].By, 10)
	assert.InDelta(t, 857, got.Plan.Taken, 10)
	assert.Empty(t, got.Proof)
	assert.Equal(t, remnant.Enough, fit(t, 870, plan.Options{Lays: []lay.Kind{lay.Open}}, all...).Answer)
}

func TestRemnantLosesItsEndsAndShrinks(t *testing.T) {
	// 1000 mm less 30 mm of straightening, less 4 %: 931.2 mm, by hand.
	r := remnant.Remnant{Length: 1000, Cloth: cloth.Cloth{Width: 1000, Selvedge: 10, Straighten: 30,
		Shrinkage: cloth.Shrinkage{Warp: 0.04}}}
	for length, want := range map[float64]remnant.Answer{931: remnant.Enough, 932: remnant.TooLittle} {
		got, err := remnant.Fit(context.Background(), r, []pieces.Piece{fabrictest.Rectangle("panel", 100, length, 2)},
			plan.Options{Passes: 100})
		require.NoError(t, err)
		assert.Equal(t, want, got.Answer, "%g", length)
		assert.InDelta(t, 931.2, got.Usable, 1e-9)
	}
	r.Length = 25
	got, err := remnant.Fit(context.Background(), r, []pieces.Piece{fabrictest.Rectangle("panel", 10, 10, 2)},
		plan.Options{})
	require.NoError(t, err)
	assert.Equal(t, remnant.TooLittle, got.Answer)
	r.Length = -1
	_, err = remnant.Fit(context.Background(), r, []pieces.Piece{fabrictest.Rectangle("panel", 10, 10, 2)}, plan.Options{})
	assert.ErrorContains(t, err, "a length of -0.1 cm is no cloth")
}

func TestRemnantSpareKeepsOffFlaws(t *testing.T) {
	c := cloth.Cloth{Width: 1000, Flaws: []cloth.Flaw{cloth.BandFlaw("faded edge", 600, 1000),
		cloth.RoundFlaw("stain", orb.Point{900, 300}, 50)}}
	got, err := remnant.Fit(context.Background(), remnant.Remnant{Cloth: c, Length: 1000},
		[]pieces.Piece{fabrictest.Rectangle("panel", 600, 400, 1)}, plan.Options{Passes: 100})
	require.NoError(t, err)
	require.Equal(t, remnant.Enough, got.Answer)
	// Between the panel (to 400) and the stain (from 850): 450 x 600, by hand.
	assert.InDelta(t, 450*600, got.Spare.Length*got.Spare.Width, 2*1050)
	assert.InDelta(t, 600, got.Spare.CleanEnd, 0.5)
}

// jigsaw cuts a cloth of known size into rectangles, so that it is known to
// be enough, and just enough.
func jigsaw(t *rapid.T, width, length float64) []pieces.Piece {
	type box struct{ w, h float64 }
	boxes := []box{{width, length}}
	for range rapid.IntRange(1, 6).Draw(t, "cuts") {
		largest := 0
		for i, b := range boxes {
			if b.w*b.h > boxes[largest].w*boxes[largest].h {
				largest = i
			}
		}
		b, share := boxes[largest], rapid.Float64Range(0.25, 0.75).Draw(t, "share")
		one, other := b, b
		if b.w > b.h {
			one.w = b.w * share
			other.w = b.w - one.w
		} else {
			one.h = b.h * share
			other.h = b.h - one.h
		}
		boxes[largest] = one
		boxes = append(boxes, other)
	}
	var all []pieces.Piece
	for i, b := range boxes {
		all = append(all, fabrictest.Rectangle(fmt.Sprintf("piece %d", i), b.w, b.h, 1))
	}
	return all
}

// TestRemnantJigsaws: a jigsaw is enough, and 3 % less never is; "cannot be"
// is never said of what fits.
func TestRemnantJigsaws(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		length := rapid.Float64Range(400, 1500).Draw(t, "length")
		all := jigsaw(t, 1200, length)
		c := cloth.Cloth{Width: 1220, Selvedge: 10, Nap: cloth.Nap(rapid.IntRange(0, 1).Draw(t, "nap"))}
		ask := func(length float64, passes int) remnant.Answer {
			got, err := remnant.Fit(context.Background(), remnant.Remnant{Cloth: c, Length: length}, all,
				plan.Options{Passes: passes, Seed: 3, Lays: []lay.Kind{lay.Open}})
			if err != nil {
				t.Fatal(err)
			}
			return got.Answer
		}
		if got := ask(length, 2000); got != remnant.Enough {
			t.Fatalf("a jigsaw of %d pieces: %s", len(all), got)
		}
		if got := ask(0.97*length, 30); got != remnant.TooLittle {
			t.Fatalf("3 %% less than the area: %s", got)
		}
	})
}

// TestRemnantOfWhatWasLaid asks, from nothing, for the length that a short
// search found before, and then for a length below the bound.
func TestRemnantOfWhatWasLaid(t *testing.T) {
	t.Parallel()
	for _, size := range []string{"8", "14", "20"}[:sample.Of(1, 3)] {
		all := fabrictest.DraftedBlouse(size)
		require.NotEmpty(t, all)
		c := cloth.Cloth{Width: 1400, Selvedge: 10}
		need, err := plan.Require(context.Background(), c, all, plan.Options{Passes: 10, Seed: 5, Lays: []lay.Kind{lay.Open}})
		require.NoError(t, err)
		got, err := remnant.Fit(context.Background(), remnant.Remnant{Cloth: c, Length: need.Length}, all,
			plan.Options{Passes: 400, Seed: 1})
		require.NoError(t, err)
		assert.Equal(t, remnant.Enough, got.Answer, "size %s", size)
		got, err = remnant.Fit(context.Background(), remnant.Remnant{Cloth: c, Length: 0.97 * need.Lays[0].Bound}, all,
			plan.Options{Passes: 40, Seed: 1})
		require.NoError(t, err)
		assert.Equal(t, remnant.TooLittle, got.Answer, "size %s", size)
	}
}
