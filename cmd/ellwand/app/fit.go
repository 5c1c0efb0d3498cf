package app

import (
	"context"
	"fmt"

	"ellwand/cmd/ellwand/app/store"
	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/fabric/plan"
	"ellwand/fabric/remnant"
	"ellwand/fabric/words"
	"ellwand/pieces"
)

// fit asks whether a remnant is enough: from the store where that was asked before, or
// where what is kept of the cloth that is bought goes onto it; otherwise by searching.
func (f finder) fit(ctx context.Context, there remnant.Remnant, all []pieces.Piece,
	options plan.Options) (remnant.Result, error) {
	return f.fitFor(ctx, "a remnant", there, all, options)
}

// fitChanged does the same for something that was changed so that it may be enough, into
// which less work goes.
func (f finder) fitChanged(ctx context.Context, there remnant.Remnant, all []pieces.Piece, options plan.Options) (
	remnant.Result, error) {
	return f.fitFor(ctx, "a change", there, all, options)
}

func (f finder) fitFor(ctx context.Context, what string, there remnant.Remnant, all []pieces.Piece,
	options plan.Options) (remnant.Result, error) {
	there.Cloth = there.Cloth.Untouched() // a piece of cloth is asked about by itself
	if len(options.Fixed.Pieces) > 0 {
		// No other question shares its answer.
		options.Kept = []lay.Plan{f.search.broughtFor(there.Cloth.Name)}
		out, err := remnant.Fit(ctx, there, all, options)
		return out, words.Refused(there.Cloth, err)
	}
	by := store.Search{Seed: options.Seed, Effort: fmt.Sprint(options.Effort, options.Lays), Passes: options.Passes}
	key := store.Key(there.Cloth, all, what, there.Length, there.Offcuts, options.Passes)
	entry := f.store.Read(key)
	options.Kept = append(entry.Plans(), f.search.From...)
	if what == "a remnant" {
		bought := there.Cloth
		bought.Straighten = 0 // as where the job does not say it
		for _, c := range []cloth.Cloth{there.Cloth, bought} {
			options.Kept = append(options.Kept, f.store.Read(f.key(c, all)).Plans()...)
		}
	}
	options.Searched = entry.Has(by)
	out, err := remnant.Fit(ctx, there, all, options)
	if err != nil {
		return out, words.Refused(there.Cloth, err)
	}
	out.Kept = out.Kept && !(options.Searched && entry.IsOnlyOf(by))
	if out.Work.Due == 0 && options.Searched || len(out.Plan.Pieces) == 0 {
		return out, nil
	}
	out.Plan.Mark = markOf(out.Plan, all)
	result := store.Found{Plans: []lay.Plan{out.Plan}}
	if ctx.Err() == nil {
		result.By = &by
	}
	f.store.Add(key, entry, result) // whoever was first has as good an answer
	return out, nil
}
