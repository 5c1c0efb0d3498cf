package fabric

import (
	"context"
	"errors"
	"fmt"
	"time"

	"ellwand/nest"
	"ellwand/pieces"
)

// Options say which lays to try and how long to search. The zero value tries
// every lay for five seconds each.
type Options struct {
	// Lays to try; empty means all.
	Lays []Lay
	// Time to search a lay; 0 means 5 s, or no limit when Iterations is
	// given.
	Time time.Duration
	// Iterations bounds each search, so that the result depends on the job
	// and the seed alone; 0 leaves it to Time.
	Iterations int
	Seed       uint64
	// Workers is the number of goroutines; 0 means one a core.
	Workers int
	// Gap is the least distance between two pieces, mm. Not negative.
	Gap float64
	// Progress, when set, is called with each better layout of a lay.
	Progress func(Lay, nest.Progress)
}

// Requirement is how much of a cloth a set of pieces needs.
type Requirement struct {
	Cloth Cloth
	// Lays that were tried, in the order open, folded along the warp.
	Lays []LayPlan
	// Chosen is an index into Lays: the lay with the least to buy; of equals
	// the folded one, which halves the chalking and the cutting.
	Chosen int
	// Length and Buy of the chosen lay, mm.
	Length, Buy float64
}

// ErrInternal marks a layout that failed its check: a fault of the program,
// not of the job.
var ErrInternal = errors.New("internal error")

// Require finds the length of cloth that all pieces need, in every lay that
// is possible, each solved and verified. Pieces whose Cloth is another one
// must be left out by the caller.
//
// The folded lay, opened out flat, is where the search of the open lay
// starts, so that (with no gap between pieces) an open lay is never longer
// than the folded one.
//
// When the context is cancelled it returns the best found so far. It fails,
// with a sentence for the maker, when the cloth or a piece is not sound or
// when no lay is possible.
func Require(ctx context.Context, cloth Cloth, all []pieces.Piece, options Options) (Requirement, error) {
	if err := checkJob(cloth, all, options); err != nil {
		return Requirement{}, err
	}
	out := Requirement{Cloth: cloth, Chosen: -1}
	var folded *lain
	for _, lay := range []Lay{FoldedAlong, Open} {
		if !options.wants(lay) {
			continue
		}
		plan, found, err := planLay(ctx, cloth, lay, all, options, folded)
		if err != nil {
			return Requirement{}, err
		}
		folded = found
		out.Lays = append([]LayPlan{plan}, out.Lays...)
	}
	return out.choose()
}

func (o Options) wants(lay Lay) bool {
	for _, l := range o.Lays {
		if l == lay {
			return true
		}
	}
	return len(o.Lays) == 0
}

// lain is a solved lay in terms of plain geometry.
type lain struct {
	templates []template
	problem   nest.Problem
	layout    nest.Layout
	bound     float64
}

// planLay solves one lay. A lay that is not possible is a plan that says so,
// not an error.
func planLay(ctx context.Context, cloth Cloth, lay Lay, all []pieces.Piece, options Options, folded *lain) (LayPlan, *lain, error) {
	plan := LayPlan{Cloth: cloth, Lay: lay, Plies: lay.Plies(), Width: lay.UsableWidth(cloth)}
	templates, err := templatesOf(cloth, lay, all)
	if err != nil {
		plan.Impossible = err.Error()
		return plan, nil, nil
	}
	found, err := solve(ctx, lay, templates, problemOf(cloth, lay, templates, options.Gap), options, folded)
	if err != nil {
		return LayPlan{}, nil, err
	}
	plan.fill(*found)
	if err := plan.Check(all); err != nil {
		return LayPlan{}, nil, fmt.Errorf("%w: the lay %s broke a rule of the trade and is not shown: %w", ErrInternal, lay, err)
	}
	return plan, found, nil
}

func solve(ctx context.Context, lay Lay, templates []template, problem nest.Problem, options Options, folded *lain) (*lain, error) {
	search := nest.Options{Time: options.Time, Iterations: options.Iterations, Seed: options.Seed, Workers: options.Workers}
	if options.Progress != nil {
		search.Progress = func(p nest.Progress) { options.Progress(lay, p) }
	}
	if folded != nil {
		if start, ok := unfolded(*folded, templates, problem); ok {
			search.Start = &start
		}
	}
	result, err := nest.Solve(ctx, problem, search)
	if err != nil {
		return nil, err
	}
	best := shorter(problem, result.Layout, search.Start)
	if err := nest.Verify(problem, best); err != nil {
		return nil, fmt.Errorf("%w: the layout of the lay %s failed its check and is not shown: %w", ErrInternal, lay, err)
	}
	return &lain{templates: templates, problem: problem, layout: best, bound: result.Bound}, nil
}

// shorter returns the start when it is sound and the search, against its
// purpose, gave a longer layout.
func shorter(problem nest.Problem, found nest.Layout, start *nest.Layout) nest.Layout {
	if start != nil && start.Length < found.Length && nest.Verify(problem, *start) == nil {
		return *start
	}
	return found
}

// choose picks the lay with the least to buy; of equals the folded one.
func (r Requirement) choose() (Requirement, error) {
	var reasons []error
	for i, plan := range r.Lays {
		if !plan.Possible() {
			reasons = append(reasons, fmt.Errorf("%s lay: %s", plan.Lay, plan.Impossible))
			continue
		}
		if r.Chosen < 0 || plan.Buy <= r.Buy+sameLength {
			r.Chosen, r.Length, r.Buy = i, plan.Length, plan.Buy
		}
	}
	if r.Chosen < 0 {
		return Requirement{}, fmt.Errorf("no lay of %s is possible:\n%w", r.Cloth, errors.Join(reasons...))
	}
	return r, nil
}

// sameLength, mm: shorter differences do not matter to anyone with scissors.
const sameLength = 1.0

// Opening says how much less an open lay takes than the folded one, in length
// and to buy (mm, not negative). It reports false unless both are possible.
func (r Requirement) Opening() (length, buy float64, ok bool) {
	open, folded := -1, -1
	for i, plan := range r.Lays {
		if plan.Possible() && plan.Lay == Open {
			open = i
		}
		if plan.Possible() && plan.Lay == FoldedAlong {
			folded = i
		}
	}
	if open < 0 || folded < 0 {
		return 0, 0, false
	}
	length = r.Lays[folded].Length - r.Lays[open].Length
	buy = r.Lays[folded].Buy - r.Lays[open].Buy
	return max(length, 0), max(buy, 0), true
}
