package plan

import (
	"context"
	"errors"
	"fmt"
	"slices"

	"ellwand/fabric/bed"
	"ellwand/fabric/check"
	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/fabric/rules"
	"ellwand/nest"
	"ellwand/nest/layout"
	"ellwand/nest/verify"
	"ellwand/pieces"
	"ellwand/pieces/marks"
)

// Table is the cutting table: one cloth with all its pieces, and the lays
// solved so far.
type Table struct {
	Ctx   context.Context
	Cloth cloth.Cloth
	// asked are the pieces as the maker gave them, wanted as they are cut.
	Asked   []pieces.Piece
	Wanted  []rules.Demand
	Options Options
	// solved lays, for the open lay to start from, and the shortest of them.
	solved   []*SolvedLay
	shortest *SolvedLay
	// Work of all searches so far, also of those on copies of the table.
	Work *Work
	// improved says that a kept layout is shorter than what a search found.
	improved bool
}

// SolvedBed is a solved bed in terms of plain geometry.
type SolvedBed struct {
	Bed       bed.Bed
	Templates []rules.Template
	Problem   layout.Problem
	Layout    layout.Layout
	Bound     float64
	matched   *rules.Matching
}

// SolvedLay is a solved lay.
type SolvedLay struct {
	Beds []SolvedBed
	// depth by which a selvedge is folded in.
	Depth float64
	// bound of the length of the lay on the table.
	Bound float64
	Taken float64
}

// places of the match points, for what is laid after.
func (s *SolvedLay) places(c cloth.Cloth) lay.Places {
	last := s.Beds[len(s.Beds)-1]
	return last.matching(c).Found(last.Problem, last.Layout)
}

// matching of a bed; one that was not given places has its own.
func (l SolvedBed) matching(c cloth.Cloth) *rules.Matching {
	if l.matched != nil {
		return l.matched
	}
	m := rules.Match(c, l.Bed, l.Templates, rules.MatchNames(c.Repeat, l.Templates), lay.Places{})
	problem := l.Problem
	problem.Items = append([]layout.Item(nil), problem.Items...)
	_ = m.Apply(&problem)
	return m
}

func SpreadOf(c cloth.Cloth, beds ...SolvedBed) *SolvedLay {
	s := &SolvedLay{Beds: beds}
	for _, found := range beds {
		s.Taken = max(s.Taken, found.Bed.Before+found.Bed.Taken(c, found.Layout.Length))
	}
	return s
}

// planLay solves one lay. A lay that is not possible is a plan that says so,
// not an error.
func (t *Table) planLay(kind lay.Kind) (lay.Plan, error) {
	plan := lay.Plan{Cloth: t.Cloth, Asked: t.Asked, Lay: kind, Plies: kind.Plies(), Width: bed.UsableWidth(kind, t.Cloth)}
	found, why, err := t.findLay(kind)
	switch {
	case err != nil:
		return lay.Plan{}, err
	case found == nil:
		plan.Impossible, plan.Why = why.Error(), lay.Reasons(why)
		return plan, nil
	}
	plan.FoldedIn, plan.Width = found.Depth, 0
	Fill(&plan, found.Beds)
	if err := SetBound(&plan, t.sureBound(kind, found.Bound)); err != nil {
		return lay.Plan{}, err
	}
	noteApproximate(&plan)
	FillMatches(&plan, found)
	if err := check.Plan(plan, t.Asked); err != nil {
		return lay.Plan{}, fmt.Errorf("%w: the lay %s broke a rule of the trade and is not shown: %w", ErrInternal, kind, err)
	}
	t.Note(found)
	return plan, nil
}

// Note a solved lay, for the open one to start from.
func (t *Table) Note(found *SolvedLay) {
	t.solved = append(t.solved, found)
	if t.shortest == nil || found.Taken < t.shortest.Taken {
		t.shortest = found
	}
}

// SetBound notes a length that no layout can beat. One that was beaten is a
// fault of the proof, and no answer.
func SetBound(p *lay.Plan, bound float64) error {
	if bound > p.Length*(1+ProofMargin) {
		return fmt.Errorf("%w: the lay %s is %g mm long, and it was held for proven that none is below %g", ErrInternal, p.Lay, p.Length, bound)
	}
	p.Bound = min(bound, p.Length)
	return nil
}

