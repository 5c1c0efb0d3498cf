package app

import (
	"context"

	"ellwand/cmd/ellwand/failure"
	"ellwand/cmd/ellwand/job"
	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/fabric/plan"
	"ellwand/fabric/quote"
	"ellwand/nest"
)

// Estimate finds the lays of all cloths, in the order given. No width takes more
// than a narrower one of the same cloth: where it came out so, what was found on the
// narrower one is laid on it.
func Estimate(ctx context.Context, work *job.Work, cloths []cloth.Cloth, search Search, watch Watch) ([]Estimated,
	error) {
	doubts, err := newDoubter(ctx, work, search)
	if err != nil {
		return nil, err
	}
	solver := newSolver(search, Watch{})
	out, problems, answers := make([]Estimated, len(cloths)), make([]problem, len(cloths)), make([]answer, len(cloths))
	for i, c := range cloths {
		found, err := solver.layOn(ctx, work, c, plan.Options{}, watch)
		if err != nil {
			return nil, err
		}
		problems[i] = problemOf(c, work.PiecesOf(c.Name))
		problems[i].cloth.Name = c.Name
		answers[i] = answer{need: found.Requirement, ended: found.Ended, found: quote.Found{Kept: found.Kept}}
	}
	if err := solver.settle(ctx, problems, answers, widthsInPairs(cloths)); err != nil {
		return nil, err
	}
	for i, c := range cloths {
		if out[i], err = estimated(work, c, finding{answers[i].need, answers[i].ended, answers[i].found.Kept}); err != nil {
			return nil, err
		}
	}
	for i, found := range out {
		out[i].Range = doubts.rangeOf(found.Cloth, found.Amount, found.Ended.Early)
		if err := out[i].Range.Proven(found.Cloth, found.Amount); err != nil {
			return nil, failure.Of(err)
		}
	}
	return out, nil
}

// layOn finds the lays of one cloth: of all its garments together, and where those are
// all that is asked also from each by itself.
func (s *solver) layOn(ctx context.Context, work *job.Work, c cloth.Cloth, options plan.Options,
	watch Watch) (Estimated, error) {
	options.Progress, options.Workers = watch.on(c), s.search.Workers
	if watch.Better != nil {
		options.Better = func(kind lay.Kind, plan func() (lay.Plan, bool)) { watch.Better(c, kind, plan) }
	}
	all := work.PiecesOf(c.Name)
	got, err := s.find(ctx, c, all, options)
	if err != nil {
		return Estimated{}, clothError(work, c, err)
	}
	if len(options.Lays) == 0 && len(s.search.Fix) == 0 && len(c.InItsWidth().ByHand) == 0 {
		whole := problem{cloth: c, all: all}
		settled, err := s.together(ctx, work, c.Name, whole, answer{need: got.Requirement, ended: got.ended,
			found: quote.Found{Kept: got.kept}})
		if err != nil {
			return Estimated{}, clothError(work, c, err)
		}
		got = finding{settled.need, settled.ended, settled.found.Kept}
	}
	return estimated(work, c, got)
}

// estimated is what was found with its amount.
func estimated(work *job.Work, c cloth.Cloth, got finding) (Estimated, error) {
	amount := quote.AmountOf(quote.Offer{Cloth: c}, quote.FoundIn(got.Requirement))
	if err := (quote.Cell{Offer: quote.Offer{Cloth: c}, Amount: amount}).Proven(Units(work)); err != nil {
		return Estimated{}, failure.Of(err)
	}
	return Estimated{Requirement: got.Requirement, Amount: amount, Ended: got.ended, Kept: got.kept}, nil
}

// on tells of the layouts on one cloth.
func (w Watch) on(c cloth.Cloth) func(lay.Kind, nest.Progress) {
	if w.Found == nil {
		return nil
	}
	return func(kind lay.Kind, progress nest.Progress) { w.Found(c, kind, progress) }
}
