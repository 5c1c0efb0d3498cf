package plan_test

import (
	"context"
	"fmt"
	"math"
	"slices"
	"sync/atomic"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/fabric/cloth"
	"ellwand/fabric/internal/fabrictest"
	"ellwand/fabric/lay"
	"ellwand/fabric/plan"
	"ellwand/pieces"
)

// TestTogetherNeverTakesMoreThanInSuccession: several garments laid together,
// however short the search, take no more than one behind the other, each of
// which by itself is a jigsaw of known length.
func TestTogetherNeverTakesMoreThanInSuccession(t *testing.T) {
	c := cloth.Cloth{Width: 1220, Selvedge: 10}
	var all []pieces.Piece
	for i := range 12 {
		all = append(all, fabrictest.InGarment(fmt.Sprintf("dress %d", i+1),
			fabrictest.Rectangle("front", 700, 400, 1), fabrictest.Rectangle("back", 500, 300, 1),
			fabrictest.Rectangle("yoke", 500, 100, 1))...)
	}
	got, err := plan.Require(t.Context(), c, all, plan.Options{Passes: 1, Lays: []lay.Kind{lay.Open}})
	require.NoError(t, err)
	assert.LessOrEqual(t, got.Lays[0].Taken, 12*400+0.01)

	// With a gap there is one between the garments too, and not before the first.
	c.Gap = 2
	for i := range all {
		all[i] = fabrictest.InGarment(fmt.Sprintf("scarf %d", i+1), fabrictest.Rectangle("scarf", 1198, 398, 1))[0]
	}
	got, err = plan.Require(t.Context(), c, all, plan.Options{Passes: 40, Lays: []lay.Kind{lay.Open}})
	require.NoError(t, err)
	assert.LessOrEqual(t, got.Lays[0].Taken, 36*398+35*2+0.01)
}

// TestBehindNeverTakesMoreThanTheSum: garments laid together, however short the
// search, take no more than each laid alone with care, one behind the other,
// when they start from there. Open and folded.
func TestBehindNeverTakesMoreThanTheSum(t *testing.T) {
	c := cloth.Cloth{Width: 1020, Selvedge: 10, Nap: cloth.OneWay}
	halves := func(garment string) []pieces.Piece { // they share a slanted edge
		return fabrictest.InGarment(garment,
			fabrictest.Pair(fabrictest.Polygon("left", orb.Point{0, 0}, orb.Point{300, 0}, orb.Point{200, 400},
				orb.Point{0, 400})),
			fabrictest.Pair(fabrictest.Polygon("right", orb.Point{100, 0}, orb.Point{300, 0}, orb.Point{300, 400},
				orb.Point{0, 400})))
	}
	var all []pieces.Piece
	var alone []plan.Requirement
	var names []string
	for i := range 6 {
		names = append(names, fmt.Sprintf("skirt %d", i+1))
		got, err := plan.Require(t.Context(), c, halves("skirt"),
			plan.Options{Passes: 1500, Seed: uint64(i), Lays: fabrictest.TwoLays})
		require.NoError(t, err)
		alone, all = append(alone, got), append(all, halves(names[i])...)
	}
	for _, kind := range fabrictest.TwoLays {
		p, ok := plan.Behind(kind, alone, names)
		require.True(t, ok)
		var sum float64
		for _, one := range alone {
			sum += one.Lays[slices.Index(fabrictest.TwoLays, kind)].Length
		}
		got, err := plan.Require(t.Context(), c, all, plan.Options{Passes: 1, Lays: []lay.Kind{kind},
			WarmStarts: []lay.Plan{p}})
		require.NoError(t, err)
		assert.LessOrEqual(t, got.Lays[0].Length, sum+0.01, kind.String())
	}
	_, ok := plan.Behind(lay.InStretches, alone, names)
	assert.False(t, ok, "a lay that none of them has")
}

// endsAfter is a context that ends when it was asked so often.
type endsAfter struct {
	context.Context
	left *atomic.Int64
}

func (e endsAfter) Err() error {
	if e.left.Add(-1) < 0 {
		return context.Canceled
	}
	return nil
}

// Wherever the search for many garments is ended, all of them are laid, soundly, with no
// more work than was asked for until then.
func TestManyGarmentsAreLaidWhenTheSearchEnds(t *testing.T) {
	c := cloth.Cloth{Width: 1220, Selvedge: 10, Gap: 3}
	var all []pieces.Piece
	for i := range 40 {
		all = append(all, fabrictest.InGarment(fmt.Sprintf("dress %d", i+1),
			fabrictest.Rectangle("front", 700, 400+float64(i), 1), fabrictest.Rectangle("back", 500, 300, 1))...)
	}
	least := math.Inf(1)
	for _, asked := range []int64{0, 1, 7, 40, 150} {
		left := new(atomic.Int64)
		left.Store(asked)
		got, err := plan.Require(endsAfter{t.Context(), left}, c, all,
			plan.Options{Passes: 1_000_000, Lays: []lay.Kind{lay.Open}})
		require.NoError(t, err)
		require.Len(t, got.Lays[0].Pieces, 80)
		assert.Less(t, got.Work.Done(), 0.01, "after %d questions", asked)
		least = min(least, got.Length)
	}
	assert.Less(t, least, 40*450.0*2, "columns are used")
}
