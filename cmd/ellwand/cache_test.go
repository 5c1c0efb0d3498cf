package main

import (
	"context"
	"io"
	"os"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/fabric"
	"ellwand/fabric/quote"
	"ellwand/pieces"
)

func aProblem() problem {
	pocket := pieces.Rectangle("pocket", 200, 310)
	pocket.Cut = 5
	return problem{cloth: fabric.Cloth{Width: 900, Selvedge: 10, Step: 100}, all: []pieces.Piece{pocket}}
}

// Whatever of a problem changes, or of the program, changes its file.
func TestCacheKeyIsTheWholeProblem(t *testing.T) {
	c := &cache{folder: "x", program: "1"}
	path := func(c *cache, p problem) string { return c.path(p.cloth, p.all, quickLays) }
	first := path(c, aProblem())
	assert.Equal(t, first, path(c, aProblem()))
	for name, change := range map[string]func(*problem){
		"width":     func(p *problem) { p.cloth.Width += 1e-9 },
		"nap":       func(p *problem) { p.cloth.Nap = fabric.OneWay },
		"shrinkage": func(p *problem) { p.cloth.Shrinkage.Warp = 0.01 },
		"repeat":    func(p *problem) { p.cloth.Repeat.Along = 50 },
		"safety":    func(p *problem) { p.cloth.Safety.Share = 0.01 },
		"cut":       func(p *problem) { p.all[0].Cut = 6 },
		"pair":      func(p *problem) { p.all[0].Pair = true },
		"allowance": func(p *problem) { p.all[0].Edges[0].Allowance = 1 },
		"grain":     func(p *problem) { p.all[0].Grain.Lie = pieces.Bias },
		"outline":   func(p *problem) { p.all[0].Edges[0].Path = p.all[0].Edges[0].Path.Reverse() },
	} {
		changed := aProblem()
		change(&changed)
		assert.NotEqual(t, first, path(c, changed), name)
	}
	assert.NotEqual(t, first, path(&cache{folder: "x", program: "2"}, aProblem()), "another program")
	assert.NotEqual(t, first, c.path(aProblem().cloth, aProblem().all, quickLays[:1]))
}

// A better answer that is kept is never made worse, a worse one is improved,
// and a search that is as long as the one kept is not run again.
func TestCacheOnlyImproves(t *testing.T) {
	c := &cache{folder: t.TempDir(), program: "1"}
	s := &solver{ctx: context.Background(), budget: budget{time: 50 * time.Millisecond, seed: 1}, cache: c}
	p := aProblem()
	path := c.path(p.cloth, p.all, quickLays)
	first, err := s.solve(p, 1)
	require.NoError(t, err)
	assert.InDelta(t, 620, first.found.Taken, 1, "four pockets across 88 cm, so two rows of 31 cm")

	better := quote.Found{Lay: "open", Taken: first.found.Taken - 1, Bound: 10}
	c.write(path, kept{Found: better, Effort: map[uint64]time.Duration{1: time.Millisecond}})
	second, err := s.solve(p, 1)
	require.NoError(t, err)
	assert.InDelta(t, better.Taken, second.found.Taken, 1e-9)
	assert.GreaterOrEqual(t, second.found.Bound, first.found.Bound, "both bounds are proven")

	worse := quote.Found{Lay: "open", Taken: 5000, Bound: 10}
	c.write(path, kept{Found: worse, Effort: map[uint64]time.Duration{1: time.Millisecond}})
	third, err := s.solve(p, 1)
	require.NoError(t, err)
	assert.InDelta(t, first.found.Taken, third.found.Taken, 1e-6)

	c.write(path, kept{Found: worse, Effort: map[uint64]time.Duration{1: time.Hour}})
	fourth, err := s.solve(p, 1)
	require.NoError(t, err)
	assert.InDelta(t, worse.Taken, fourth.found.Taken, 1e-9, "it was searched longer than is asked for")
	s.budget.seed = 2
	fifth, err := s.solve(p, 1)
	require.NoError(t, err)
	assert.InDelta(t, first.found.Taken, fifth.found.Taken, 1e-6, "another seed searches")
}

// A search that is ended early keeps what it found, not that it was complete.
func TestCacheOfAnEndedSearch(t *testing.T) {
	c := &cache{folder: t.TempDir(), program: "1"}
	ctx, cancel := context.WithCancel(context.Background())
	cancel()
	s := &solver{ctx: ctx, budget: budget{time: time.Second, seed: 1}, cache: c}
	p := aProblem()
	_, err := s.solve(p, 1)
	require.NoError(t, err)
	k, known := c.read(c.path(p.cloth, p.all, quickLays))
	require.True(t, known)
	assert.Empty(t, k.Effort)
}

func TestSpoiltCacheCountsAsNone(t *testing.T) {
	c := &cache{folder: t.TempDir(), program: "1"}
	p := aProblem()
	path := c.path(p.cloth, p.all, quickLays)
	for _, text := range []string{"", "{", "null", `{"found":{"Taken":-1}}`, `{"found":{"Taken":5,"Bound":9},"effort_ns":{}}`, `{"found":{"Taken":5}}`} {
		require.NoError(t, os.WriteFile(path, []byte(text), 0o600))
		_, known := c.read(path)
		assert.False(t, known, text)
	}
	_, known := (*cache)(nil).read(path)
	assert.False(t, known)
	(*cache)(nil).write(path, kept{})
}

// Equal problems are laid once, and every answer is that of its problem.
func TestSolveAllKeepsTheOrder(t *testing.T) {
	t.Setenv("XDG_CACHE_HOME", t.TempDir())
	narrow, wide := aProblem(), aProblem()
	narrow.cloth.Width = 250
	e := &env{out: io.Discard, err: io.Discard}
	answers, err := e.solveAll(context.Background(), []problem{wide, narrow, wide}, budget{time: 50 * time.Millisecond, workers: 2})
	require.NoError(t, err)
	assert.Equal(t, answers[0], answers[2])
	assert.InDelta(t, 1550, answers[1].found.Taken, 1)
}
