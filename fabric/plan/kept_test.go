package plan_test

import (
	"math"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/fabric/cloth"
	"ellwand/fabric/internal/fabrictest"
	"ellwand/fabric/lay"
	"ellwand/fabric/plan"
)

func bareOf(all []lay.Plan) []lay.Plan {
	var out []lay.Plan
	for _, p := range all {
		out = append(out, plan.Bare(p))
	}
	return out
}

// Plans that are kept bare are laid again as they were, in every lay, with nothing
// searched; and what is no layout is as good as nothing kept.
func TestKeptPlansAreLaidAgain(t *testing.T) {
	c := cloth.Cloth{Width: 1020, Selvedge: 10}
	all := fabrictest.PlainBlouse(1)
	options := plan.Options{Passes: 20, Seed: 1}
	first, err := plan.Require(t.Context(), c, all, options)
	require.NoError(t, err)
	require.NotEmpty(t, first.Found)

	options.Kept, options.Searched = bareOf(first.Found), true
	again, err := plan.Require(t.Context(), c, all, options)
	require.NoError(t, err)
	assert.Equal(t, first.Found, again.Found)
	assert.Equal(t, first.Chosen, again.Chosen)
	assert.Zero(t, again.Work.Due, "nothing is searched")

	for name, spoil := range map[string]func(p *lay.Plan){
		"moved away":  func(p *lay.Plan) { p.Pieces[0].X += 1e6 },
		"on another":  func(p *lay.Plan) { p.Pieces[0].X, p.Pieces[0].Y = p.Pieces[1].X, p.Pieces[1].Y },
		"not finite":  func(p *lay.Plan) { p.Pieces[0].Y = math.NaN() },
		"one missing": func(p *lay.Plan) { p.Pieces = p.Pieces[1:] },
		"one more":    func(p *lay.Plan) { p.Pieces = append(p.Pieces, p.Pieces[0]) },
		"unknown":     func(p *lay.Plan) { p.Pieces[0].Name = "hood" },
		"turned":      func(p *lay.Plan) { p.Pieces[0].Turn = 33 },
		"folded in":   func(p *lay.Plan) { p.FoldedIn, p.Pieces[0].Turn = 1e9, 7 },
	} {
		options.Kept = bareOf(first.Found)
		for i := range options.Kept {
			options.Kept[i].Pieces = slices.Clone(options.Kept[i].Pieces)
			spoil(&options.Kept[i])
		}
		got, err := plan.Require(t.Context(), c, all, options)
		require.NoError(t, err, name)
		assert.NotZero(t, got.Work.Due, "%s: it is searched", name)
		if name != "moved away" { // no layout at all; one moved along is a long one
			assert.InDelta(t, first.Length, got.Length, 1e-6, name)
		}
	}
}

// On a repeat the match points are kept with the layout, so that it is laid again as it
// was, with the same bound and the same cost of matching.
func TestKeptPlansAreLaidAgainOnARepeat(t *testing.T) {
	for name, repeat := range map[string]cloth.Repeat{
		"stripes across": {Along: 90}, "stripes along": {Across: 60}, "checks": {Along: 90, Across: 60},
	} {
		c := checked
		c.Repeat = repeat
		options := plan.Options{Passes: 10, Seed: 1}
		first, err := plan.Require(t.Context(), c, fabrictest.Skirt(), options)
		require.NoError(t, err, name)
		options.Kept, options.KeptPlain, options.Searched = bareOf(first.Found), bareOf(first.FoundPlain), true
		again, err := plan.Require(t.Context(), c, fabrictest.Skirt(), options)
		require.NoError(t, err, name)
		assert.Zero(t, again.Work.Due, "%s: nothing is searched", name)
		assert.Equal(t, first.Matching, again.Matching, name)
		require.Len(t, again.Found, len(first.Found), name)
		for i, p := range first.Found {
			assert.InDelta(t, p.Taken, again.Found[i].Taken, 1e-6, "%s, %s", name, p.Lay)
			assert.InDelta(t, p.Bound, again.Found[i].Bound, 1e-6, "%s, %s", name, p.Lay)
			assert.Equal(t, p.Matches, again.Found[i].Matches, "%s, %s", name, p.Lay)
			assert.Equal(t, p.Dropped, again.Found[i].Dropped, "%s, %s", name, p.Lay)
		}
	}
}
