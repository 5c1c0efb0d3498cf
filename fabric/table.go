package fabric

import (
	"context"
	"errors"
	"fmt"
	"slices"

	"ellwand/fabric/cloth"
	"ellwand/nest"
	"ellwand/nest/layout"
	"ellwand/nest/verify"
	"ellwand/pieces"
)

// table is the cutting table: one cloth with all its pieces, and the lays
// solved so far.
type table struct {
	ctx   context.Context
	cloth cloth.Cloth
	// asked are the pieces as the maker gave them, wanted as they are cut.
	asked   []pieces.Piece
	wanted  []demand
	options Options
	// solved lays, for the open lay to start from, and the shortest of them.
	solved   []*spread
	shortest *spread
}

// lain is a solved bed in terms of plain geometry.
type lain struct {
	bed       bed
	templates []template
	problem   layout.Problem
	layout    layout.Layout
	bound     float64
	matched   *matching
}

// spread is a solved lay.
type spread struct {
	beds []lain
	// depth by which a selvedge is folded in.
	depth float64
	// bound of the length of the lay on the table.
	bound float64
	taken float64
}

// places of the match points, for what is laid after.
func (s *spread) places(c cloth.Cloth) places {
	last := s.beds[len(s.beds)-1]
	return last.matching(c).found(last)
}

// matching of a bed; one that was not given places has its own.
func (l lain) matching(c cloth.Cloth) *matching {
	if l.matched != nil {
		return l.matched
	}
	m := match(c, l.bed, l.templates, matchNames(c.Repeat, l.templates), places{})
	problem := l.problem
	problem.Items = append([]layout.Item(nil), problem.Items...)
	_ = m.apply(&problem)
	return m
}

func spreadOf(c cloth.Cloth, beds ...lain) *spread {
	s := &spread{beds: beds}
	for _, found := range beds {
		s.taken = max(s.taken, found.bed.before+found.bed.taken(c, found.layout.Length))
	}
	return s
}

// planLay solves one lay. A lay that is not possible is a plan that says so,
// not an error.
func (t *table) planLay(lay Lay) (LayPlan, error) {
	plan := LayPlan{Cloth: t.cloth, Asked: t.asked, Lay: lay, Plies: lay.Plies(), Width: lay.UsableWidth(t.cloth)}
	found, why, err := t.spread(lay)
	switch {
	case err != nil:
		return LayPlan{}, err
	case found == nil:
		plan.Impossible = why.Error()
		return plan, nil
	}
	plan.FoldedIn, plan.Width = found.depth, 0
	plan.fill(found.beds)
	if err := plan.setBound(found.bound); err != nil {
		return LayPlan{}, err
	}
	plan.fillMatches(found)
	if err := plan.Check(t.asked); err != nil {
		return LayPlan{}, fmt.Errorf("%w: the lay %s broke a rule of the trade and is not shown: %w", ErrInternal, lay, err)
	}
	t.note(found)
	return plan, nil
}

// note a solved lay, for the open one to start from.
func (t *table) note(found *spread) {
	t.solved = append(t.solved, found)
	if t.shortest == nil || found.taken < t.shortest.taken {
		t.shortest = found
	}
}

// setBound notes a length that no layout can beat. One that was beaten is a
// fault of the proof, and no answer.
func (p *LayPlan) setBound(bound float64) error {
	if bound > p.Length*(1+proofMargin) {
		return fmt.Errorf("%w: the lay %s is %g mm long, and it was held for proven that none is below %g", ErrInternal, p.Lay, p.Length, bound)
	}
	p.Bound = min(bound, p.Length)
	return nil
}

// spread solves a lay; it returns the reason when that is not possible.
func (t *table) spread(lay Lay) (found *spread, why, err error) {
	switch lay {
	case SelvedgeIn:
		return t.selvedgeIn()
	case InStretches:
		return t.inStretches()
	}
	b := bedOf(t.cloth, lay)
	templates, why := templatesOf(t.cloth, b, t.wanted)
	if why != nil {
		return nil, why, nil
	}
	one, why, err := t.solve(lay, b, templates, t.share(lay))
	if one == nil {
		return nil, why, err
	}
	if err := t.belowStep(one, t.share(lay)); err != nil {
		return nil, nil, err
	}
	s := spreadOf(t.cloth, *one)
	s.bound = one.bound
	return s, nil, nil
}

