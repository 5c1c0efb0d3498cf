package remnant

import (
	"context"
	"errors"
	"math"
	"slices"

	"ellwand/fabric/lay"
	"ellwand/fabric/plan"
	"ellwand/nest"
	"ellwand/pieces"
)

// Remedy is a change that makes the cloth enough, with the layout that proves
// it.
type Remedy struct {
	Change Change
	// By is the least change that was found to be enough, mm; 0 when it has no
	// measure.
	By  float64
	Fit Result
}

// Options of a search for remedies.
type Options struct {
	// Effort is how much work goes into a question; a change has a fifth of it.
	Effort plan.Effort
	// Passes, when not 0, are made in place of the effort, in each search.
	Passes  int
	Seed    uint64
	Workers int
	// Show is how many remedies are looked for, in the order of the changes; 0
	// means three.
	Show int
	// Tables are shared by all searches.
	Tables *nest.Tables
	// Known is the closest try of the question itself: changed pieces lie where
	// they lay there to begin with.
	Known lay.Plan
	// Trying, when set, is called before each change is tried.
	Trying func(Change)
	// Fit, when set, answers in place of the function of that name, as what keeps
	// answers does.
	Fit func(context.Context, Remnant, []pieces.Piece, plan.Options) (Result, error)
}

// usualShow is how many ways out are worth reading [source.OwnChoice].
const usualShow = 3

// changeShare of the effort goes into each try of a change: what it takes to answer
// a question that has not been answered with all of it [source.OwnChoice].
const changeShare = 0.2

// Search tries the changes one by one, each with a share of the effort, and
// returns the first few that work; when none does, two at a time. A cancelled
// context ends it with what it has.
func Search(ctx context.Context, q Question, changes []Change, o Options) ([]Remedy, error) {
	if o.Show == 0 {
		o.Show = usualShow
	}
	changes = thatChange(q, changes)
	out, err := firstFew(ctx, q, changes, o)
	if err != nil || len(out) > 0 {
		return out, err
	}
	return firstFew(ctx, q, thatChange(q, pairs(changes)), o)
}

// firstFew tries changes in their order.
func firstFew(ctx context.Context, q Question, changes []Change, o Options) ([]Remedy, error) {
	var out []Remedy
	for _, c := range changes {
		if ctx.Err() != nil || len(out) == o.Show {
			break
		}
		if o.Trying != nil {
			o.Trying(c)
		}
		remedy, found, err := try(ctx, q, c, o)
		if err != nil {
			return nil, err
		}
		if found {
			out = append(out, remedy)
		}
	}
	return out, nil
}

// thatChange leaves out what has nothing to change, and asks of what has a
// measure no more than can be made: a garment may end at the hip, not above it.
func thatChange(q Question, changes []Change) []Change {
	var out []Change
	for _, c := range changes {
		if c.Step > 0 && c.Most < c.Step {
			continue
		}
		_, ok := c.Make(q, c.Most)
		for !ok && c.Most > c.Step {
			c = c.upTo(c.Most - c.Step)
			_, ok = c.Make(q, c.Most)
		}
		if ok {
			out = append(out, c)
		}
	}
	return out
}

// try a change, and when it has a measure, the least that is enough.
func try(ctx context.Context, q Question, c Change, o Options) (Remedy, bool, error) {
	if c.Most == 0 {
		fit, ok, err := fits(ctx, q, c, 0, o)
		return Remedy{Change: c, Fit: fit}, ok, err
	}
	fit, ok, err := fits(ctx, q, c, c.Most, o)
	if err != nil || !ok {
		return Remedy{}, false, err
	}
	best := Remedy{Change: c, By: c.Most, Fit: fit}
	low, high := 0, int(math.Ceil(c.Most/c.Step)) // low is not enough
	for high-low > 1 && ctx.Err() == nil {
		middle := (low + high) / 2
		by := float64(middle) * c.Step
		fit, ok, err := fits(ctx, q, c, by, o)
		if err != nil {
			return Remedy{}, false, err
		}
		if !ok {
			low = middle
			continue
		}
		high, best.By, best.Fit = middle, by, fit
	}
	return best, true, nil
}

// stillAsked leaves in a plan the pieces that are still asked for.
func stillAsked(plan lay.Plan, all []pieces.Piece) lay.Plan {
	plan.Pieces = slices.DeleteFunc(slices.Clone(plan.Pieces), func(l lay.Laid) bool {
		return !slices.ContainsFunc(all, func(p pieces.Piece) bool { return p.Name == l.Name && p.Garment == l.Garment })
	})
	return plan
}

// fits asks the changed question. A change that cannot be laid or drafted is
// no way out, and no fault either.
func fits(ctx context.Context, q Question, c Change, by float64, o Options) (Result, bool, error) {
	changed, ok := c.Make(q, by)
	if !ok {
		return Result{}, false, nil
	}
	options := plan.Options{
		Effort: o.Effort, Passes: o.Passes, Tables: o.Tables, Seed: o.Seed, Workers: o.Workers, Lays: changed.Lays,
		Untidied: true,
	}
	if o.Passes == 0 {
		options = options.Scaled(changeShare)
	}
	if known := stillAsked(o.Known, changed.Pieces); len(known.Pieces) > 0 {
		options.WarmStarts = []lay.Plan{known}
	}
	ask := Fit
	if o.Fit != nil {
		ask = o.Fit
	}
	fit, err := ask(ctx, Remnant{Cloth: changed.Cloth, Length: changed.Length, Offcuts: changed.Offcuts}, changed.Pieces,
		options)
	if errors.Is(err, plan.ErrInternal) {
		return Result{}, false, err
	}
	return fit, err == nil && fit.Answer == Enough, nil
}
