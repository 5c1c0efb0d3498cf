package remnant

import (
	"context"
	"fmt"
	"slices"

	"ellwand/fabric/bed"
	"ellwand/fabric/check"
	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/fabric/plan"
	"ellwand/fabric/rules"
	"ellwand/nest/layout"
	"ellwand/pieces"
)

// Fit asks whether all pieces can be cut from a remnant: in one of the lays
// asked, or, when none is named, folded along the warp or open. An open lay
// takes whatever any other does, so those two are enough to ask. The
// effort is for all of it together.
//
// It stops at the first layout found, and keeps a little of the time to push
// it together, so that what is left over is in one piece. When the context is
// cancelled it answers with what it has. Pieces that are fixed stay where they lie, in
// their lay alone. Errors: a cloth or a piece that is not sound, a length that is not
// positive, or a fixed piece that cannot stay.
func Fit(ctx context.Context, remnant Remnant, all []pieces.Piece, options plan.Options) (Result, error) {
	if err := plan.CheckJob(remnant.Cloth, all); err != nil {
		return Result{}, err
	}
	if !cloth.IsLength(remnant.Length) || remnant.Length == 0 {
		return Result{}, fmt.Errorf("%s: a length of %s is no cloth; give the length of the piece that there is, such "+
			"as 1.35 m", remnant.Cloth, remnant.Cloth.Say(remnant.Length))
	}
	wanted, err := rules.DemandsOf(rules.Enlarged(remnant.Cloth, all))
	if err != nil {
		return Result{}, err
	}
	switch {
	case len(options.Fixed.Pieces) > 0:
		options.Lays = []lay.Kind{options.Fixed.Lay}
	case len(options.Lays) == 0:
		options.Lays = []lay.Kind{lay.FoldedAlong, lay.Open}
	}
	q := &question{
		Planner: &plan.Planner{Ctx: ctx, Cloth: remnant.Cloth, Asked: all, Wanted: wanted, Options: options,
			Lines: &check.Lines{},
			Work:  &plan.Work{}},
		remnant: remnant, usable: remnant.usableLength(), strips: map[lay.Kind]layout.Layout{},
	}
	out, err := q.answer()
	out.Work = *q.Work
	return out, err
}

func (q *question) answer() (Result, error) {
	out := Result{Usable: q.usable}
	if q.usable <= 0 {
		out.Answer, out.Proof = TooLittle, []lay.Reason{{Of: lay.NothingLeft, Room: q.remnant.Length}}
		return out, nil
	}
	settings := q.settings(&out)
	if len(settings) == 0 {
		out.Answer, out.Proof = TooLittle, out.Reasons[len(out.Reasons)-1].Why
		return out, nil
	}
	lay, found := q.kept(settings)
	out.Kept = found != nil
	var err error
	switch {
	case found != nil || q.closest != nil && q.Options.Searched:
	case q.stay():
		lay, found, err = q.round()
	default:
		lay, found, err = q.search(settings)
	}
	switch {
	case err != nil:
		return Result{}, err
	case found != nil:
		return q.enough(out, lay, found)
	case q.closest != nil:
		closer := q.tidied(q.closest)
		if q.fits(closer) {
			return q.enough(out, q.lay, closer)
		}
		q.closest = closer
		if out.Plan, err = q.plan(q.lay, q.closest); err != nil {
			return Result{}, err
		}
		out.Over = Overhangs(out.Plan, q.usable)
	}
	return out, nil
}

// settings leaves out the lays that are proven impossible.
func (q *question) settings(out *Result) []setting {
	var left []setting
	for _, kind := range lay.Kinds() {
		if !slices.Contains(q.Options.Lays, kind) {
			continue
		}
		s := setting{cloth: q.Cloth, lay: kind, length: q.usable}
		var why []lay.Reason
		if s.isSingle() {
			s, why = q.single(kind)
		} else if least := q.OpenBound(); least > q.usable*(1+plan.ProofMargin) {
			why = []lay.Reason{{Of: lay.LengthShort, Takes: least, Room: q.usable}}
		}
		if len(why) > 0 {
			out.Reasons = append(out.Reasons, LayReason{kind, why})
			continue
		}
		left = append(left, s)
	}
	// Reasons end with that of the open lay, which says the most.
	slices.SortStableFunc(out.Reasons, func(a, b LayReason) int { return int(b.Lay) - int(a.Lay) })
	slices.SortStableFunc(left, func(a, b setting) int { return int(b.lay) - int(a.lay) })
	return left
}

func (q *question) single(kind lay.Kind) (setting, []lay.Reason) {
	s := setting{cloth: q.Cloth, lay: kind, bed: bed.Of(q.Cloth, kind), length: bed.LengthWithin(q.Cloth, kind, q.usable)}
	var err error
	if s.templates, err = rules.TemplatesOf(q.Cloth, s.bed, q.Wanted); err != nil {
		return s, lay.Reasons(err)
	}
	problem, err := rules.ProblemOf(q.Cloth, s.bed, s.templates)
	if err != nil {
		return s, lay.Reasons(err)
	}
	sheet, err := q.sheet(s, problem)
	if err != nil {
		return s, lay.Reasons(err)
	}
	return s, misfit(q.Ctx, s, sheet)
}
