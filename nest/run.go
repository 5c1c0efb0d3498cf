package nest

import (
	"context"
	"runtime"
	"sync"
	"sync/atomic"
	"time"

	"ellwand/nest/bound"
	"ellwand/nest/internal/search"
)

// searches is the number of independent searches under a budget of passes.
// It does not depend on the workers, so that the result does not either.
const searches = 2

// run is one call of Solve: what its searches share.
type run struct {
	q      *prepared
	o      Options
	ctx    context.Context
	begin  time.Duration // by the clock
	limit  time.Duration
	bound  float64
	floor  float64 // the search ends at this length: the bound, or what is enough
	solved atomic.Bool
	passes int

	mu       sync.Mutex
	best     []search.Outcome // of each search
	reported float64          // shortest
	// begins is where the searches begin, if they do not from nothing.
	begins []*search.Spot
	// clustered says that one of the searches began from a repeated cluster.
	clustered bool
}

func newRun(ctx context.Context, q *prepared, o Options, begin time.Duration) *run {
	if o.Workers <= 0 {
		o.Workers = runtime.GOMAXPROCS(0)
	}
	r := &run{q: q, o: o, ctx: ctx, begin: begin, limit: o.Time}
	if r.limit == 0 && o.Passes == 0 {
		r.limit = defaultTime
	}
	if q.problem.Length == 0 && len(q.problem.Sheets) == 0 {
		if r.bound = o.Bound; r.bound == 0 {
			r.bound = bound.Length(q.problem)
		}
		r.floor = max(r.bound, o.Enough)
	}
	return r
}

// Spent is the share of the budget used after so many passes of one search.
func (r *run) Spent(passes int) float64 {
	var spent float64
	if r.o.Passes > 0 {
		spent = float64(passes) / float64(r.o.Passes)
	}
	if r.limit > 0 {
		spent = max(spent, float64(r.elapsed())/float64(r.limit))
	}
	return spent
}

func (r *run) elapsed() time.Duration { return r.o.Clock() - r.begin }

// wallClock is the time since the program began, about.
func wallClock() time.Duration { return time.Since(began) }

var began = time.Now()

// Stopped reports that the search must end: the context is done, or, under a
// time budget, another search has reached the bound. Under a budget
// of passes each search ends on its own, so that the result does not depend on
// which was first.
func (r *run) Stopped() bool {
	return r.ctx.Err() != nil || r.limit > 0 && r.solved.Load()
}

// Floor is the bound, or what is enough.
func (r *run) Floor() float64 { return r.floor }

// defaultTime is how long Solve searches when nothing else is asked.
const defaultTime = 5 * time.Second
