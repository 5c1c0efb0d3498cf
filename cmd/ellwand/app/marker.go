package app

import (
	"context"
	"fmt"
	"slices"
	"strings"

	"ellwand/cmd/ellwand/failure"
	"ellwand/cmd/ellwand/job"
	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/fabric/plan"
	"ellwand/fabric/words"
)

// Plan lays the pieces of a cloth in the lay that is asked for, or when that is
// nil in the one that needs least.
func Plan(ctx context.Context, work *job.Work, c cloth.Cloth, kind *lay.Kind, search Search, watch Watch) (Planned,
	error) {
	found, err := newSolver(search, Watch{}).layOn(ctx, work, c, plan.Options{Lays: neededFor(kind)}, watch)
	if err != nil {
		return Planned{}, err
	}
	return PlanOf(work, found, kind)
}

// PlanOf what was found takes the lay that is asked for, or when that is nil the one that
// needs least.
func PlanOf(work *job.Work, found Estimated, kind *lay.Kind) (Planned, error) {
	plan, err := planOf(found.Requirement, kind)
	if err != nil {
		return Planned{}, clothError(work, found.Cloth, err)
	}
	out := Planned{Plan: plan, Need: found.Requirement, Ended: found.Ended, Kept: found.Kept}
	if said := found.Ended.Say(); said != "" {
		out.Notes = append(slices.Clip(out.Notes), lay.Note{Text: said})
	}
	if kind != nil && plan.Lay != *kind {
		out.InsteadOf, out.Gainless = kind, gainless(found.Requirement, *kind)
	}
	if kind != nil {
		out.Need.Lays, out.Need.Chosen = []lay.Plan{plan}, 0
	}
	return out, nil
}

// OnlyCloth leaves the cloths of a name; all where it is empty.
func OnlyCloth(work *job.Work, cloths []cloth.Cloth, name string) ([]cloth.Cloth, error) {
	var out []cloth.Cloth
	var names []string
	for _, c := range cloths {
		names = append(names, c.Name)
		if isClothNamed(name, c.Name) {
			out = append(out, c)
		}
	}
	if len(out) == 0 {
		return nil, noSuchCloth(name, names)
	}
	return out, nil
}

// isClothNamed reports whether a cloth is the one asked for; each is where none is named.
func isClothNamed(asked, name string) bool { return asked == "" || job.Slug(asked) == job.Slug(name) }

func noSuchCloth(name string, names []string) error {
	return refuse("%s %q: the job has no such cloth; it has %s", ArgumentCloth, name, strings.Join(names, " and "))
}

// gainless says why a lay of two parts came down to one.
func gainless(need plan.Requirement, kind lay.Kind) string {
	for _, p := range need.Lays {
		if p.Lay == kind {
			return words.WhyNot(p)
		}
	}
	return ""
}

// neededFor a lay are the lays to solve: that one, and for a lay of two parts
// those that it may come down to. None means all.
func neededFor(kind *lay.Kind) []lay.Kind {
	switch {
	case kind == nil:
		return nil
	case *kind == lay.SelvedgeIn || *kind == lay.InStretches:
		return []lay.Kind{lay.Open, lay.FoldedAlong, *kind}
	}
	return []lay.Kind{*kind}
}

// planOf takes the lay that is asked for, or the recommended one.
func planOf(need plan.Requirement, kind *lay.Kind) (lay.Plan, error) {
	if kind == nil {
		return need.Lays[need.Chosen], nil
	}
	for _, p := range need.Lays {
		if p.Lay != *kind {
			continue
		}
		if one := p.Throughout; one != nil {
			one.Notes = append(one.Notes, lay.Note{Text: fmt.Sprintf("Asked for was the lay %s: %s.", p.Lay, words.WhyNot(p))})
			return *one, nil
		}
		if !p.Possible() {
			return p, fmt.Errorf("it cannot be laid %s: %s", p.Lay.Way(), words.WhyNot(p))
		}
		return p, nil
	}
	return lay.Plan{}, failure.Of(fmt.Errorf("the lay %s was not tried", *kind))
}
