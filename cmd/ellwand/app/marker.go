package app

import (
	"context"
	"fmt"

	"ellwand/cmd/ellwand/failure"
	"ellwand/cmd/ellwand/job"
	"ellwand/fabric"
	"ellwand/fabric/cloth"
)

// Planned is the lay of a cloth that is drawn.
type Planned struct {
	fabric.LayPlan
	// Need is the requirement that it was taken from; of a lay that was asked
	// for it holds that lay alone.
	Need fabric.Requirement
	// EndedEarly says that the search was ended before its time.
	EndedEarly bool
}

// Plan lays the pieces of a cloth in the lay that is asked for, or when that is
// nil in the one that needs least.
func Plan(ctx context.Context, work *job.Work, c cloth.Cloth, lay *fabric.Lay, search Search, watch Watch) (Planned,
	error) {
	found, err := layOn(ctx, work, c, search, watch, nil, neededFor(lay)...)
	if err != nil {
		return Planned{}, err
	}
	plan, err := planOf(found.Requirement, lay)
	if err != nil {
		return Planned{}, clothError(work, c, err)
	}
	out := Planned{LayPlan: plan, Need: found.Requirement, EndedEarly: found.EndedEarly}
	if lay != nil {
		out.Need.Lays, out.Need.Chosen = []fabric.LayPlan{plan}, 0
	}
	return out, nil
}

// neededFor a lay are the lays to solve: that one, and for a lay of two parts
// those that it may come down to. None means all.
func neededFor(lay *fabric.Lay) []fabric.Lay {
	switch {
	case lay == nil:
		return nil
	case *lay == fabric.SelvedgeIn || *lay == fabric.InStretches:
		return []fabric.Lay{fabric.Open, fabric.FoldedAlong, *lay}
	}
	return []fabric.Lay{*lay}
}

// planOf takes the lay that is asked for, or the recommended one.
func planOf(need fabric.Requirement, lay *fabric.Lay) (fabric.LayPlan, error) {
	if lay == nil {
		return need.Lays[need.Chosen], nil
	}
	for _, plan := range need.Lays {
		if plan.Lay != *lay {
			continue
		}
		if one := plan.Throughout; one != nil {
			one.Notes = append(one.Notes, fmt.Sprintf("Asked for was the lay %s: %s.", plan.Lay, plan.Impossible))
			return *one, nil
		}
		if !plan.Possible() {
			return plan, fmt.Errorf("it cannot be laid %s: %s", plan.Lay.Way(), plan.Impossible)
		}
		return plan, nil
	}
	return fabric.LayPlan{}, failure.Of(fmt.Errorf("the lay %s was not tried", *lay))
}
