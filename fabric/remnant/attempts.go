package remnant

import (
	"fmt"
	"math"

	"ellwand/fabric/lay"
	"ellwand/fabric/plan"
	"ellwand/fabric/purchase"
	"ellwand/fabric/rules"
	"ellwand/nest/bound"
	"ellwand/nest/layout"
	"ellwand/nest/verify"
	"ellwand/pieces/geometry"
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
	try   func(setting, float64) (*plan.SolvedLay, error)
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
		area += float64(math.Abs(geometry.Area(t.Outline)) * float64(t.Copies))
	}
	return area / (s.bed.Width * s.length)
}

// search makes the attempts until one finds a layout.
func (q *question) search(settings []setting) (lay.Kind, *plan.SolvedLay, error) {
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
	if s.lay == lay.Open {
		return 2
	}
	return 1
}

// fits reports whether a lay takes no more than there is.
func (q *question) fits(s *plan.SolvedLay) bool { return s.Taken <= q.usable*(1+fitShare) }

// fitShare absorbs the rounding of a length, as a share: 1 um on 1 m
// [source.OwnChoice].
const fitShare = 1e-6

func (q *question) keep(kind lay.Kind, found *plan.SolvedLay) *plan.SolvedLay {
	if q.closest == nil || found.Taken < q.closest.Taken {
		q.closest, q.lay = found, kind
	}
	q.Note(found)
	if q.fits(found) {
		return found
	}
	return nil
}

// within is the planner with a share of the budget.
func (q *question) within(share float64) *plan.Planner {
	t := *q.Planner
	t.Options = t.Options.Scaled(share)
	return &t
}

// onStrip looks for the shortest layout and stops as soon as one is short
// enough.
func (q *question) onStrip(s setting, share float64) (*plan.SolvedLay, error) {
	t := q.within(share)
	if !s.isSingle() {
		found, _, err := t.SolveLay(s.lay)
		if found == nil {
			return nil, err
		}
		return q.keep(s.lay, found), nil
	}
	t.Options.Enough = s.length
	one, _, err := t.Solve(s.lay, s.bed, s.templates, 1)
	if one == nil {
		return nil, err
	}
	q.strips[s.lay] = one.Layout
	return q.keep(s.lay, q.layOf(*one)), nil
}

func (q *question) layOf(one plan.SolvedBed) *plan.SolvedLay {
	found := plan.LayOf(q.Cloth, one)
	found.Bound = one.Bound
	return found
}

// onSheet looks for a layout on the length that there is.
func (q *question) onSheet(s setting, share float64) (*plan.SolvedLay, error) {
	if q.Ctx.Err() != nil {
		q.Left(share)
		return nil, nil
	}
	if !s.isSingle() { // its beds have no length of their own: search longer
		return q.onStrip(s, share)
	}
	problem, err := rules.ProblemOf(q.Cloth, s.bed, s.templates)
	if err != nil {
		return nil, err
	}
	sheet, err := q.sheet(s, problem)
	if err != nil {
		return nil, err
	}
	t := q.within(share)
	search := t.Budget(1)
	if warm, ok := q.strips[s.lay]; ok {
		search.Start = &warm
	}
	result, err := t.Run(sheet, search)
	if err != nil || !result.Fits {
		return nil, err
	}
	laid := result.Layout
	laid.Length = plan.LengthOf(problem, laid)
	if err := verify.Layout(problem, laid); err != nil {
		return nil, fmt.Errorf("%w: the layout on the remnant failed its check and is not shown: %w", plan.ErrInternal, err)
	}
	found := q.layOf(plan.SolvedBed{Bed: s.bed, Templates: s.templates, Problem: problem, Layout: laid,
		Bound: bound.Length(problem)})
	return q.keep(s.lay, found), nil
}

// sheet is the problem on the length that there is, with the flaws on it.
func (q *question) sheet(s setting, problem layout.Problem) (layout.Problem, error) {
	zones, err := rules.Zones(s.bed, q.Cloth, s.length)
	problem.Length, problem.Zones = s.length, zones
	return problem, err
}

// tidied pushes a layout together: so that what is left of the cloth is in one
// piece, or so that the closest try is as close as it can be.
func (q *question) tidied(found *plan.SolvedLay) *plan.SolvedLay {
	if q.stay() || len(found.Beds) != 1 || q.Ctx.Err() != nil || q.Options.Untidied || q.Options.Searched &&
		q.Work.Due == 0 {
		return found
	}
	one := found.Beds[0]
	t := q.within(tidyingShare)
	search := t.Budget(1)
	search.Start = &one.Layout
	result, err := t.Run(one.Problem, search)
	if err != nil || result.Layout.Length >= one.Layout.Length || verify.Layout(one.Problem, result.Layout) != nil {
		return found
	}
	one.Layout = result.Layout
	return q.layOf(one)
}

// enough makes the plan of a layout that fits.
func (q *question) enough(out Result, kind lay.Kind, found *plan.SolvedLay) (Result, error) {
	var err error
	if out.Plan, err = q.plan(kind, q.tidied(found)); err != nil {
		return Result{}, err
	}
	out.Answer = Enough
	out.Spare = spareOf(out.Plan, q.usable)
	return out, nil
}

// plan of a lay on the remnant, checked like any other.
func (q *question) plan(kind lay.Kind, found *plan.SolvedLay) (lay.Plan, error) {
	p := lay.Plan{Cloth: q.Cloth, Asked: q.Asked, Lay: kind, Plies: kind.Plies(), FoldedIn: found.Depth}
	plan.Fill(&p, found.Beds)
	if err := plan.SetBound(&p, found.Bound); err != nil {
		return lay.Plan{}, err
	}
	p.Notes = nil
	plan.NoteFromLower(&p)
	plan.FillMatches(&p, found)
	if q.fits(found) && !kind.IsAcross() {
		p.Zones = nil // of all the cloth that there is, not of the pieces' length alone
		for _, one := range found.Beds {
			p.Zones = append(p.Zones, one.ZonesWithin(q.usable)...)
		}
	}
	if q.fits(found) {
		p.Buy, p.There = q.remnant.Length, q.remnant.Length
		p.Need = min(p.Need, p.Buy)
		left := q.remnant.Length - purchase.BeforeWetting(q.Cloth.Shrinkage, p.Taken+q.Cloth.HandLaying.Of(p.Taken))
		if left < plan.LeastStraightening && len(q.remnant.Offcuts) == 0 {
			p.Notes = append(p.Notes, lay.Note{Of: lay.LittleSpare, Length: left})
		}
	}
	if len(q.remnant.Offcuts) > 1 {
		p.Offcuts = q.remnant.Offcuts
		p.Notes = append(p.Notes, lay.Note{Of: lay.InARow})
	}
	if err := q.Lines.Plan(p, q.Asked); err != nil {
		return lay.Plan{}, fmt.Errorf("%w: the lay %s broke a rule of the trade and is not shown: %w", plan.ErrInternal,
			kind, err)
	}
	return p, nil
}
