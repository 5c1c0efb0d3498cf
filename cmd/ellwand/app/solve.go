package app

import (
	"context"
	"errors"
	"fmt"
	"runtime"
	"sync"
	"time"

	"github.com/paulmach/orb"

	"ellwand/cmd/ellwand/app/store"
	"ellwand/cmd/ellwand/failure"
	"ellwand/cmd/ellwand/words/reason"
	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/fabric/plan"
	"ellwand/fabric/quote"
	"ellwand/pieces"
)

// Budget of a use case that lays many problems at once.
type Budget struct {
	Search
	// Anew searches again, and keeps nothing of what is found.
	Anew bool
}

// problem is some pieces on a cloth, to be laid in every way that they allow.
type problem struct {
	cloth cloth.Cloth
	all   []pieces.Piece
	// known plans are where the search starts; they are no part of what is
	// asked.
	known []lay.Plan
	// feeds says that its plans are where another search starts.
	feeds bool
}

// problemOf states which pieces go on a cloth. Its name plays no part in the
// lay, so that equal cloths are laid once.
func problemOf(c cloth.Cloth, all []pieces.Piece) problem {
	c.Name = ""
	return problem{cloth: c, all: all}
}

// answer is the shortest lay of a problem, or why there is none.
type answer struct {
	found      quote.Found
	impossible error
	// need is the requirement; empty when it was kept from before.
	need plan.Requirement
}

// why nothing can be laid; empty where it can.
func (a answer) why() string {
	if a.impossible == nil {
		return ""
	}
	return reason.Once(a.impossible.Error())
}

// quickLays are those that the use cases with many problems try: all, of which
// the rarer ones have a share of the time.
var quickLays = lay.Kinds()

// solver lays many problems.
type solver struct {
	Budget
	store *store.Store
	watch Watch
}

func newSolver(budget Budget, watch Watch) *solver {
	s := &solver{Budget: budget, watch: watch}
	if !budget.Anew {
		s.store = store.Open()
	}
	return s
}

// all lays every problem, several at a time, each on one core so that none is
// idle. Equal problems are laid once.
func (s *solver) all(ctx context.Context, all []problem) ([]answer, error) {
	first, distinct := distinctProblems(all)
	answers, failures := make([]answer, len(distinct)), make([]error, len(distinct))
	var mutex sync.Mutex
	over, begun := 0, time.Now()
	s.each(len(distinct), func(i, workers int) {
		answers[i], failures[i] = s.guarded(ctx, distinct[i], workers)
		mutex.Lock()
		defer mutex.Unlock()
		over++
		if s.watch.Counted != nil {
			s.watch.Counted(over, len(distinct), time.Since(begun))
		}
	})
	if err := errors.Join(failures...); err != nil {
		return nil, err
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

// each calls do for 0 to n-1, on as many cores as there are to use; when there
// are fewer calls than cores, each has several workers.
func (s *solver) each(n int, do func(i, workers int)) {
	cores := s.Workers
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

// guarded lays one problem; what nobody foresaw is an error as well, so that it
// ends no more than the command.
func (s *solver) guarded(ctx context.Context, p problem, workers int) (found answer, err error) {
	defer func() {
		if caught := failure.Caught(recover()); caught != nil {
			err = caught
		}
	}()
	return s.solve(ctx, p, workers)
}

// solve lays one problem, unless it is kept from a search as long as the one
// that is asked for. What is found only ever improves what is kept.
func (s *solver) solve(ctx context.Context, p problem, workers int) (answer, error) {
	if s.Passes > 0 {
		return s.inPasses(ctx, p, workers)
	}
	path := s.store.Path(p.cloth, p.all, quickLays)
	before, known := s.store.Read(path)
	if known && before.Effort[s.Seed] >= s.Time {
		return answer{found: before.Found}, nil
	}
	found, err := s.search(ctx, p, workers)
	if err != nil || found.impossible != nil {
		return found, err
	}
	now := store.Kept{Found: found.found, Effort: map[uint64]time.Duration{}}
	if known {
		now.Found, now.Effort = now.Found.Better(before.Found), before.Effort
	}
	if ctx.Err() == nil {
		now.Effort[s.Seed] = max(now.Effort[s.Seed], s.Time)
	}
	s.store.Write(path, now)
	found.found = now.Found
	return found, nil
}

// inPasses lays one problem with a budget of passes. What is kept from other
// searches must not change the answer, so that it is kept by itself, and is not
// used at all where another search starts from the plans, which are not kept.
func (s *solver) inPasses(ctx context.Context, p problem, workers int) (answer, error) {
	path := s.store.Path(p.cloth, p.all, quickLays, s.Passes, s.Seed, startsOf(p.known))
	if before, known := s.store.Read(path); known && !p.feeds {
		return answer{found: before.Found}, nil
	}
	found, err := s.search(ctx, p, workers)
	if err == nil && found.impossible == nil && ctx.Err() == nil {
		s.store.Write(path, store.Kept{Found: found.found, Effort: map[uint64]time.Duration{}})
	}
	return found, err
}

// startsOf are the outlines of plans as they lie.
func startsOf(known []lay.Plan) (out [][]orb.Ring) {
	for _, plan := range known {
		var lies []orb.Ring
		for _, laid := range plan.Pieces {
			lies = append(lies, laid.Outline)
		}
		out = append(out, lies)
	}
	return out
}

// search lays one problem.
func (s *solver) search(ctx context.Context, p problem, workers int) (answer, error) {
	need, err := plan.Require(ctx, p.cloth, p.all, plan.Options{
		Lays: quickLays, Brief: true, Known: p.known, Time: s.Time, Passes: s.Passes, Seed: s.Seed, Workers: workers,
	})
	switch {
	case errors.Is(err, plan.ErrInternal):
		return answer{}, failure.Of(err)
	case err != nil:
		return answer{impossible: err}, nil
	}
	return answer{found: quote.FoundIn(need), need: need}, nil
}
