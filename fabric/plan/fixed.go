package plan

import (
	"fmt"

	"ellwand/fabric/bed"
	"ellwand/fabric/lay"
	"ellwand/fabric/rules"
	"ellwand/nest"
	"ellwand/nest/bound"
	"ellwand/nest/layout"
	"ellwand/nest/verify"
)

// hasFixed reports whether pieces stay where they lie.
func (o Options) hasFixed() bool { return len(o.Fixed.Pieces) > 0 }

// aroundFixed lays the rest of the pieces around those that stay where they are. It
// returns the reason when they cannot stay.
func (t *Planner) aroundFixed(kind lay.Kind) (found *SolvedLay, why, err error) {
	fixed := t.Options.Fixed
	b := bed.Of(t.Cloth, kind)
	templates, why := rules.TemplatesOf(t.Cloth, b, t.Wanted)
	if why != nil {
		return nil, why, nil
	}
	problem, matched, why := rules.ProblemAt(t.Cloth, b, templates, t.joins(), t.placesIn(fixed, b, templates))
	if why != nil {
		return nil, why, nil
	}
	start, why := t.fixedIn(fixed, b, templates, problem)
	if why != nil {
		return nil, why, nil
	}
	one := SolvedBed{Bed: b, Templates: templates, Problem: problem, Bound: bound.Length(problem), matched: matched}
	if one.Layout, err = t.laidAround(kind, one, start, t.Budget(1)); err != nil {
		return nil, nil, err
	}
	found = LayOf(t.Cloth, one)
	found.Bound = t.boundOf(kind, one)
	return found, nil, nil
}

// fixedIn places the pieces that stay where they are, and verifies that they can.
func (t *Planner) fixedIn(fixed lay.Plan, b bed.Bed, templates []rules.Template,
	problem layout.Problem) (layout.Layout, error) {
	used, sources := make([]int, len(templates)), lay.SourcesIn(t.Asked)
	var out layout.Layout
	for _, l := range fixed.Pieces {
		l.X, l.Y = l.X-b.At[0], l.Y-b.At[1]
		at, ok := relaidPiece(l, sources.Of(l), templates, problem, used)
		if !ok {
			return out, lay.Reason{Of: lay.FixedTurned, Pieces: []string{l.Name}}
		}
		used[at.Item]++
		out.Placements = append(out.Placements, at)
	}
	return out, t.whyNotThere(problem, out.Placements)
}

// whyNotThere says why pieces cannot lie where they are to stay; nil when they can.
func (t *Planner) whyNotThere(problem layout.Problem, placed []layout.Placement) error {
	for _, at := range placed {
		if !canLie(problem, []layout.Placement{at}) {
			return lay.Reason{Of: lay.FixedOnFlaw, Pieces: []string{problem.Items[at.Item].Name}}
		}
	}
	if len(placed) > 0 && !canLie(problem, placed) {
		return lay.Reason{Of: lay.FixedTooNear}
	}
	return nil
}

// canLie verifies some placements, with nothing else on the cloth.
func canLie(problem layout.Problem, placed []layout.Placement) bool {
	alone, index := problem, map[int]int{}
	alone.Items = nil
	var checked layout.Layout
	for _, at := range placed {
		item, known := index[at.Item]
		if !known {
			item = len(alone.Items)
			index[at.Item] = item
			one := problem.Items[at.Item]
			one.Copies = 0
			alone.Items = append(alone.Items, one)
		}
		at.Item, at.Copy = item, alone.Items[item].Copies
		alone.Items[item].Copies++
		checked.Placements = append(checked.Placements, at)
	}
	checked.Length = LengthOf(alone, checked)
	return verify.Layout(alone, checked) == nil
}

// laidAround searches for places for what is missing from a start that stays as it is.
func (t *Planner) laidAround(kind lay.Kind, one SolvedBed, start layout.Layout, search nest.Options) (layout.Layout,
	error) {
	problem := one.Problem
	missing := -len(start.Placements)
	for _, item := range problem.Items {
		missing += item.Copies
	}
	if missing == 0 {
		start.Length = LengthOf(problem, start)
		return start, nil
	}
	search.Progress, search.Bound = t.telling(kind, one), one.Bound
	search.Start, search.Locked = &start, make([]bool, len(start.Placements))
	for i := range search.Locked {
		search.Locked[i] = true
	}
	result, err := t.Run(problem, search)
	if err != nil {
		return layout.Layout{}, err
	}
	laid := result.Layout
	laid.Length = LengthOf(problem, laid)
	if err := verify.Layout(problem, laid); err != nil {
		return layout.Layout{}, fmt.Errorf("%w: the layout of the lay %s failed its check and is not shown: %w",
			ErrInternal, kind, err)
	}
	return laid, nil
}