// Spread solves a lay; it returns the reason when that is not possible.
func (t *Table) Spread(kind lay.Kind) (found *SolvedLay, why, err error) {
	switch kind {
	case lay.SelvedgeIn:
		return t.selvedgeIn()
	case lay.InStretches:
		return t.inStretches()
	}
	b := bed.Of(t.Cloth, kind)
	templates, why := rules.TemplatesOf(t.Cloth, b, t.Wanted)
	if why != nil {
		return nil, why, nil
	}
	one, why, err := t.Solve(kind, b, templates, t.share(kind))
	if one == nil {
		return nil, why, err
	}
	if err := t.belowIncrement(one, t.share(kind)); err != nil {
		return nil, nil, err
	}
	s := SpreadOf(t.Cloth, *one)
	s.Bound = one.Bound
	return s, nil, nil
}

// placesFor a lay are the places on the repeat that a known layout of it has,
// so that it can be where the search starts.
func (t *Table) placesFor(kind lay.Kind) lay.Places {
	if kind == lay.Open && t.shortest != nil {
		return t.shortest.places(t.Cloth)
	}
	for _, plan := range t.Options.Known {
		if plan.Lay == kind {
			return plan.Places
		}
	}
	return lay.Places{}
}

// lessMatched is the reason why a lay is out of the question that cannot keep
// a match which the open lay keeps: it would answer an easier question.
func (t *Table) lessMatched(m *rules.Matching) error {
	if len(m.Dropped) == 0 {
		return nil
	}
	b := bed.Of(t.Cloth, lay.Open)
	templates, err := rules.TemplatesOf(t.Cloth, b, t.Wanted)
	if err != nil {
		return nil
	}
	open := rules.Match(t.Cloth, b, templates, t.names(), lay.Places{})
	var faults []error
	for _, match := range m.Dropped {
		same := func(other lay.Match) bool { return droppedAs(t.Asked, match) == droppedAs(t.Asked, other) }
		if !slices.ContainsFunc(open.Dropped, same) {
			faults = append(faults, fmt.Errorf("%s in this lay; lay the cloth open", droppedAs(t.Asked, match)))
		}
	}
	return errors.Join(faults...)
}

// names of the match points, over all the pieces.
func (t *Table) names() []marks.Name {
	all := make([]rules.Template, len(t.Wanted))
	for i, d := range t.Wanted {
		all[i] = rules.Template{Source: d.Source, Asked: d.Piece}
	}
	return rules.MatchNames(t.Cloth.Repeat, all)
}

// share of the budget that a lay of one bed has.
func (t *Table) share(kind lay.Kind) float64 {
	if kind == lay.Open || kind == lay.FoldedAlong || len(t.Options.Lays) == 1 {
		return 1
	}
	return rareShare
}

// rareShare of the budget is for a lay that is seldom the best
// [source.OwnChoice].
const rareShare = 0.25

// Solve finds the layout of a bed that is the whole lay, with a share of the
// budget.
func (t *Table) Solve(kind lay.Kind, b bed.Bed, templates []rules.Template, share float64) (found *SolvedBed, why, err error) {
	return t.solveAt(kind, b, templates, share, t.placesFor(kind), nil)
}

// solveAt finds the layout of one bed whose match points keep to places that
// are known already; warm, which may be nil, is a layout to improve on if it
// keeps them too.
func (t *Table) solveAt(kind lay.Kind, b bed.Bed, templates []rules.Template, share float64, at lay.Places, warm *layout.Layout) (found *SolvedBed, why, err error) {
	problem, matched, why := rules.ProblemAt(t.Cloth, b, templates, t.names(), at)
	if why == nil {
		why = t.lessMatched(matched)
	}
	if why != nil {
		return nil, why, nil
	}
	search := t.Budget(share)
	if t.Options.Progress != nil {
		search.Progress = func(p nest.Progress) { t.Options.Progress(kind, p) }
	}
	known := t.startsFor(kind, b, templates, problem)
	search.Start = known.where()
	if search.Start == nil && warm != nil && verify.Layout(problem, *warm) == nil {
		search.Start = warm
	}
	result, err := t.search(templates, problem, search)
	if err != nil {
		return nil, nil, err
	}
	best := shorter(problem, result.Layout, known.valid)
	if err := verify.Layout(problem, best); err != nil {
		return nil, nil, fmt.Errorf("%w: the layout of the lay %s failed its check and is not shown: %w", ErrInternal, kind, err)
	}
	return &SolvedBed{Bed: b, Templates: templates, Problem: problem, Layout: best, Bound: result.Bound, matched: matched}, nil, nil
}

// ProofMargin is what a bound must exceed a length by, as a share, to prove
// anything: ten times what a layout is granted [source.OwnChoice].
const ProofMargin = 1e-5
