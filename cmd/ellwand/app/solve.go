package app

import (
	"context"
	"errors"
	"fmt"
	"runtime"
	"sync"
	"sync/atomic"
	"time"

	"ellwand/cmd/ellwand/failure"
	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/fabric/plan"
	"ellwand/fabric/quote"
	"ellwand/pieces"
)

// problem is some pieces on a cloth, to be laid in every way that they allow.
type problem struct {
	cloth cloth.Cloth
	all   []pieces.Piece
	// known plans are where the search starts; they are no part of what is
	// asked.
	known []lay.Plan
	// alone says that it is a garment by itself, for what it takes by itself alone: it is
	// laid with less effort.
	alone bool
}

// problemOf states which pieces go on a cloth. Its name plays no part in the
// lay, so that equal cloths are laid once.
func problemOf(c cloth.Cloth, all []pieces.Piece) problem {
	c.Name = ""
	return problem{cloth: c, all: all}
}

// aloneOn states the same of a single garment beside others.
func aloneOn(c cloth.Cloth, single []pieces.Piece) problem {
	out := problemOf(c.Untouched(), single)
	out.alone = true
	return out
}

// answer is the shortest lay of a problem, or why there is none.
type answer struct {
	found      quote.Found
	impossible error
	need       plan.Requirement
	ended      plan.Ended
}

// why nothing can be laid; empty where it can.
func (a answer) why() string {
	if a.impossible == nil {
		return ""
	}
	return a.impossible.Error()
}

// isLeftOut says that the problem was not laid, since the search was ended before.
func (a answer) isLeftOut() bool { return a.impossible == nil && len(a.need.Lays) == 0 }

// endedOf sums up how far the searches of some problems got.
func endedOf(all []answer) plan.Ended {
	var out plan.Ended
	for _, a := range all {
		out = out.And(a.ended)
	}
	return out
}

// withLeftOut is work of some problems with what was due of those that were left out,
// which is taken to be as much for each.
func withLeftOut(done plan.Work, all []answer) plan.Work {
	left := 0
	for _, a := range all {
		if a.isLeftOut() {
			left++
		}
	}
	if left > 0 && left < len(all) {
		done.Due += done.Due / (len(all) - left) * left
	}
	return done
}

// solver lays many problems.
type solver struct {
	finder
	watch Watch
	// endsWithContext says that what has not begun when the context ends is left out:
	// its answer is empty.
	endsWithContext bool
	// after counts what may still begin when the context has ended; nil says all.
	after *atomic.Int32
}

// mostAfterEnd is how many cells of a table are laid when the search was ended before
// they were: each takes some hundredths of a second [source.OwnChoice].
const mostAfterEnd = 50

func newSolver(search Search, watch Watch) *solver {
	return &solver{finder: newFinder(search), watch: watch}
}

// unlessEnded lays what may be left out when the search is ended.
func (s *solver) unlessEnded() *solver {
	out := *s
	out.endsWithContext = true
	return &out
}

// endingSoon lays no more than a few problems when the search is ended, so that the
// command ends soon after it.
func (s *solver) endingSoon() *solver {
	out := *s
	out.after = &atomic.Int32{}
	return &out
}

// leavesOut says that a problem is not begun any more.
func (s *solver) leavesOut(ctx context.Context, p problem) bool {
	if ctx.Err() == nil {
		return false
	}
	return s.endsWithContext || p.alone || s.after != nil && s.after.Add(1) > mostAfterEnd
}

// all lays every problem, several at a time, each on one core so that none is
// idle. Equal problems are laid once. When the context has ended, what a garment takes
// alone is left out; see also endingSoon.
func (s *solver) all(ctx context.Context, all []problem) ([]answer, error) {
	first, distinct := distinctProblems(all)
	answers, failures := make([]answer, len(distinct)), make([]error, len(distinct))
	var mutex sync.Mutex
	over, begun := 0, time.Now()
	if s.watch.Counted != nil && len(distinct) > 0 {
		s.watch.Counted(0, len(distinct), 0)
	}
	s.each(len(distinct), func(i, workers int) {
		if s.leavesOut(ctx, distinct[i]) {
			return
		}
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
		key := fmt.Sprintf("%#v %#v %t", p.cloth, p.all, p.alone)
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
	cores := s.search.Workers
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

// solve lays one problem.
func (s *solver) solve(ctx context.Context, p problem, workers int) (answer, error) {
	by := s.finder
	if p.alone {
		by = by.withLessEffort()
	}
	got, err := by.find(ctx, p.cloth, p.all, plan.Options{Workers: workers, WarmStarts: p.known})
	switch {
	case errors.Is(err, plan.ErrInternal):
		return answer{}, failure.Of(err)
	case err != nil:
		return answer{impossible: err}, nil
	}
	out := answer{found: quote.FoundIn(got.Requirement), need: got.Requirement, ended: got.ended}
	out.found.Kept = got.kept
	return out, nil
}
