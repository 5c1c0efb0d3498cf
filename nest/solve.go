package nest

import (
	"context"
	"errors"
	"time"

	"ellwand/nest/internal/search"
	"ellwand/nest/layout"
	"ellwand/nest/verify"
)

// Solve lays the items of the problem. On a strip of open length it looks for
// the shortest layout; otherwise for one that fits. It stops when its budget
// is used, the bound is reached or the context ends, and returns the best
// found until then. Errors: a problem that Check refuses, or a layout that
// Verify refuses, which is a fault of this package.
func Solve(ctx context.Context, p layout.Problem, o Options) (Result, error) {
	if o.Clock == nil {
		o.Clock = wallClock
	}
	begin := o.Clock()
	if err := p.Check(); err != nil {
		return Result{}, err
	}
	if len(p.Items) == 0 {
		return Result{Fits: true}, nil
	}
	q, err := prepare(p, o.Start, o.Locked, o.Tables)
	if err != nil {
		return Result{}, err
	}
	run := newRun(ctx, q, o, begin)
	if !run.tiled() && !run.large() {
		run.all()
	}
	return run.result()
}

// tiled tries for a layout without any waste.
func (r *run) tiled() bool {
	return r.tiledByRectangles() || r.assembled()
}

// tiledByRectangles is for those alone.
func (r *run) tiledByRectangles() bool {
	ctx := r.ctx
	if r.limit > 0 {
		var cancel context.CancelFunc
		ctx, cancel = context.WithTimeout(ctx, time.Duration(r.shareOfTiling()*float64(r.limit)))
		defer cancel()
	}
	spots, length, ok := r.q.tile(ctx, r.o.Passes)
	if ok {
		r.best = make([]search.Outcome, 1)
		r.offer(0, search.Outcome{Spots: spots, Length: length})
	}
	return ok
}

// Shares of a limit of time that go to tiling.
const (
	tileShare     = 0.5
	manyTileShare = 0.1
)

// shareOfTiling is less for many rectangles, which are seldom tiled but
// at once.
func (r *run) shareOfTiling() float64 {
	if len(r.q.model.Pieces) >= largeLeast {
		return manyTileShare
	}
	return tileShare
}

// ErrUnverified marks a layout of the search that does not verify: a fault of the
// program.
var ErrUnverified = errors.New("the search returned a layout that does not verify")

func (r *run) result() (Result, error) {
	best := r.leader()
	res := Result{
		Layout: r.q.layout(best.Spots), Fits: best.Loss == 0, Bound: r.bound,
		TotalPasses: r.passes, Elapsed: r.elapsed(),
	}
	if !res.Fits {
		res.Out = r.q.excess(best)
		return res, nil
	}
	if err := verify.Layout(r.q.problem, res.Layout); err != nil {
		return Result{}, errors.Join(ErrUnverified, err)
	}
	return res, nil
}
