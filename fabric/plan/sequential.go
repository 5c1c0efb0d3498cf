package plan

import (
	"reflect"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/fabric/lay"
	"ellwand/fabric/rules"
	"ellwand/nest"
	"ellwand/nest/bound"
	"ellwand/nest/layout"
	"ellwand/nest/verify"
)

// sequentialShare of a search for several garments is for each of them by
// itself [source.OwnChoice].
const sequentialShare = 0.15

// manyOutlines are too many for a short search: fewer are laid densely enough
// all together, and the time is better spent on that [source.OwnChoice].
const manyOutlines = 30

// search solves a problem. Many pieces of several garments are also laid one
// garment behind the other, each by itself: all together never take more.
func (t *Planner) search(templates []rules.Template, problem layout.Problem, o nest.Options) (nest.Result, error) {
	garments := garmentsOf(templates, problem)
	if len(garments) < 2 {
		return t.Run(problem, o)
	}
	row, isWhole, err := t.inSequence(garments, problem, scaled(o, sequentialShare/float64(len(garments))))
	if err != nil {
		return nest.Result{}, err
	}
	if !isWhole {
		if o.Start == nil {
			o.Start = &row // what is missing is put behind it
		}
		return t.Run(problem, o)
	}
	if o.Start != nil && row.Length < o.Start.Length && verify.Layout(problem, row) == nil {
		o.Start = &row
	}
	result, err := t.Run(problem, scaled(o, 1-sequentialShare))
	if err == nil {
		result.Layout = shorter(problem, result.Layout, &row)
	}
	return result, err
}

// garmentsOf lists the items of each garment. None when the pieces are few, or
// the cloth has flaws or a repeat: what lies well at the cut end may not
// further along.
func garmentsOf(templates []rules.Template, problem layout.Problem) [][]int {
	if len(problem.Zones) > 0 {
		return nil
	}
	copies := 0
	for _, item := range problem.Items {
		copies += item.Copies
	}
	if copies < manyOutlines {
		return nil
	}
	var out [][]int
	at := map[string]int{}
	for i, item := range problem.Items {
		if item.PeriodX > 0 || item.PeriodY > 0 {
			return nil
		}
		name := templates[i].Piece.Garment
		k, known := at[name]
		if !known {
			k = len(out)
			at[name], out = k, append(out, nil)
		}
		out[k] = append(out[k], i)
	}
	return out
}

// inSequence lays the garments one behind the other, each by itself; equal ones are
// searched once. When the context ends, those that come after are missing, and it
// reports false.
func (t *Planner) inSequence(garments [][]int, problem layout.Problem, o nest.Options) (out layout.Layout, isWhole bool,
	err error) {
	o.Start, o.Progress, o.Enough = nil, nil, 0
	var known laidAlone
	for _, items := range garments {
		if t.Ctx.Err() != nil {
			return out, false, nil
		}
		alone := problem
		alone.Items = nil
		for _, i := range items {
			alone.Items = append(alone.Items, problem.Items[i])
		}
		found, isKnown := known.like(alone)
		if !isKnown {
			o.Bound = bound.Brief(alone)
			if found, err = t.Run(alone, o); err != nil {
				return layout.Layout{}, false, err
			}
			known = append(known, laidItems{alone.Items, found})
		}
		begin := 0.0
		if out.Length > 0 {
			begin = out.Length + problem.Gap
		}
		for _, at := range found.Layout.Placements {
			at.Item = items[at.Item]
			at.X += begin
			out.Placements = append(out.Placements, at)
		}
		out.Length = begin + found.Layout.Length
	}
	out.Length = LengthOf(problem, out)
	return out, true, nil
}

// laidAlone are garments that were laid by themselves.
type laidAlone []laidItems

type laidItems struct {
	items []layout.Item
	found nest.Result
}

// like a garment, but for the names, is another that was laid already: the same search
// would find the same.
func (l laidAlone) like(p layout.Problem) (nest.Result, bool) {
	for _, one := range l {
		if slices.EqualFunc(one.items, p.Items, func(a, b layout.Item) bool {
			a.Name, b.Name = "", ""
			return reflect.DeepEqual(a, b)
		}) {
			return one.found, true
		}
	}
	return nest.Result{}, false
}

// Behind lays plans of single garments one behind the other in one lay, for
// Options.Known: a layout of them all, from which a search for all together
// starts. The garments are named as in the pieces of all together, one a plan.
// It reports false when the lay is not possible for one of them, or has two
// beds.
func Behind(kind lay.Kind, alone []Requirement, garments []string) (lay.Plan, bool) {
	out := lay.Plan{Lay: kind}
	begin := 0.0
	for i, need := range alone {
		at := slices.IndexFunc(need.Lays, func(p lay.Plan) bool { return p.Lay == kind && p.Possible() && len(p.Beds) == 1 })
		if at < 0 {
			return lay.Plan{}, false
		}
		plan := need.Lays[at]
		out.Cloth, out.Beds = plan.Cloth, plan.Beds
		for _, l := range plan.Pieces {
			l.Garment = garments[i]
			out.Pieces = append(out.Pieces, moved(l, orb.Point{begin, 0}))
		}
		begin += plan.Length + plan.Cloth.Gap
	}
	out.Length = begin
	return out, len(alone) > 0
}
