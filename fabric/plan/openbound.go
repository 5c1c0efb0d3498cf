package plan

import (
	"ellwand/fabric/bed"
	"ellwand/fabric/lay"
	"ellwand/fabric/rules"
	"ellwand/nest/bound"
)

// OpenBound is a length of cloth that no lay can beat, since every lay opened
// out is an open one: that of the open cloth, without a gap. It is the bound
// of a lay of two beds, either of which may be left empty. 0 when the pieces
// cannot be laid open.
func (t *Planner) OpenBound() float64 {
	cloth := t.Cloth
	cloth.Gap = 0
	b := bed.Of(cloth, lay.Open)
	templates, err := rules.TemplatesOf(cloth, b, t.Wanted)
	if err != nil {
		return 0
	}
	problem, err := rules.PlainProblem(cloth, b, templates)
	if err != nil {
		return 0
	}
	return bound.Length(problem)
}

// boundOf a lay is that of the problem that a search would have: a kept layout has its
// match points at places of its own, which another layout need not keep to.
func (t *Planner) boundOf(kind lay.Kind, one SolvedBed) float64 {
	if t.Cloth.Repeat.IsPlain() {
		return one.Bound
	}
	problem, _, err := rules.ProblemAt(t.Cloth, one.Bed, one.Templates, t.joins(), t.placesFor(kind))
	if err != nil {
		return 0
	}
	return min(one.Bound, bound.Length(problem))
}
