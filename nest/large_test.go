package nest

import (
	"context"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/nest/internal/model"
	"ellwand/nest/layout"
	"ellwand/nest/verify"
)

// copiesOf the pieces of a drafted problem, so many of each.
func copiesOf(items, copies int) layout.Problem {
	p := draftedProblem(items, 1)
	for i := range p.Items {
		p.Items[i].Copies = copies
	}
	return p
}

// modelOf a problem, as the search has it.
func modelOf(t *testing.T, p layout.Problem) *model.Model {
	t.Helper()
	q, err := prepare(p, nil, nil, nil)
	require.NoError(t, err)
	return q.model
}

// Copies are divided into parts that are alike, so that one search serves all.
func TestPartsOfCopiesAreAlike(t *testing.T) {
	m := modelOf(t, copiesOf(10, 50))
	parts := partsOf(m)
	require.NotEmpty(t, parts)
	for _, p := range parts {
		require.Equal(t, parts[0].content(m), p.content(m))
	}
	require.LessOrEqual(t, toSearch(m, parts), partMost)
	require.Empty(t, partsOf(modelOf(t, copiesOf(10, 15))), "a small set is laid as a whole")
	sheet := copiesOf(10, 50)
	sheet.Length = 30000
	require.Empty(t, partsOf(modelOf(t, sheet)))
}

// Pieces that all differ are divided as they follow each other, and garments that share
// a direction stay together.
func TestPartsOfGarments(t *testing.T) {
	p := draftedProblem(200, 1)
	for i := range p.Items {
		p.Items[i].Group = 1 + i/8
	}
	m := modelOf(t, p)
	parts := partsOf(m)
	require.Greater(t, len(parts), 1)
	require.Empty(t, spreadGroups(m, parts))
	all := map[int]bool{}
	for _, part := range parts {
		for _, i := range part.pieces {
			require.False(t, all[i])
			all[i] = true
		}
	}
	require.Len(t, all, 200)
}

// A group that is larger than any part takes one direction, the same in all.
func TestSpreadGroup(t *testing.T) {
	p := copiesOf(10, 50)
	for i := range p.Items {
		p.Items[i].Group = 1
		p.Items[i].Turns = []layout.Turn{{}, {Degrees: 180, Direction: 1}}
	}
	m := modelOf(t, p)
	parts := partsOf(m)
	spread := spreadGroups(m, parts)
	require.True(t, spread[1])
	only := parts[0].model(m, spread)
	for _, piece := range only.Pieces {
		for _, k := range piece.Shapes {
			require.Zero(t, m.Shapes[k].Direction)
		}
	}
	got, err := Solve(context.Background(), p, Options{Passes: 4, Seed: 1})
	require.NoError(t, err)
	require.True(t, got.Fits)
}

// The layout of a large set does not depend on the workers, verifies, and is no longer
// than the parts that it was made of.
func TestLargeSets(t *testing.T) {
	quarters := copiesOf(6, 30)
	quarters.Gap = 3
	for name, p := range map[string]layout.Problem{"copies": copiesOf(8, 24), "unlike": draftedProblem(170, 1),
		"with a gap": quarters} {
		t.Run(name, func(t *testing.T) {
			one, err := Solve(context.Background(), p, Options{Passes: 8, Seed: 5, Workers: 1})
			require.NoError(t, err)
			require.NoError(t, verify.Layout(p, one.Layout))
			two, err := Solve(context.Background(), p, Options{Passes: 8, Seed: 5, Workers: 2})
			require.NoError(t, err)
			assert.Equal(t, one.Layout, two.Layout)
			assert.LessOrEqual(t, one.Bound, one.Layout.Length)
		})
	}
}

// A part slides into the notch of the one before.
func TestPartsSlideTogether(t *testing.T) {
	notched := layout.Item{Copies: 2, Turns: []layout.Turn{{}},
		Outline: orb.Ring{{0, 0}, {10, 0}, {10, 4}, {6, 4}, {6, 6}, {10, 6}, {10, 10}, {0, 10}, {0, 6}, {-4, 6},
			{-4, 4}, {0, 4}}}
	m := modelOf(t, layout.Problem{Width: 10, Items: []layout.Item{notched}})
	one := laidPart{part: part{[]int{0}}, length: 14, spots: []model.Spot{{X: 7, Y: 5}}}
	next := one
	next.pieces = []int{1}
	whole := joined(m, []laidPart{one, next})
	require.Equal(t, []int{0, 1}, whole.pieces)
	require.InDelta(t, 24, whole.length, 1e-3)
	assert.InDelta(t, 10, periodOf(m, one).length, 1e-3)
}
