package plan

import (
	"fmt"

	"ellwand/fabric/bed"
	"ellwand/fabric/lay"
	"ellwand/fabric/rules"
	"ellwand/nest/layout"
	"ellwand/nest/verify"
)

// Solve finds the layout of a bed that is the whole lay, with a share of the
// budget.
func (t *Planner) Solve(kind lay.Kind, b bed.Bed, templates []rules.Template,
	share float64) (found *SolvedBed, why, err error) {
	return t.solveAt(kind, b, templates, share, t.placesFor(kind), nil)
}

// solveAt finds the layout of one bed whose match points keep to places that
// are known already; warm, which may be nil, is a layout to improve on if it
// keeps them too.
func (t *Planner) solveAt(kind lay.Kind, b bed.Bed, templates []rules.Template, share float64, at lay.Places,
	warm *layout.Layout) (found *SolvedBed, why, err error) {
	problem, matched, why := rules.ProblemAt(t.Cloth, b, templates, t.joins(), at)
	if why == nil {
		why = t.lessMatched(matched)
	}
	if why != nil {
		return nil, why, nil
	}
	search := t.Budget(share)
	search.Bound = boundFor(kind, problem)
	if t.cannotBeShortest(b, search.Bound) {
		search = scaled(search, hopelessEffort)
	}
	search.Progress = t.telling(kind, SolvedBed{Bed: b, Templates: templates, Problem: problem, matched: matched})
	known := t.startFor(kind, b, templates, problem)
	search.Start = known
	if search.Start == nil && warm != nil && verify.Layout(problem, *warm) == nil {
		search.Start = warm
	}
	result, err := t.search(templates, problem, search)
	if err != nil {
		return nil, nil, err
	}
	best := shorter(problem, result.Layout, known)
	if err := verify.Layout(problem, best); err != nil {
		return nil, nil, fmt.Errorf("%w: the layout of the lay %s failed its check and is not shown: %w", ErrInternal, kind,
			err)
	}
	return &SolvedBed{Bed: b, Templates: templates, Problem: problem, Layout: best, Bound: result.Bound,
		matched: matched}, nil, nil
}
