package plan

import (
	"ellwand/fabric/bed"
	"ellwand/fabric/lay"
	"ellwand/fabric/rules"
	"ellwand/nest/bound"
)

// bedToLay is the bed of a lay of one part with nothing on it yet, on a repeat with its
// match points at places.
func (t *Planner) bedToLay(kind lay.Kind, places lay.Places) (SolvedBed, error) {
	b := bed.Of(t.Cloth, kind)
	templates, err := rules.TemplatesOf(t.Cloth, b, t.Wanted)
	if err != nil {
		return SolvedBed{}, err
	}
	problem, matched, err := rules.ProblemAt(t.Cloth, b, templates, t.joins(), places)
	if err != nil {
		return SolvedBed{}, err
	}
	return SolvedBed{Bed: b, Templates: templates, Problem: problem, Bound: bound.Length(problem), matched: matched}, nil
}

// bedsSharedAs are the beds of a lay of two parts with nothing on them yet, the pieces
// shared out as in a plan, those that go one way pointing as they do there.
func (t *Planner) bedsSharedAs(as lay.Plan) ([]SolvedBed, error) {
	double, single, why := t.bedsInTwo(as.Lay, as.FoldedIn)
	if why != nil {
		return nil, why
	}
	choices, ok := choicesFor(t.strict(), double, single, t.Wanted)
	if !ok {
		return nil, lay.Reason{Of: lay.NotShared}
	}
	shared, _ := t.sharedIn(as, choices)
	for i, c := range choices {
		if shared[i] < c.least || shared[i] > c.most {
			return nil, lay.Reason{Of: lay.FixedTurned, Pieces: []string{c.Piece.Name}}
		}
	}
	parts := shared.split(choices)
	if len(parts.double) == 0 || len(parts.single) == 0 {
		return nil, lay.Reason{Of: lay.NotShared}
	}
	var first []SolvedBed
	var failed error
	for _, back := range t.ends() {
		double.PointBack, single.PointBack = back, back
		beds, err := t.bedsFor(parts, double, single, as.Places)
		switch {
		case err != nil:
			failed = err
		case t.canHold(beds, as):
			return beds, nil
		case first == nil:
			first = beds
		}
	}
	if first == nil {
		return nil, failed
	}
	return first, nil
}

func (t *Planner) bedsFor(parts split, double, single bed.Bed, places lay.Places) ([]SolvedBed, error) {
	low, _, err := t.bedWithFixed(double, parts.double, lay.Plan{}, places)
	if err != nil {
		return nil, err
	}
	high, _, err := t.bedWithFixed(single, parts.single, lay.Plan{}, places)
	return []SolvedBed{low, high}, err
}

// canHold says that each piece of a plan may be turned on its bed as it is.
func (t *Planner) canHold(beds []SolvedBed, as lay.Plan) bool {
	count := 0
	for part, one := range beds {
		_, placed := benchBed{SolvedBed: one, asked: t.Asked, part: part}.still(as.Pieces, -1)
		count += len(placed)
	}
	return count == len(as.Pieces)
}

// bedBehind is an open stretch behind a folded one of another length.
func (t *Planner) bedBehind(was SolvedBed, length float64, places lay.Places) (SolvedBed, error) {
	b := bed.OpenAfter(t.Cloth, length)
	b.PointBack = was.Bed.PointBack
	if b.At == was.Bed.At {
		return was, nil
	}
	problem, matched, err := rules.ProblemAt(t.Cloth, b, was.Templates, t.joins(), places)
	if err != nil {
		return SolvedBed{}, err
	}
	was.Bed, was.Problem, was.matched = b, problem, matched
	return was, nil
}
