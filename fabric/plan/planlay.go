package plan

import (
	"ellwand/fabric/bed"
	"ellwand/fabric/lay"
)

// planLay solves one lay. A lay that is not possible is a plan that says so,
// not an error.
func (t *Planner) planLay(kind lay.Kind) (lay.Plan, error) {
	plan := lay.Plan{Cloth: t.Cloth, Asked: t.Asked, Lay: kind, Plies: kind.Plies(), Width: bed.UsableWidth(kind, t.Cloth)}
	found, why, err := t.findLay(kind)
	switch {
	case err != nil:
		return lay.Plan{}, err
	case found == nil:
		plan.Why = lay.Reasons(why)
		return plan, nil
	}
	if plan, err = t.planOf(kind, found); err != nil {
		return lay.Plan{}, err
	}
	t.Note(found)
	return plan, nil
}
