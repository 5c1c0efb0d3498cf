package plan

import (
	"slices"

	"ellwand/fabric/bed"
	"ellwand/fabric/lay"
	"ellwand/fabric/rules"
	"ellwand/nest/bound"
	"ellwand/pieces"
)

// This file keeps bounds true of pieces whose outlines are not certain: a bound of
// what is drawn about a piece is none of the piece.

// sureOf are the pieces as small as they may be, without those of which nothing is
// sure, and whether they differ from the pieces themselves.
func sureOf(all []pieces.Piece) (sure []pieces.Piece, differ bool) {
	for _, p := range all {
		least, ok := p.AtLeast()
		differ = differ || p.Approximate || p.Accuracy > 0 || !ok
		if ok && !p.Approximate {
			sure = append(sure, least)
		}
	}
	return sure, differ
}

// sureBound is a length that no layout of a lay can beat, whatever the true outlines
// of the pieces are; that which is known where all are certain.
func (t *Planner) sureBound(kind lay.Kind, known float64) float64 {
	sure, differ := sureOf(t.Asked)
	if !differ {
		return known
	}
	wanted, err := rules.DemandsOf(rules.Enlarged(t.Cloth, sure))
	if err != nil || len(sure) == 0 {
		return 0
	}
	least := &Planner{Ctx: t.Ctx, Cloth: t.Cloth, Asked: sure, Wanted: wanted}
	if kind == lay.SelvedgeIn || kind == lay.InStretches {
		return min(known, least.OpenBound())
	}
	b := bed.Of(t.Cloth, kind)
	templates, err := rules.TemplatesOf(t.Cloth, b, wanted)
	if err != nil {
		return 0
	}
	problem, err := rules.PlainProblem(t.Cloth, b, templates)
	if err != nil {
		return 0
	}
	return min(known, bound.Length(problem))
}

// noteApproximate says which pieces the bound leaves out.
func noteApproximate(p *lay.Plan) {
	var names []string
	for _, piece := range p.Asked {
		if piece.Approximate && !slices.Contains(names, piece.Name) {
			names = append(names, piece.Name)
		}
	}
	if len(names) > 0 {
		p.Notes = append(p.Notes, lay.Note{Of: lay.Unsure, Pieces: names})
	}
}
