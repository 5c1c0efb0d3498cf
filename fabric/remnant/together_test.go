package remnant_test

import (
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/fabric/cloth"
	"ellwand/fabric/internal/fabrictest"
	"ellwand/fabric/lay"
	"ellwand/fabric/plan"
	"ellwand/fabric/remnant"
	"ellwand/pieces"
)

func fitTogether(t *testing.T, offcuts []remnant.Offcut, all ...pieces.Piece) remnant.Result {
	t.Helper()
	r, err := remnant.Together(cloth.Cloth{Name: "tweed"}, offcuts)
	require.NoError(t, err)
	got, err := remnant.Fit(t.Context(), r, all, plan.Options{Passes: 200, Seed: 1, Lays: []lay.Kind{lay.Open}})
	require.NoError(t, err)
	return got
}

// TestOffcuts: two remnants take what neither takes alone, and no piece
// crosses from one to the other; an L takes two strips in its arms.
func TestOffcuts(t *testing.T) {
	two := []remnant.Offcut{{Length: 500, Width: 400}, {Length: 300, Width: 600}}
	got := fitTogether(t, two, fabrictest.Rectangle("long", 380, 480, 1), fabrictest.Rectangle("wide", 580, 280, 1))
	assert.Equal(t, remnant.Enough, got.Answer, got.Proof)
	got = fitTogether(t, two, fabrictest.Rectangle("too long", 380, 560, 1))
	assert.NotEqual(t, remnant.Enough, got.Answer, "600 mm lie on neither, though the row is 850 mm long")

	ell := []remnant.Offcut{{Outline: orb.Ring{{0, 0}, {800, 0}, {800, 300}, {300, 300}, {300, 900}, {0, 900}}}}
	got = fitTogether(t, ell, fabrictest.Rectangle("foot", 280, 780, 1),
		fabrictest.OnGrain(fabrictest.Rectangle("stem", 280, 580, 1), pieces.CrossGrain))
	assert.Equal(t, remnant.Enough, got.Answer, got.Proof)
	got = fitTogether(t, ell, fabrictest.Rectangle("square", 400, 400, 1))
	assert.NotEqual(t, remnant.Enough, got.Answer)
}

func TestOffcutsShrinkAndKeepTheirFlaws(t *testing.T) {
	goods := cloth.Cloth{Selvedge: 10, Straighten: 20, Shrinkage: cloth.Shrinkage{Warp: 0.05, Weft: 0.02}}
	r, err := remnant.Together(goods, []remnant.Offcut{
		{Length: 520, Width: 500, Flaws: []cloth.Flaw{cloth.RoundFlaw("hole", orb.Point{100, 100}, 5)}},
		{Length: 220, Width: 400}})
	require.NoError(t, err)
	assert.InDelta(t, 490, r.Cloth.Width, 1e-9)
	assert.InDelta(t, 475+50+190, r.Length, 1e-9)
	require.Len(t, r.Cloth.Flaws, 3, "the hole, the bar, and what the narrower one lacks")
	assert.InDelta(t, 95, r.Cloth.Flaws[0].Outline.Bound().Center()[0], 1e-9)
	assert.InDelta(t, 382, r.Cloth.Flaws[2].Outline.Bound().Min[1], 1e-6, "392 mm less its selvedge")
	assert.NoError(t, r.Cloth.Check())

	for name, c := range map[string]struct {
		offcuts []remnant.Offcut
		want    string
	}{
		"none":    {nil, "there is no remnant"},
		"no size": {[]remnant.Offcut{{Length: 100}}, "remnant 1 is 10 cm by 0 cm"},
		"bow tie": {[]remnant.Offcut{{Outline: orb.Ring{{0, 0}, {100, 100}, {100, 0}, {0, 100}}}},
			"encloses nothing or crosses itself"},
	} {
		_, err := remnant.Together(goods, c.offcuts)
		assert.ErrorContains(t, err, c.want, name)
	}
}

// Rectangles as wide as each other can be folded, whatever their lengths.
func TestMustLieOpen(t *testing.T) {
	ring := orb.Ring{{0, 0}, {500, 0}, {500, 900}, {0, 0}}
	for _, tt := range []struct {
		offcuts []remnant.Offcut
		want    bool
	}{
		{[]remnant.Offcut{{Length: 500, Width: 900}}, false},
		{[]remnant.Offcut{{Length: 500, Width: 900}, {Length: 700, Width: 900}}, false},
		{[]remnant.Offcut{{Length: 500, Width: 900}, {Length: 500, Width: 890}}, true},
		{[]remnant.Offcut{{Length: 500, Width: 900}, {Outline: ring}}, true},
	} {
		assert.Equal(t, tt.want, remnant.MustLieOpen(tt.offcuts), "%v", tt.offcuts)
	}
}

// Of a lay of 1000 mm that is folded across, 900 mm of cloth fewer are 450 of the lay.
func TestOverhangsWorstFirst(t *testing.T) {
	laid := func(name string, to float64) lay.Laid {
		return lay.Laid{Name: name, Outline: orb.Ring{{0, 0}, {to, 0}, {to, 100}, {0, 0}}}
	}
	all := lay.Plan{Lay: lay.FoldedAcross, Length: 1000, Taken: 2000, Pieces: []lay.Laid{laid("back", 700),
		laid("belt", 550), laid("front", 1000), laid("sleeve", 560)}}
	assert.Equal(t, []remnant.Overhang{{Name: "front", By: 450}, {Name: "back", By: 150}, {Name: "sleeve", By: 10}},
		remnant.Overhangs(all, 1100))
}
