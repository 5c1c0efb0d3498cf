package app

import (
	"cmp"
	"context"
	"slices"

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
	order := make([]int, len(cloths))
	for i := range order {
		order[i] = i
	}
	slices.SortStableFunc(order, func(a, b int) int { return cmp.Compare(cloths[a].Width, cloths[b].Width) })
	out, finder := make([]Estimated, len(cloths)), newFinder(search)
	shortest := map[string]Estimated{}
	for _, i := range order {
		c := cloths[i]
		found, err := finder.layOn(ctx, work, c, plan.Options{}, watch)
		if err != nil {
			return nil, err
		}
		// A repeat lies otherwise to the fold of another width.
		narrower, known := shortest[c.Name]
		if known && c.Repeat.IsPlain() && narrower.Length < found.Length {
			options := plan.Options{Known: narrower.Lays}
			if found, err = finder.layOn(ctx, work, c, options, watch); err != nil {
				return nil, err
			}
		}
		out[i], shortest[c.Name] = found, found
	}
	doubts := newDoubter(work, search)
	for i, found := range out {
		out[i].Range = doubts.rangeOf(found)
	}
	return out, nil
}

// layOn finds the lays of one cloth.
func (f finder) layOn(ctx context.Context, work *job.Work, c cloth.Cloth, options plan.Options, watch Watch) (Estimated,
	error) {
	options.Progress, options.Workers = watch.on(c), f.search.Workers
	got, err := f.find(ctx, c, work.PiecesOf(c.Name), options)
	if err != nil {
		return Estimated{}, clothError(work, c, err)
	}
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
