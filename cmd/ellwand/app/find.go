package app

import (
	"cmp"
	"context"
	"fmt"
	"slices"
	"strings"
	"sync"
	"time"

	"ellwand/cmd/ellwand/app/store"
	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/fabric/plan"
	"ellwand/fabric/words"
	"ellwand/nest"
	"ellwand/pieces"
)

// finder finds lays for every use case: from the store where the same search was made
// before, otherwise by searching. So all give the same answer.
type finder struct {
	search Search
	store  *store.Store
	// tables of outlines that the searches share.
	tables *nest.Tables
	// isOwn says of a key whether its entry held nothing of another search when this
	// command first read it.
	isOwn *sync.Map
}

// fromAnother marks a search that began where another answer lay.
const fromAnother = " from another answer"

func newFinder(search Search) finder {
	out := finder{search: search, tables: plan.NewTables(), isOwn: &sync.Map{}}
	if !search.Anew {
		out.store = store.Open()
	}
	return out
}

// finding is a requirement with what is to be said about how it was found.
type finding struct {
	plan.Requirement
	// ended says whether the search was ended before its work was done.
	ended plan.Ended
	// kept says that it rests on a search with another seed or effort than this one.
	kept bool
}

// find the lays of some pieces on a cloth. Of the options, those of the search are set
// here. Where a hand has laid pieces, all others are laid round them, in its lays alone:
// a shorter lay does not take their place.
func (f finder) find(ctx context.Context, c cloth.Cloth, all []pieces.Piece, options plan.Options) (finding, error) {
	c = c.InItsWidth()
	hands := plan.HandLays(c, options.Lays)
	if len(hands) == 0 || len(f.search.Fix) > 0 {
		return f.findFree(ctx, c.Untouched(), all, options)
	}
	f.search.From = nil
	var out []finding
	var failed error
	for _, hand := range hands {
		one, err := f.findRound(ctx, c, all, options, hand)
		if err != nil {
			failed = err
			continue
		}
		out = append(out, one)
	}
	if len(out) == 0 {
		return finding{}, failed
	}
	return leastOf(out), nil
}

// isOnlyOf reports whether an entry holds nothing but what some searches found, or nothing.
func isOnlyOf(entry store.Entry, some ...store.Search) bool {
	wasMade := slices.ContainsFunc(some, entry.Has)
	return entry.IsOnlyOf(some...) && (wasMade || len(entry.Plans()) == 0)
}

// leastOf what was found in several lays, as one requirement.
func leastOf(all []finding) finding {
	slices.SortStableFunc(all, func(a, b finding) int { return cmp.Compare(a.Buy, b.Buy) })
	out := all[0]
	for _, other := range all[1:] {
		out.Lays = append(slices.Clip(out.Lays), other.Lays...)
		out.Found = append(slices.Clip(out.Found), other.Found...)
		out.ended = out.ended.And(other.ended)
	}
	return out
}

// findRound lays all pieces round those of one lay that stay.
func (f finder) findRound(ctx context.Context, c cloth.Cloth, all []pieces.Piece, options plan.Options,
	stays lay.Plan) (finding, error) {
	options.Fixed, options.Lays = stays, []lay.Kind{stays.Lay}
	return f.findFree(ctx, c, all, options)
}

