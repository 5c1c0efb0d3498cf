package plan

import (
	"math"

	"ellwand/fabric/bed"
	"ellwand/fabric/lay"
	"ellwand/fabric/rules"
	"ellwand/nest/bound"
	"ellwand/nest/verify"
)

// findLay finds a layout of a lay: that of the kept ones where they come from the
// same search, otherwise the shorter of a kept one and what a search finds.
func (t *Planner) findLay(kind lay.Kind) (found *SolvedLay, why, err error) {
	kept := t.Rebuilt(kind)
	if kept != nil && t.Options.Searched {
		return kept, nil, nil
	}
	found, why, err = t.SolveLay(kind)
	if err == nil && kept != nil && (found == nil || kept.Taken < found.Taken) {
		t.improved = true
		return kept, nil, nil
	}
	return found, why, err
}

// Rebuilt lays a kept plan of a lay anew, from where each piece lies in it, on a repeat
// also where its match points do, and nothing else: outlines, lengths and bounds are
// those of the pieces asked, and the layout is verified. It is the shortest of several.
// Nil when there is none, or when none is a layout of these pieces.
func (t *Planner) Rebuilt(kind lay.Kind) *SolvedLay {
	var best *SolvedLay
	for _, plan := range t.Options.Kept {
		if plan.Lay != kind {
			continue
		}
		var found *SolvedLay
		if kind == lay.SelvedgeIn || kind == lay.InStretches {
			for _, back := range t.ends() {
				if found == nil {
					found = t.rebuiltInTwo(plan, back)
				}
			}
		} else {
			found = t.rebuiltInOne(plan)
		}
		if found != nil && (best == nil || found.Taken < best.Taken) {
			best = found
		}
	}
	return best
}

func (t *Planner) rebuiltInOne(plan lay.Plan) *SolvedLay {
	one, ok := t.rebuiltBed(plan, bed.Of(t.Cloth, plan.Lay), t.Wanted)
	if !ok {
		return nil
	}
	found := LayOf(t.Cloth, one)
	found.Bound = t.boundOf(plan.Lay, one)
	return found
}

// rebuiltInTwo shares the pieces out between the beds as they lie in the plan, those
// that go one way pointing back to the cut end or away from it.
func (t *Planner) rebuiltInTwo(plan lay.Plan, back bool) *SolvedLay {
	double, single := bed.Of(t.Cloth, lay.FoldedAlong), bed.Of(t.Cloth, lay.Open)
	if plan.Lay == lay.SelvedgeIn {
		if !(plan.FoldedIn > 0 && plan.FoldedIn < t.Cloth.Width) {
			return nil
		}
		double, single = bed.FoldedIn(t.Cloth, plan.FoldedIn)
	}
	if double.Width <= 0 || single.Width <= 0 {
		return nil
	}
	double.PointBack, single.PointBack = back, back
	choices, ok := choicesFor(t.strict(), double, single, t.Wanted)
	if !ok {
		return nil
	}
	shared, _ := t.sharedIn(plan, choices)
	for i, c := range choices {
		if shared[i] < c.least || shared[i] > c.most {
			return nil
		}
	}
	if _, _, ok := shared.lengths(choices, double, single); !ok {
		return nil
	}
	parts := shared.split(choices)
	first, ok := t.rebuiltBed(partOfPlan(plan, 0), double, parts.double)
	if !ok {
		return nil
	}
	if plan.Lay == lay.InStretches {
		single = bed.OpenAfter(t.Cloth, first.Layout.Length)
		single.PointBack = back
	}
	second, ok := t.rebuiltBed(partOfPlan(plan, 1), single, parts.single)
	if !ok {
		return nil
	}
	found := LayOf(t.Cloth, first, second)
	if plan.Lay == lay.SelvedgeIn {
		found.Depth = plan.FoldedIn
	}
	found.Bound = t.OpenBound()
	return found
}

// rebuiltBed lays the pieces of a plan on a bed. False when that is no layout.
func (t *Planner) rebuiltBed(plan lay.Plan, b bed.Bed, wanted []rules.Demand) (SolvedBed, bool) {
	c := t.Cloth
	if plan.Lay == lay.SelvedgeIn || plan.Lay == lay.InStretches {
		c = t.strict()
	}
	templates, err := rules.TemplatesOf(c, b, wanted)
	if err != nil {
		return SolvedBed{}, false
	}
	problem, matched, err := rules.ProblemAt(t.Cloth, b, templates, t.joins(), t.placesIn(plan, b, templates))
	if err != nil || t.lessMatched(matched) != nil {
		return SolvedBed{}, false
	}
	for _, l := range plan.Pieces {
		if !(math.Abs(l.X) < farthest && math.Abs(l.Y) < farthest && math.Abs(l.Turn) <= 360) {
			return SolvedBed{}, false
		}
	}
	laid, ok := relaid(plan, b, t.Asked, templates, problem)
	if !ok || verify.Layout(problem, laid) != nil {
		return SolvedBed{}, false
	}
	return SolvedBed{
		Bed: b, Templates: templates, Problem: problem, Layout: laid, Bound: bound.Length(problem), matched: matched,
	}, true
}

// farthest that a piece can lie from the corner of a lay, mm: a hundred bolts
// [source.OwnChoice].
const farthest = 1e7

// Bare is a plan with nothing but where each piece lies, as it is kept, by its name,
// garment and size, and where its match points lie on a repeat.
func Bare(plan lay.Plan) lay.Plan {
	out := lay.Plan{Lay: plan.Lay, FoldedIn: plan.FoldedIn, Places: plan.Places}
	for _, l := range plan.Pieces {
		out.Pieces = append(out.Pieces, lay.Laid{
			Name: l.Name, Garment: l.Garment, Size: l.Size, OnFold: l.OnFold, Bed: l.Bed,
			Mirrored: l.Mirrored, Turn: l.Turn, X: l.X, Y: l.Y,
		})
	}
	return out
}
