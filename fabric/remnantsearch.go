package fabric

import (
	"fmt"
	"math"

	"ellwand/fabric/internal/geometry"
	"ellwand/fabric/purchase"
	"ellwand/nest"
	"ellwand/nest/bound"
	"ellwand/nest/layout"
	"ellwand/nest/verify"
)

// Shares of the budget: for a short lay that may happen to fit, and for pushing
// together what does. The rest is for a layout of the length that there is
// [source.OwnChoice].
const (
	stripShare   = 0.25
	tidyingShare = 0.1
	// tightStripShare is for cloth that must be used almost to the last thread,
	// which a short lay never happens to do.
	tightStripShare = 0.1
	tight           = 0.97
)

// attempt is one way to look for a layout, with its share of the budget.
type attempt struct {
	share float64
	try   func(setting, float64) (*spread, error)
}

// attempts tries every setting first without a limit of length, which soon
// answers what is easy and gives a closest try, and then on the length that
// there is; the other way about where the pieces fill the cloth.
func (q *question) attempts(settings []setting) []attempt {
	for _, s := range settings {
		if s.isSingle() && s.filled() < tight {
			return []attempt{{stripShare, q.onStrip}, {1 - stripShare - tidyingShare, q.onSheet}}
		}
	}
	return []attempt{{1 - tightStripShare - tidyingShare, q.onSheet}, {tightStripShare, q.onStrip}}
}

// filled is the share of the bed that the pieces cover.
func (s setting) filled() float64 {
	area := 0.0
	for _, t := range s.templates {
		area += math.Abs(geometry.Area(t.outline)) * float64(t.copies)
	}
	return area / (s.bed.width * s.length)
}

// search makes the attempts until one finds a layout.
func (q *question) search(settings []setting) (Lay, *spread, error) {
	for _, attempt := range q.attempts(settings) {
		parts := 0.0
		for _, s := range settings {
			parts += partOf(s)
		}
		for _, s := range settings {
			found, err := attempt.try(s, attempt.share*partOf(s)/parts)
			if err != nil || found != nil {
				return s.lay, found, err
			}
		}
	}
	return 0, nil, nil
}

// partOf the budget: the open lay can do the most, so it has twice as much.
func partOf(s setting) float64 {
	if s.lay == Open {
		return 2
	}
	return 1
}

// fits reports whether a lay takes no more than there is.
func (q *question) fits(s *spread) bool { return s.taken <= q.usable*(1+fitShare) }

// fitShare absorbs the rounding of a length, as a share: 1 um on 1 m
// [source.OwnChoice].
const fitShare = 1e-6

func (q *question) keep(lay Lay, found *spread) *spread {
	if q.closest == nil || found.taken < q.closest.taken {
		q.closest, q.lay = found, lay
	}
	q.note(found)
	if q.fits(found) {
		return found
	}
	return nil
}

// within is the table with a share of the budget.
func (q *question) within(share float64) *table {
	t := *q.table
	t.options = t.options.scaled(share)
	return &t
}

// onStrip looks for the shortest layout and stops as soon as one is short
// enough.
func (q *question) onStrip(s setting, share float64) (*spread, error) {
	t := q.within(share)
	if !s.isSingle() {
		found, _, err := t.spread(s.lay)
		if found == nil {
			return nil, err
		}
		return q.keep(s.lay, found), nil
	}
	t.options.enough = s.length
	one, _, err := t.solve(s.lay, s.bed, s.templates, 1)
	if one == nil {
		return nil, err
	}
	q.strips[s.lay] = one.layout
	return q.keep(s.lay, q.spreadOf(*one)), nil
}

func (q *question) spreadOf(one lain) *spread {
	found := spreadOf(q.cloth, one)
	found.bound = one.bound
	return found
}

