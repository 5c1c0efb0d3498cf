package main

import (
	"context"
	"errors"
	"fmt"
	"runtime"
	"sync"
	"time"

	"github.com/spf13/cobra"

	"ellwand/cmd/ellwand/failure"
	"ellwand/cmd/ellwand/screen"
	"ellwand/fabric"
	"ellwand/fabric/quote"
	"ellwand/pieces"
)

// budget holds the options of the commands that lay many problems at once.
type budget struct {
	time    time.Duration
	seed    uint64
	workers int
	noCache bool
	force   bool
}

// usualBudget is the time to search each lay when there are many to search.
const usualBudget = 2 * time.Second

func (b *budget) register(cmd *cobra.Command) {
	b.time = usualBudget
	flags := cmd.Flags()
	flags.Var((*span)(&b.time), "time", "time to search each lay: 5s, 2m, or a number of seconds")
	flags.Uint64Var(&b.seed, "seed", 1, "seed of the search; another seed may find another layout")
	flags.IntVar(&b.workers, "workers", 0, "processor cores to use; 0 is all of them")
	flags.BoolVar(&b.noCache, "no-cache", false, "search anew, and keep nothing of what is found")
	flags.BoolVar(&b.force, "force", false, "overwrite files that exist")
}

// problem is some pieces on a cloth, to be laid in every way that they allow.
type problem struct {
	cloth fabric.Cloth
	all   []pieces.Piece
	// known plans are where the search starts; they are no part of what is
	// asked.
	known []fabric.LayPlan
}

// answer is the shortest lay of a problem, or why there is none.
type answer struct {
	found      quote.Found
	impossible string
	// need is the requirement; empty when the cache had the answer.
	need fabric.Requirement
}

// quickLays are those that the commands for many problems try: all, of which
// the rarer ones have a share of the time.
var quickLays = fabric.AllLays()

// solveAll lays every problem, several at a time, each on one core so that
// none is idle. Equal problems are laid once.
func (e *env) solveAll(ctx context.Context, all []problem, b budget) ([]answer, error) {
	if b.workers < 0 {
		return nil, fmt.Errorf("--workers is %d; it cannot be negative (0 uses every core)", b.workers)
	}
	s := &solver{ctx: ctx, budget: b, cache: openCache()}
	if b.noCache {
		s.cache = nil
	}
	first, distinct := distinctProblems(all)
	answers, failures := make([]answer, len(distinct)), make([]error, len(distinct))
	bar := screen.NewProgress(e.err, e.quiet)
	defer bar.Done()
	var mutex sync.Mutex
	done, begun := 0, time.Now()
	s.each(len(distinct), func(i, workers int) {
		answers[i], failures[i] = s.solve(distinct[i], workers)
		mutex.Lock()
		defer mutex.Unlock()
		done++
		bar.Count("laying", done, len(distinct), time.Since(begun))
	})
	if err := errors.Join(failures...); err != nil {
		return nil, err
	}
	if ctx.Err() != nil {
		bar.Done()
		e.note("note: the search was ended early; these are the best lays it had found")
	}
	out := make([]answer, len(all))
	for i := range all {
		out[i] = answers[first[i]]
	}
	return out, nil
}

// distinctProblems lists the problems that differ; first says which of them
// each problem is.
func distinctProblems(all []problem) (first []int, distinct []problem) {
	seen := map[string]int{}
	for _, p := range all {
		key := fmt.Sprintf("%#v %#v", p.cloth, p.all)
		at, known := seen[key]
		if !known {
			at = len(distinct)
			seen[key], distinct = at, append(distinct, p)
		}
		first = append(first, at)
	}
	return first, distinct
}

type solver struct {
	ctx    context.Context
	budget budget
	cache  *cache
}

// each calls do for 0 to n-1, on as many cores as there are to use; when there
// are fewer calls than cores, each has several workers.
func (s *solver) each(n int, do func(i, workers int)) {
	cores := s.budget.workers
	if cores == 0 {
		cores = runtime.NumCPU()
	}
	next := make(chan int)
	var group sync.WaitGroup
	for range min(cores, n) {
		group.Go(func() {
			for i := range next {
				do(i, max(1, cores/max(n, 1)))
			}
		})
	}
	for i := range n {
		next <- i
	}
	close(next)
	group.Wait()
}

// solve lays one problem, unless the cache has it from a search as long as the
// one that is asked for. What is found only ever improves what is kept.
func (s *solver) solve(p problem, workers int) (answer, error) {
	var path string
	var before kept
	known := false
	if s.cache != nil {
		path = s.cache.path(p.cloth, p.all, quickLays)
		before, known = s.cache.read(path)
		if known && before.Effort[s.budget.seed] >= s.budget.time {
			return answer{found: before.Found}, nil
		}
	}
	need, err := fabric.Require(s.ctx, p.cloth, p.all, fabric.Options{
		Lays: quickLays, Brief: true, Known: p.known, Time: s.budget.time, Seed: s.budget.seed, Workers: workers,
	})
	switch {
	case errors.Is(err, fabric.ErrInternal):
		return answer{}, failure.Of(err)
	case err != nil:
		return answer{impossible: once(err.Error())}, nil
	}
	now := kept{Found: quote.FoundIn(need), Effort: map[uint64]time.Duration{}}
	if known {
		now.Found, now.Effort = now.Found.Better(before.Found), before.Effort
	}
	if s.ctx.Err() == nil {
		now.Effort[s.budget.seed] = max(now.Effort[s.budget.seed], s.budget.time)
	}
	s.cache.write(path, now)
	return answer{found: now.Found, need: need}, nil
}
