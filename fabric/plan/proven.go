package plan

import (
	"fmt"

	"ellwand/fabric/lay"
	"ellwand/nest"
	"ellwand/nest/layout"
	"ellwand/nest/verify"
)

// planOf a layout that was found, proven.
func (t *Planner) planOf(kind lay.Kind, found *SolvedLay) (lay.Plan, error) {
	plan := lay.Plan{Cloth: t.Cloth, Asked: t.Asked, Lay: kind, Plies: kind.Plies()}
	plan.FoldedIn = found.Depth
	Fill(&plan, found.Beds)
	if err := SetBound(&plan, t.sureBound(kind, found.Bound)); err != nil {
		return lay.Plan{}, err
	}
	markByHand(&plan)
	noteApproximate(&plan)
	noteUnsaid(&plan)
	FillMatches(&plan, found)
	if err := t.Lines.Plan(plan, t.Asked); err != nil {
		return lay.Plan{}, fmt.Errorf("%w: the lay %s broke a rule of the trade and is not shown: %w", ErrInternal, kind, err)
	}
	return plan, nil
}

// better tells of a layout that a search has found for the one bed of a lay. One that
// does not verify, or breaks a rule, is none.
func (t *Planner) better(kind lay.Kind, one SolvedBed, laid layout.Layout) (lay.Plan, bool) {
	laid.Length = LengthOf(one.Problem, laid)
	if verify.Layout(one.Problem, laid) != nil {
		return lay.Plan{}, false
	}
	one.Layout = laid
	found := LayOf(t.Cloth, one)
	found.Bound = min(one.Bound, laid.Length)
	plan, err := t.planOf(kind, found)
	return plan, err == nil
}

// telling is what a search tells as it goes: lengths of cloth, not of plies. The length
// of one bed of two says nothing of the lay; who lays both tells that of both.
func (t *Planner) telling(kind lay.Kind, one SolvedBed) func(nest.Progress) {
	if t.Options.Progress == nil && t.Options.Better == nil {
		return nil
	}
	if kind == lay.SelvedgeIn || kind == lay.InStretches {
		return nil
	}
	return func(p nest.Progress) {
		if t.Options.Progress != nil {
			told := p
			told.Length, told.Bound = one.Bed.Taken(t.Cloth, p.Length), one.Bed.Taken(t.Cloth, p.Bound)
			t.Options.Progress(kind, told)
		}
		if t.Options.Better != nil {
			one.Bound = p.Bound
			t.Options.Better(kind, func() (lay.Plan, bool) { return t.better(kind, one, p.Layout()) })
		}
	}
}

// tell how long a lay of two beds is.
func (t *Planner) tell(kind lay.Kind, found *SolvedLay) {
	if t.Options.Progress == nil {
		return
	}
	if t.toldBound == 0 {
		t.toldBound = t.OpenBound()
	}
	t.Options.Progress(kind, nest.Progress{Length: found.Taken, Bound: t.toldBound})
}

// SetBound notes a length that no layout can beat. One that was beaten is a
// fault of the proof, and no answer.
func SetBound(p *lay.Plan, bound float64) error {
	if bound > p.Length*(1+ProofMargin) {
		return fmt.Errorf("%w: the lay %s is %g mm long, and it was held for proven that none is below %g", ErrInternal,
			p.Lay, p.Length, bound)
	}
	p.Bound = min(bound, p.Length)
	return nil
}
