package plan

import (
	"context"
	"errors"

	"ellwand/fabric/bed"
	"ellwand/fabric/check"
	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/fabric/rules"
	"ellwand/nest/layout"
	"ellwand/pieces"
)

// Planner plans the lays of one cloth with all its pieces, and keeps those
// solved so far.
type Planner struct {
	Ctx   context.Context
	Cloth cloth.Cloth
	// Asked are the pieces as the maker gave them, Wanted as they are cut.
	Asked   []pieces.Piece
	Wanted  []rules.Demand
	Options Options
	// solved lays, for the open lay to start from, and the shortest of them.
	solved   []*SolvedLay
	shortest *SolvedLay
	// Work of all searches so far, also of those on copies of the planner.
	Work *Work
	// Lines are what proofs have derived of the pieces, also those on copies of the planner;
	// nil where nothing is kept of it.
	Lines *check.Lines
	// improved says that a kept layout is shorter than what a search found.
	improved bool
	// toldBound is the bound of the open lay as it is told, reckoned once; 0 before.
	toldBound float64
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
	// Depth by which a selvedge is folded in.
	Depth float64
	// Bound of the length of the lay on the table.
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
	m := rules.Match(c, l.Bed, l.Templates, rules.JoinsOfTemplates(c.Repeat, l.Templates), lay.Places{})
	problem := l.Problem
	problem.Items = append([]layout.Item(nil), problem.Items...)
	_ = m.Apply(&problem)
	return m
}

// LayOf beds that are solved, as long as the longest of them takes.
func LayOf(c cloth.Cloth, beds ...SolvedBed) *SolvedLay {
	s := &SolvedLay{Beds: beds}
	for _, found := range beds {
		s.Taken = max(s.Taken, found.Bed.Before+found.Bed.Taken(c, found.Layout.Length))
	}
	return s
}

// Note a solved lay, for the open one to start from.
func (t *Planner) Note(found *SolvedLay) {
	t.solved = append(t.solved, found)
	if t.shortest == nil || found.Taken < t.shortest.Taken {
		t.shortest = found
	}
}

// placesFor a lay are the places on the repeat that a known layout of it has,
// so that it can be where the search starts.
func (t *Planner) placesFor(kind lay.Kind) lay.Places {
	if kind == lay.Open && t.shortest != nil {
		return t.shortest.places(t.Cloth)
	}
	for _, plan := range t.Options.WarmStarts {
		if plan.Lay == kind {
			return plan.Places
		}
	}
	return lay.Places{}
}

// joins of all the pieces.
func (t *Planner) joins() []rules.Join {
	all := make([]rules.Template, len(t.Wanted))
	for i, d := range t.Wanted {
		all[i] = rules.Template{Source: d.Source, Asked: d.Piece}
	}
	return rules.JoinsOfTemplates(t.Cloth.Repeat, all)
}

// share of the budget that a lay of one bed has.
func (t *Planner) share(kind lay.Kind) float64 {
	if kind == lay.Open || kind == lay.FoldedAlong || len(t.Options.Lays) == 1 {
		return 1
	}
	return rareShare
}

// rareShare of the budget is for a lay that is seldom the best
// [source.OwnChoice].
const rareShare = 0.25

// ProofMargin is what a bound must exceed a length by, as a share, to prove
// anything: ten times what a layout is granted [source.OwnChoice].
const ProofMargin = 1e-5

// strict is the cloth as it binds the pieces of a lay of two beds, which are
// solved one after the other: garments that may oppose each other all point
// one way there, and so do the pieces of one on a repeat that is not even.
func (t *Planner) strict() cloth.Cloth {
	c := t.Cloth
	if c.Nap == cloth.OneWayPerGarment || !c.Repeat.IsPlain() && !c.Repeat.Even {
		c.Nap = cloth.OneWay
	}
	return c
}

// ends that what goes one way may point to in a lay of two beds: away from the cut
// end, and back to it too where flaws make the two unlike.
func (t *Planner) ends() []bool {
	goesOneWay := t.strict().Nap == cloth.OneWay || len(t.Cloth.OneWayPieces) > 0
	if goesOneWay && len(t.Cloth.Flaws) > 0 {
		return []bool{false, true}
	}
	return []bool{false}
}

// ErrInternal marks a layout that failed its check: a fault of the program,
// not of the job.
var ErrInternal = errors.New("internal error")