// placesFor a lay are the places on the repeat that a known layout of it has,
// so that it can be where the search starts.
func (t *table) placesFor(lay Lay) places {
	if lay == Open && t.shortest != nil {
		return t.shortest.places(t.cloth)
	}
	for _, plan := range t.options.Known {
		if plan.Lay == lay {
			return plan.places
		}
	}
	return places{}
}

// lessMatched is the reason why a lay is out of the question that cannot keep
// a match which the open lay keeps: it would answer an easier question.
func (t *table) lessMatched(m *matching) error {
	if len(m.dropped) == 0 {
		return nil
	}
	b := bedOf(t.cloth, Open)
	templates, err := templatesOf(t.cloth, b, t.wanted)
	if err != nil {
		return nil
	}
	open := match(t.cloth, b, templates, t.names(), places{})
	var faults []error
	for _, sentence := range m.dropped {
		if !slices.Contains(open.dropped, sentence) {
			faults = append(faults, fmt.Errorf("%s in this lay; lay the cloth open", sentence))
		}
	}
	return errors.Join(faults...)
}

// names of the match points, over all the pieces.
func (t *table) names() []string {
	all := make([]template, len(t.wanted))
	for i, d := range t.wanted {
		all[i] = template{source: d.source, asked: d.piece}
	}
	return matchNames(t.cloth.Repeat, all)
}

// share of the budget that a lay of one bed has.
func (t *table) share(lay Lay) float64 {
	if lay == Open || lay == FoldedAlong || len(t.options.Lays) == 1 {
		return 1
	}
	return rareShare
}

// rareShare of the budget is for a lay that is seldom the best
// [source.OwnChoice].
const rareShare = 0.25

// solve finds the layout of a bed that is the whole lay, with a share of the
// budget.
func (t *table) solve(lay Lay, b bed, templates []template, share float64) (found *lain, why, err error) {
	return t.solveAt(lay, b, templates, share, t.placesFor(lay), nil)
}

// solveAt finds the layout of one bed whose match points keep to places that
// are known already; warm, which may be nil, is a layout to improve on if it
// keeps them too.
func (t *table) solveAt(lay Lay, b bed, templates []template, share float64, at places, warm *layout.Layout) (found *lain, why, err error) {
	problem, matched, why := problemAt(t.cloth, b, templates, t.names(), at)
	if why == nil {
		why = t.lessMatched(matched)
	}
	if why != nil {
		return nil, why, nil
	}
	search := t.budget(share)
	if t.options.Progress != nil {
		search.Progress = func(p nest.Progress) { t.options.Progress(lay, p) }
	}
	known := t.startsFor(lay, b, templates, problem)
	search.Start = known.where()
	if search.Start == nil && warm != nil && verify.Layout(problem, *warm) == nil {
		search.Start = warm
	}
	result, err := t.search(templates, problem, search)
	if err != nil {
		return nil, nil, err
	}
	best := shorter(problem, result.Layout, known.sound)
	if err := verify.Layout(problem, best); err != nil {
		return nil, nil, fmt.Errorf("%w: the layout of the lay %s failed its check and is not shown: %w", ErrInternal, lay, err)
	}
	return &lain{bed: b, templates: templates, problem: problem, layout: best, bound: result.Bound, matched: matched}, nil, nil
}

// budget of one search, with a share of the whole.
func (t *table) budget(share float64) nest.Options {
	o := nest.Options{Time: t.options.Time, Iterations: t.options.Iterations, Enough: t.options.enough, Seed: t.options.Seed, Workers: t.options.Workers}
	if o.Time == 0 && o.Iterations == 0 {
		o.Time = usualTime
	}
	return scaled(o, share)
}
