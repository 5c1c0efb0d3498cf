package plan

import (
	"ellwand/fabric/bed"
	"ellwand/fabric/lay"
	"ellwand/fabric/rules"
	"ellwand/nest/bound"
	"ellwand/nest/layout"
)

// This file lays the rest of the pieces round those that stay in a lay of two beds. How far
// the selvedge is folded in stays; where the folded stretch ends may change, up to the
// first piece that stays on the open one.

// aroundFixedInTwo shares what does not stay out between both beds, in the ways that look
// shortest, and lays it round what stays.
func (t *Planner) aroundFixedInTwo(kind lay.Kind) (*SolvedLay, error, error) {
	fixed := t.Options.Fixed
	double, single, why := t.bedsInTwo(kind, fixed.FoldedIn)
	if why != nil {
		return nil, why, nil
	}
	choices, ok := choicesFor(t.strict(), double, single, t.Wanted)
	if !ok {
		return nil, lay.Reason{Of: lay.NotShared}, nil
	}
	if why := t.whereTheyStay(fixed, choices); why != nil {
		return nil, why, nil
	}
	var best *SolvedLay
	why = lay.Reason{Of: lay.NotShared}
	all := t.shortestGuessed(t.arrangements(kind, double, single, fixed.FoldedIn, choices))
	for _, a := range all {
		found, reason, err := t.bedsAroundFixed(a, fixed, 1/float64(len(all)))
		if err != nil {
			return nil, nil, err
		}
		if reason != nil {
			why = reason
		}
		if found != nil && (best == nil || found.Taken < best.Taken) {
			best = found
		}
	}
	if best == nil {
		return nil, why, nil
	}
	best.Bound = t.OpenBound()
	return best, nil, nil
}

// bedsInTwo are those of a lay of two parts, a selvedge being folded in that far.
func (t *Planner) bedsInTwo(kind lay.Kind, foldedIn float64) (double, single bed.Bed, why error) {
	double, single = bed.FoldedBefore(t.Cloth), bed.OpenAfter(t.Cloth, 0)
	if kind == lay.SelvedgeIn {
		if !(foldedIn > 0 && foldedIn < t.Cloth.Width) {
			return double, single, lay.Reason{Of: lay.FixedNowhereIn}
		}
		double, single = bed.FoldedIn(t.Cloth, foldedIn)
	}
	if double.Width <= 0 || single.Width <= 0 {
		return double, single, lay.Reason{Of: lay.NothingDouble}
	}
	return double, single, nil
}

// whereTheyStay leaves the choices that keep every piece that stays on its bed.
func (t *Planner) whereTheyStay(fixed lay.Plan, choices []choice) error {
	sources := lay.SourcesIn(t.Asked)
	for _, l := range fixed.Pieces {
		if sources.Of(l) < 0 {
			return lay.Reason{Of: lay.FixedTurned, Pieces: []string{l.Name}}
		}
	}
	double, single := t.sharedIn(fixed, choices)
	for i := range choices {
		c := &choices[i]
		c.least = max(c.least, double[i])
		c.most = min(c.most, (c.Cut-single[i])/c.step*c.step)
		if c.least > c.most {
			return lay.Reason{Of: lay.FixedTurned, Pieces: []string{c.Piece.Name}}
		}
	}
	return nil
}

// bedsAroundFixed lays both beds of an arrangement round what stays on each.
func (t *Planner) bedsAroundFixed(a arrangement, fixed lay.Plan, share float64) (found *SolvedLay, why, err error) {
	demands, beds := [][]rules.Demand{a.split.double, a.split.single}, []bed.Bed{a.double, a.single}
	behind, staying, why := t.bedWithFixed(a.single, a.split.single, partOfPlan(fixed, 1), lay.Places{})
	if why != nil {
		return nil, why, nil
	}
	limit, known := 0.0, lay.Places{}
	if a.lay == lay.InStretches {
		limit = firstOf(behind.Problem, staying)
	}
	if len(staying.Placements) > 0 {
		known = behind.matching(t.Cloth).Found(behind.Problem, staying)
	}
	var solved []SolvedBed
	for i, b := range beds {
		if i == 1 && a.lay == lay.InStretches {
			if len(staying.Placements) > 0 && solved[0].Layout.Length > limit {
				return nil, lay.Reason{Of: lay.FixedTooNear}, nil
			}
			b = bed.OpenAfter(t.Cloth, solved[0].Layout.Length)
			b.PointBack = a.single.PointBack
		}
		one, start, why := t.bedWithFixed(b, demands[i], partOfPlan(fixed, i), known)
		if why != nil {
			return nil, why, nil
		}
		search := t.Budget(share / 2)
		if i == 0 {
			search.Enough = limit
		}
		if one.Layout, err = t.laidAround(a.lay, one, start, search); err != nil {
			return nil, nil, err
		}
		solved, known = append(solved, one), one.matching(t.Cloth).Found(one.Problem, one.Layout)
	}
	found = LayOf(t.Cloth, solved...)
	found.Depth = a.depth
	return found, nil, nil
}

// bedWithFixed is a bed with nothing laid but what stays there. On a repeat, places are
// those of what stays, or where that is nothing those that are known.
func (t *Planner) bedWithFixed(b bed.Bed, wanted []rules.Demand, fixed lay.Plan, known lay.Places) (SolvedBed,
	layout.Layout, error) {
	templates, why := rules.TemplatesOf(t.strict(), b, wanted)
	if why != nil {
		return SolvedBed{}, layout.Layout{}, why
	}
	if len(fixed.Pieces) > 0 {
		known = t.placesIn(fixed, b, templates)
	}
	problem, matched, why := rules.ProblemAt(t.Cloth, b, templates, t.joins(), known)
	if why != nil {
		return SolvedBed{}, layout.Layout{}, why
	}
	start, why := t.fixedIn(fixed, b, templates, problem)
	return SolvedBed{Bed: b, Templates: templates, Problem: problem, Bound: bound.Brief(problem), matched: matched}, start,
		why
}

// firstOf what stays on the open stretch is how long the folded one may be before it: beds
// lie a gap apart, as the pieces do. 0 where nothing stays there.
func firstOf(problem layout.Problem, start layout.Layout) float64 {
	first := 0.0
	for i, at := range start.Placements {
		if low := problem.Placed(at).Bound().Min[0]; i == 0 || low < first {
			first = low
		}
	}
	return first + pinTolerance
}
