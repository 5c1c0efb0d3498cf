package fabric_test

import (
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/fabric"
	"ellwand/fabric/cloth"
	"ellwand/pieces"
)

func fitTogether(t *testing.T, offcuts []fabric.Offcut, all ...pieces.Piece) fabric.RemnantFit {
	t.Helper()
	remnant, err := fabric.Together(cloth.Cloth{Name: "tweed"}, offcuts)
	require.NoError(t, err)
	got, err := fabric.Fit(t.Context(), remnant, all, fabric.Options{Iterations: 200, Seed: 1, Lays: []fabric.Lay{fabric.Open}})
	require.NoError(t, err)
	return got
}

// TestOffcuts: two remnants take what neither takes alone, and no piece
// crosses from one to the other; an L takes two strips in its arms.
func TestOffcuts(t *testing.T) {
	two := []fabric.Offcut{{Length: 500, Width: 400}, {Length: 300, Width: 600}}
	got := fitTogether(t, two, rectangle("long", 380, 480, 1), rectangle("wide", 580, 280, 1))
	assert.Equal(t, fabric.Enough, got.Answer, got.Proof)
	got = fitTogether(t, two, rectangle("too long", 380, 560, 1))
	assert.NotEqual(t, fabric.Enough, got.Answer, "600 mm lie on neither, though the row is 850 mm long")

	ell := []fabric.Offcut{{Outline: orb.Ring{{0, 0}, {800, 0}, {800, 300}, {300, 300}, {300, 900}, {0, 900}}}}
	got = fitTogether(t, ell, rectangle("foot", 280, 780, 1), onGrain(rectangle("stem", 280, 580, 1), pieces.CrossGrain))
	assert.Equal(t, fabric.Enough, got.Answer, got.Proof)
	got = fitTogether(t, ell, rectangle("square", 400, 400, 1))
	assert.NotEqual(t, fabric.Enough, got.Answer)
}

func TestOffcutsShrinkAndKeepTheirFlaws(t *testing.T) {
	goods := cloth.Cloth{Selvedge: 10, Straighten: 20, Shrinkage: cloth.Shrinkage{Warp: 0.05, Weft: 0.02}}
	remnant, err := fabric.Together(goods, []fabric.Offcut{
		{Length: 520, Width: 500, Flaws: []cloth.Flaw{cloth.RoundFlaw("hole", orb.Point{100, 100}, 5)}}, {Length: 220, Width: 400}})
	require.NoError(t, err)
	assert.InDelta(t, 490, remnant.Cloth.Width, 1e-9)
	assert.InDelta(t, 475+50+190, remnant.Length, 1e-9)
	require.Len(t, remnant.Cloth.Flaws, 3, "the hole, the bar, and what the narrower one lacks")
	assert.InDelta(t, 95, remnant.Cloth.Flaws[0].Outline.Bound().Center()[0], 1e-9)
	assert.InDelta(t, 382, remnant.Cloth.Flaws[2].Outline.Bound().Min[1], 1e-6, "392 mm less its selvedge")
	assert.NoError(t, remnant.Cloth.Check())

	for name, c := range map[string]struct {
		offcuts []fabric.Offcut
		want    string
	}{
		"none":    {nil, "there is no remnant"},
		"no size": {[]fabric.Offcut{{Length: 100}}, "remnant 1 is 10 cm by 0 cm"},
		"bow tie": {[]fabric.Offcut{{Outline: orb.Ring{{0, 0}, {100, 100}, {100, 0}, {0, 100}}}}, "encloses nothing or crosses itself"},
	} {
		_, err := fabric.Together(goods, c.offcuts)
		assert.ErrorContains(t, err, c.want, name)
	}
}
