package app

import (
	"cmp"
	"context"
	"slices"

	"ellwand/cmd/ellwand/job"
	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/fabric/plan"
	"ellwand/nest"
)

// Estimated is what a job takes of one cloth in one width.
type Estimated struct {
	plan.Requirement
	// EndedEarly says that the search was ended before its time.
	EndedEarly bool
}

// Estimate finds the lays of all cloths, in the order given. A cloth in several
// widths is laid from the narrowest on, and what was found on a narrower one is
// where the next begins, so that no width takes more than a narrower one in the
// same lay.
func Estimate(ctx context.Context, work *job.Work, cloths []cloth.Cloth, search Search, watch Watch) ([]Estimated,
	error) {
	order := make([]int, len(cloths))
	for i := range order {
		order[i] = i
	}
	slices.SortStableFunc(order, func(a, b int) int { return cmp.Compare(cloths[a].Width, cloths[b].Width) })
	out := make([]Estimated, len(cloths))
	narrower := map[string][]lay.Plan{}
	for _, i := range order {
		name := cloths[i].Name
		found, err := layOn(ctx, work, cloths[i], search, watch, narrower[name])
		if err != nil {
			return nil, err
		}
		out[i] = found
		if cloths[i].Repeat.IsPlain() { // a repeat lies otherwise to the fold of another width
			narrower[name] = append(narrower[name], found.Lays...)
		}
	}
	return out, nil
}

// layOn finds the lays of one cloth, all or those named. Known plans, of a
// narrower width for instance, are where the searches start.
func layOn(ctx context.Context, work *job.Work, c cloth.Cloth, search Search, watch Watch, known []lay.Plan,
	lays ...lay.Kind) (Estimated, error) {
	options := plan.Options{
		Time: search.Time, Passes: search.Passes, Seed: search.Seed, Workers: search.Workers,
		Lays: lays, Known: known, Progress: watch.on(c),
	}
	need, err := plan.Require(ctx, c, work.PiecesOf(c.Name), options)
	if err != nil {
		return Estimated{}, clothError(work, c, err)
	}
	return Estimated{Requirement: need, EndedEarly: ctx.Err() != nil}, nil
}

// on tells of the layouts on one cloth.
func (w Watch) on(c cloth.Cloth) func(lay.Kind, nest.Progress) {
	if w.Found == nil {
		return nil
	}
	return func(kind lay.Kind, progress nest.Progress) { w.Found(c, kind, progress) }
}
