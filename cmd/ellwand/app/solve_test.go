package app

import (
	"context"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/cmd/ellwand/app/store"
	"ellwand/fabric/cloth"
	"ellwand/fabric/quote"
	"ellwand/pieces"
)

func aProblem() problem {
	pocket := pieces.Rectangle("pocket", 200, 310)
	pocket.Cut = 5
	return problem{cloth: cloth.Cloth{Width: 900, Selvedge: 10, Step: 100}, all: []pieces.Piece{pocket}}
}

// A better answer that is kept is never made worse, a worse one is improved,
// and a search that is as long as the one kept is not run again.
func TestKeptAnswersOnlyImprove(t *testing.T) {
	t.Setenv("XDG_CACHE_HOME", t.TempDir())
	s := newSolver(Budget{Search: Search{Time: 50 * time.Millisecond, Seed: 1}}, Watch{})
	c := s.store
	p := aProblem()
	path := c.Path(p.cloth, p.all, quickLays)
	first, err := s.solve(t.Context(), p, 1)
	require.NoError(t, err)
	assert.InDelta(t, 620, first.found.Taken, 1, "four pockets across 88 cm, so two rows of 31 cm")

	better := quote.Found{Lay: "open", Taken: first.found.Taken - 1, Bound: 10}
	c.Write(path, store.Kept{Found: better, Effort: map[uint64]time.Duration{1: time.Millisecond}})
	second, err := s.solve(t.Context(), p, 1)
	require.NoError(t, err)
	assert.InDelta(t, better.Taken, second.found.Taken, 1e-9)
	assert.GreaterOrEqual(t, second.found.Bound, first.found.Bound, "both bounds are proven")

	worse := quote.Found{Lay: "open", Taken: 5000, Bound: 10}
	c.Write(path, store.Kept{Found: worse, Effort: map[uint64]time.Duration{1: time.Millisecond}})
	third, err := s.solve(t.Context(), p, 1)
	require.NoError(t, err)
	assert.InDelta(t, first.found.Taken, third.found.Taken, 1e-6)

	c.Write(path, store.Kept{Found: worse, Effort: map[uint64]time.Duration{1: time.Hour}})
	fourth, err := s.solve(t.Context(), p, 1)
	require.NoError(t, err)
	assert.InDelta(t, worse.Taken, fourth.found.Taken, 1e-9, "it was searched longer than is asked for")
	s.Seed = 2
	fifth, err := s.solve(t.Context(), p, 1)
	require.NoError(t, err)
	assert.InDelta(t, first.found.Taken, fifth.found.Taken, 1e-6, "another seed searches")
}

// A search that is ended early keeps what it found, not that it was complete.
func TestKeptOfAnEndedSearch(t *testing.T) {
	t.Setenv("XDG_CACHE_HOME", t.TempDir())
	ctx, cancel := context.WithCancel(context.Background())
	cancel()
	s := newSolver(Budget{Search: Search{Time: time.Second, Seed: 1}}, Watch{})
	c := s.store
	p := aProblem()
	_, err := s.solve(ctx, p, 1)
	require.NoError(t, err)
	k, known := c.Read(c.Path(p.cloth, p.all, quickLays))
	require.True(t, known)
	assert.Empty(t, k.Effort)
}

// Equal problems are laid once, and every answer is that of its problem.
func TestSolveAllKeepsTheOrder(t *testing.T) {
	t.Setenv("XDG_CACHE_HOME", t.TempDir())
	narrow, wide := aProblem(), aProblem()
	narrow.cloth.Width = 250
	answers, err := newSolver(Budget{Search: Search{Passes: 5, Workers: 2}}, Watch{}).all(t.Context(), []problem{wide,
		narrow, wide})
	require.NoError(t, err)
	assert.Equal(t, answers[0], answers[2])
	assert.InDelta(t, 1550, answers[1].found.Taken, 1)
}

// With a budget of passes nothing that was found otherwise changes an answer:
// what is kept is of the same passes, seed and starts.
func TestKeptOfPassesIsOfTheSameSearch(t *testing.T) {
	t.Setenv("XDG_CACHE_HOME", t.TempDir())
	s := newSolver(Budget{Search: Search{Passes: 5, Seed: 1}}, Watch{})
	p := aProblem()
	first, err := s.solve(t.Context(), p, 1)
	require.NoError(t, err)
	require.NotEmpty(t, first.need.Lays)
	again, err := s.solve(t.Context(), p, 2)
	require.NoError(t, err)
	assert.Empty(t, again.need.Lays, "it is kept")
	assert.Equal(t, first.found, again.found)

	for name, other := range map[string]func(s *solver, p *problem){
		"passes": func(s *solver, _ *problem) { s.Passes = 6 },
		"seed":   func(s *solver, _ *problem) { s.Seed = 2 },
		"starts": func(_ *solver, p *problem) { p.known = first.need.Lays },
		"feeds":  func(_ *solver, p *problem) { p.feeds = true },
	} {
		changed, asked := *s, p
		other(&changed, &asked)
		answer, err := changed.solve(t.Context(), asked, 1)
		require.NoError(t, err)
		assert.NotEmpty(t, answer.need.Lays, "%s: it is searched", name)
	}
	_, known := s.store.Read(s.store.Path(p.cloth, p.all, quickLays))
	assert.False(t, known, "a search for a time does not take it for one of its own")
}
