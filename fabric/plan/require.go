// Package plan finds the length of cloth that pieces need in every lay, and where
// each of them lies. Every plan is proven before anybody sees it.
package plan

import (
	"context"

	"ellwand/fabric/check"
	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/fabric/rules"
	"ellwand/pieces"
)

// Require finds the length of cloth that all pieces need, in every lay that
// is possible, each solved and verified. Pieces whose Cloth is another one
// must be left out by the caller.
//
// The open lay is searched last and starts from the others, opened out flat, so
// that it is never longer than any of them. A gap between pieces is the
// exception: it is not kept along a fold or a straight cut across, which is
// slit, so that the open lay may need more.
//
// When the context is cancelled it returns the best found so far, and begins no
// other lay if there is one already. It fails,
// with a sentence for the maker, when the cloth or a piece is not sound or
// when no lay is possible.
func Require(ctx context.Context, c cloth.Cloth, all []pieces.Piece, options Options) (Requirement, error) {
	if err := CheckJob(c, all); err != nil {
		return Requirement{}, err
	}
	if options.hasFixed() {
		options.Lays = []lay.Kind{options.Fixed.Lay}
	}
	wanted, err := rules.DemandsOf(rules.Enlarged(c, all))
	if err != nil {
		return Requirement{}, err
	}
	t := &Planner{Ctx: ctx, Cloth: c, Asked: all, Wanted: wanted, Options: options, Work: &Work{}, Lines: linesOf(wanted)}
	plans := map[lay.Kind]lay.Plan{}
	for _, kind := range searchOrder {
		if !options.wants(kind) {
			continue
		}
		if endedWithOne(ctx, plans) {
			t.Left(t.share(kind))
			continue
		}
		plan, err := t.planLay(kind)
		if err != nil {
			return Requirement{}, err
		}
		plans[kind] = plan
	}
	out := Requirement{Cloth: c, Chosen: -1}
	for _, kind := range lay.Kinds() {
		if plan, tried := plans[kind]; tried {
			out.Lays = append(out.Lays, plan)
		}
	}
	for _, plan := range out.Lays {
		if plan.Possible() {
			out.Found = append(out.Found, plan)
		}
	}
	out.compare()
	out.Work, out.Improved = *t.Work, t.improved
	out, err = out.choose()
	if err != nil || c.Repeat.IsPlain() {
		return out, err
	}
	out.Matching, out.FoundPlain, err = t.costOfMatching(out.Lays[out.Chosen])
	return out, err
}

// linesOf the pieces as they are cut, derived for the proof before the search begins.
func linesOf(wanted []rules.Demand) *check.Lines {
	asCut := make([]pieces.Piece, len(wanted))
	for i, d := range wanted {
		asCut[i] = d.Piece
	}
	out := &check.Lines{}
	out.Learn(asCut)
	return out
}

// endedWithOne reports that the search was ended when a lay had been found: the
// lays still to come are left out.
func endedWithOne(ctx context.Context, plans map[lay.Kind]lay.Plan) bool {
	if ctx.Err() == nil {
		return false
	}
	for _, plan := range plans {
		if plan.Possible() {
			return true
		}
	}
	return false
}

// searchOrder has the open lay last: whatever the others find, opened out, is
// a layout of it.
var searchOrder = []lay.Kind{lay.FoldedAlong, lay.FoldedAcross, lay.CutAcross, lay.SelvedgeIn, lay.BothSelvedgesIn,
	lay.InStretches, lay.Open}

// costOfMatching lays the pieces on plain cloth in the same lay. The matched
// layout is one of plain cloth too, and is where that search starts, so that
// matching never comes out as a saving. It returns as well the lay on plain cloth.
func (t *Planner) costOfMatching(matched lay.Plan) (*Matching, []lay.Plan, error) {
	plain := *t
	plain.Cloth = t.Cloth.Plain()
	plain.Options.WarmStarts, plain.Options.Kept = []lay.Plan{matched}, t.Options.KeptPlain
	plain.solved, plain.shortest = nil, nil
	plan, err := plain.planLay(matched.Lay)
	if err != nil {
		return nil, nil, err
	}
	var found []lay.Plan
	out := &Matching{Plain: matched.Taken, Matched: matched.Taken}
	if plan.Possible() {
		out.Plain = min(plan.Taken, matched.Taken)
		found = append(found, plan)
	}
	repeat := t.Cloth.Repeat
	out.RuleOfThumb = out.Plain + repeat.Along
	if repeat.Along > 0 {
		out.Repeats = out.Extra() / repeat.Along
	} else {
		out.RuleOfThumb = out.Plain + repeat.Across
	}
	return out, found, nil
}