// onSheet looks for a layout on the length that there is.
func (q *question) onSheet(s setting, share float64) (*spread, error) {
	if q.ctx.Err() != nil {
		return nil, nil
	}
	if !s.isSingle() { // its beds have no length of their own: search longer
		return q.onStrip(s, share)
	}
	problem, err := problemOf(q.cloth, s.bed, s.templates)
	if err != nil {
		return nil, err
	}
	sheet, err := q.sheet(s, problem)
	if err != nil {
		return nil, err
	}
	t := q.within(share)
	search := t.budget(1)
	if warm, ok := q.strips[s.lay]; ok {
		search.Start = &warm
	}
	result, err := nest.Solve(t.ctx, sheet, search)
	if err != nil || !result.Fits {
		return nil, err
	}
	laid := result.Layout
	laid.Length = lengthOf(problem, laid)
	if err := verify.Layout(problem, laid); err != nil {
		return nil, fmt.Errorf("%w: the layout on the remnant failed its check and is not shown: %w", ErrInternal, err)
	}
	found := q.spreadOf(lain{bed: s.bed, templates: s.templates, problem: problem, layout: laid, bound: bound.Length(problem)})
	return q.keep(s.lay, found), nil
}

// sheet is the problem on the length that there is, with the flaws on it.
func (q *question) sheet(s setting, problem layout.Problem) (layout.Problem, error) {
	zones, err := s.bed.zones(q.cloth, s.length)
	problem.Length, problem.Zones = s.length, zones
	return problem, err
}

// tidied pushes a layout together: so that what is left of the cloth is in one
// piece, or so that the closest try is as close as it can be.
func (q *question) tidied(found *spread) *spread {
	if len(found.beds) != 1 || q.ctx.Err() != nil || q.options.Untidied {
		return found
	}
	one := found.beds[0]
	t := q.within(tidyingShare)
	search := t.budget(1)
	search.Start = &one.layout
	result, err := nest.Solve(t.ctx, one.problem, search)
	if err != nil || result.Layout.Length >= one.layout.Length || verify.Layout(one.problem, result.Layout) != nil {
		return found
	}
	one.layout = result.Layout
	return q.spreadOf(one)
}

// enough makes the plan of a layout that fits.
func (q *question) enough(out RemnantFit, lay Lay, found *spread) (RemnantFit, error) {
	var err error
	if out.Plan, err = q.plan(lay, q.tidied(found)); err != nil {
		return RemnantFit{}, err
	}
	out.Answer = Enough
	out.Spare = out.Plan.spare(q.usable)
	return out, nil
}

// plan of a lay on the remnant, checked like any other.
func (q *question) plan(lay Lay, found *spread) (LayPlan, error) {
	plan := LayPlan{Cloth: q.cloth, Asked: q.asked, Lay: lay, Plies: lay.Plies(), FoldedIn: found.depth}
	plan.fill(found.beds)
	if err := plan.setBound(found.bound); err != nil {
		return LayPlan{}, err
	}
	plan.Notes = nil
	if q.fits(found) && !lay.isAcross() {
		plan.Zones = nil // of all the cloth that there is, not of the pieces' length alone
		for _, one := range found.beds {
			plan.Zones = append(plan.Zones, one.zonesWithin(q.usable)...)
		}
	}
	if q.fits(found) {
		plan.Buy = q.remnant.Length
		plan.Need = min(plan.Need, plan.Buy)
		left := q.remnant.Length - purchase.BeforeWetting(q.cloth.Shrinkage, plan.Taken)
		if left < leastStraightening && len(q.remnant.Offcuts) == 0 {
			plan.Notes = append(plan.Notes, fmt.Sprintf("Only %s of the length are to spare, and straightening the cut ends takes %s: "+
				"check that both ends are cut along a thread.", q.cloth.Say(left), straightening(q.cloth)))
		}
	}
	if len(q.remnant.Offcuts) > 1 {
		plan.Offcuts = q.remnant.Offcuts
		plan.Notes = append(plan.Notes, rowNote)
	}
	if err := plan.Check(q.asked); err != nil {
		return LayPlan{}, fmt.Errorf("%w: the lay %s broke a rule of the trade and is not shown: %w", ErrInternal, lay, err)
	}
	return plan, nil
}