// findFree finds lays in which nothing stays but what the options and the search say.
func (f finder) findFree(ctx context.Context, c cloth.Cloth, all []pieces.Piece, options plan.Options) (finding,
	error) {
	options.Effort, options.Passes, options.Seed = f.search.Effort, f.search.Passes, f.search.Seed
	options.Tables = f.tables
	by := store.Search{Seed: options.Seed, Effort: options.Effort.String(), Passes: options.Passes}
	if len(options.Lays) > 0 {
		by.Effort += fmt.Sprint(options.Lays)
	}
	if len(f.search.Fix) > 0 {
		options.Fixed = f.search.fixedOn(c.Name)
	}
	key := f.key(c, all)
	if len(options.Fixed.Pieces) > 0 {
		bare := plan.Bare(options.Fixed)
		key = store.Key(c, all, f.search.Passes, f.search.Seed, bare.Pieces, bare.FoldedIn)
	}
	entry := f.store.Read(key)
	options.Kept, options.KeptPlain = append(entry.Plans(), f.search.From...), entry.Plain()
	options.Searched = searchedAs(entry, by, options.Effort)
	again := by
	again.Effort += fromAnother
	isOwn, _ := f.isOwn.LoadOrStore(key, isOnlyOf(entry, by, again))
	if len(options.WarmStarts) > 0 {
		options.Searched = false
		by = again
	}
	begun := time.Now()
	need, err := plan.Require(ctx, c, all, options)
	if err != nil {
		return finding{}, words.Refused(c, err)
	}
	out := finding{Requirement: need, ended: f.search.ended(ctx, need.Work, begun),
		kept: (need.Improved || options.Searched) && isOwn == false}
	if options.Searched && !out.ended.Early && len(f.search.From) == 0 {
		return out.marked(all), nil
	}
	result := store.Found{Plans: need.Found, Plain: need.FoundPlain}
	if !out.ended.Early {
		result.By = &by
	}
	if out, err = f.keep(ctx, key, entry, result, out, options); err != nil {
		return finding{}, err
	}
	return out.marked(all), nil
}

// mostRivals are so many others that write the same entry meanwhile
// [source.OwnChoice].
const mostRivals = 3

// keep what was found from an entry. Where somebody else found something meanwhile, the
// shorter of each lay is taken and kept.
func (f finder) keep(ctx context.Context, key string, began store.Entry, result store.Found, out finding,
	options plan.Options) (finding, error) {
	for range mostRivals {
		if f.store.Add(key, began, result) {
			return out, nil
		}
		began = f.store.Read(key)
		options.Kept, options.KeptPlain = began.Plans(), began.Plain()
		for _, p := range result.Plans {
			options.Kept = append(options.Kept, plan.Bare(p))
		}
		for _, p := range result.Plain {
			options.KeptPlain = append(options.KeptPlain, plan.Bare(p))
		}
		options.Searched = true
		again, err := plan.Require(context.WithoutCancel(ctx), out.Cloth, out.Lays[out.Chosen].Asked, options)
		if err != nil {
			return finding{}, words.Refused(out.Cloth, err)
		}
		out.kept = out.kept || again.Length < out.Length
		again.Work = out.Work
		out.Requirement, result.Plans, result.Plain = again, again.Found, again.FoundPlain
	}
	return out, nil
}

// withLessEffort finds with the next smaller effort; an exact number of passes stays.
func (f finder) withLessEffort() finder {
	if f.search.Effort == plan.Long {
		f.search.Effort = plan.Usual
	} else {
		f.search.Effort = plan.Quick
	}
	return f
}

// searchedAs a search of this effort, or a greater one, which found no more.
func searchedAs(entry store.Entry, by store.Search, effort plan.Effort) bool {
	efforts := plan.Efforts()
	for _, greater := range efforts[slices.Index(efforts, effort):] {
		as := by
		as.Effort = greater.String() + strings.TrimPrefix(by.Effort, effort.String())
		if entry.Has(as) {
			return true
		}
	}
	return false
}

// key of a problem. An exact number of passes is to give the same answer whatever was
// found otherwise, so that it has an entry of its own.
func (f finder) key(c cloth.Cloth, all []pieces.Piece) string {
	if f.search.Passes > 0 {
		return store.Key(c, all, f.search.Passes, f.search.Seed)
	}
	return store.Key(c, all)
}

// marked gives each lay of a requirement its mark.
func (f finding) marked(all []pieces.Piece) finding {
	f.Lays = slices.Clone(f.Lays)
	for i := range f.Lays {
		switch p := &f.Lays[i]; {
		case p.Possible():
			p.Mark = markOf(*p, all)
		case p.Throughout != nil:
			one := *p.Throughout
			one.Mark = markOf(one, all)
			p.Throughout = &one
		}
	}
	return f
}
