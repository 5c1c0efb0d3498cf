package app

import (
	"context"
	"slices"
	"strings"

	"ellwand/cmd/ellwand/job"
	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/fabric/plan"
)

// everything is the word for all pieces of a layout.
const everything = "all"

// isFixed reports whether a piece is among those that stay where they are.
func (s Search) isFixed(l lay.Laid) bool {
	return slices.ContainsFunc(s.Fix, func(name string) bool {
		return name == everything || strings.EqualFold(name, l.Name) || strings.EqualFold(name, l.Garment)
	})
}

// broughtFor a cloth is the layout brought in. Cloths without a name, which are compared
// by their price, have none.
func (s Search) broughtFor(name string) lay.Plan {
	for _, from := range s.From {
		if name != "" && job.Slug(from.Cloth.Name) == job.Slug(name) {
			return from
		}
	}
	return lay.Plan{}
}

// fixedOn a cloth are the pieces that stay where they are.
func (s Search) fixedOn(name string) lay.Plan {
	from := s.broughtFor(name)
	fixed := from
	fixed.Pieces = nil
	for _, l := range from.Pieces {
		if s.isFixed(l) {
			fixed.Pieces = append(fixed.Pieces, l)
		}
	}
	return fixed
}

// EveryCloth adds to some cloths those of every offer of a job.
func EveryCloth(work *job.Work, cloths []cloth.Cloth) []cloth.Cloth {
	out := slices.Clip(cloths)
	for _, one := range work.Cloths {
		for _, offer := range one.Offers {
			c := offer.Cloth
			c.Name = one.Cloth.Name
			out = append(out, c)
		}
	}
	return out
}

// CheckFrom refuses a layout brought in that is none of a cloth of the job, and a name
// of something to stay that no layout has.
func CheckFrom(ctx context.Context, work *job.Work, cloths []cloth.Cloth, search Search) error {
	if len(search.Fix) > 0 && len(search.From) == 0 {
		return refuse("%s says what stays where it lies in a layout; give the layout as well: %s layout.json", ArgumentFix,
			ArgumentFrom)
	}
	for _, name := range search.Fix {
		only := Search{Fix: []string{name}}
		if !slices.ContainsFunc(search.From, func(p lay.Plan) bool { return slices.ContainsFunc(p.Pieces, only.isFixed) }) {
			return refuse("%s %q: the layout has no such piece or garment; it has: %s", ArgumentFix, name,
				strings.Join(namesIn(search.From), ", "))
		}
	}
	if len(search.Fix) > 0 {
		stays := func(c cloth.Cloth) bool { return len(search.fixedOn(c.Name).Pieces) > 0 }
		if !slices.ContainsFunc(cloths, stays) {
			return refuse("%s: what is to stay lies on %s, which is none of the cloths that are laid here", ArgumentFix,
				search.From[0].Cloth.Name)
		}
		return nil // what stays is verified by itself: other pieces may be new
	}
	for _, from := range search.From {
		if !isLayoutOf(ctx, work, cloths, from) {
			return refuse("%s: this is no layout of the %s of %s: the pieces or the cloth are others now, or a rule of the "+
				"cloth is broken; to keep a part of it, name that with %s", ArgumentFrom, from.Cloth.Name, work.File, ArgumentFix)
		}
	}
	return nil
}

// isLayoutOf lays a cloth as in a layout brought in: where that can be done, nothing is
// searched.
func isLayoutOf(ctx context.Context, work *job.Work, cloths []cloth.Cloth, from lay.Plan) bool {
	for _, c := range cloths {
		need, err := plan.Require(ctx, c, work.PiecesOf(c.Name), plan.Options{
			Lays: []lay.Kind{from.Lay}, Passes: 1, Kept: []lay.Plan{from}, Searched: true,
		})
		if err == nil && need.Work.Due == 0 {
			return true
		}
	}
	return false
}

// namesIn layouts of pieces and garments, each once.
func namesIn(all []lay.Plan) []string {
	var out []string
	for _, p := range all {
		for _, l := range p.Pieces {
			for _, name := range []string{l.Garment, l.Name} {
				if name != "" && !slices.Contains(out, name) {
					out = append(out, name)
				}
			}
		}
	}
	return out
}
