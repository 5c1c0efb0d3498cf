package plan

import (
	"fmt"

	"ellwand/fabric/bed"
	"ellwand/fabric/check"
	"ellwand/fabric/lay"
)

// planLay solves one lay. A lay that is not possible is a plan that says so,
// not an error.
func (t *Table) planLay(kind lay.Kind) (lay.Plan, error) {
	plan := lay.Plan{Cloth: t.Cloth, Asked: t.Asked, Lay: kind, Plies: kind.Plies(), Width: bed.UsableWidth(kind, t.Cloth)}
	found, why, err := t.findLay(kind)
	switch {
	case err != nil:
		return lay.Plan{}, err
	case found == nil:
		plan.Why = lay.Reasons(why)
		return plan, nil
	}
	plan.FoldedIn, plan.Width = found.Depth, 0
	Fill(&plan, found.Beds)
	if err := SetBound(&plan, t.sureBound(kind, found.Bound)); err != nil {
		return lay.Plan{}, err
	}
	markByHand(&plan)
	noteApproximate(&plan)
	FillMatches(&plan, found)
	if err := check.Plan(plan, t.Asked); err != nil {
		return lay.Plan{}, fmt.Errorf("%w: the lay %s broke a rule of the trade and is not shown: %w", ErrInternal, kind, err)
	}
	t.Note(found)
	return plan, nil
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
