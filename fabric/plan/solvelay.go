package plan

import (
	"ellwand/fabric/bed"
	"ellwand/fabric/lay"
	"ellwand/fabric/rules"
)

// SolveLay solves a lay; it returns the reason when that is not possible.
func (t *Planner) SolveLay(kind lay.Kind) (found *SolvedLay, why, err error) {
	isInTwo := kind == lay.SelvedgeIn || kind == lay.InStretches
	switch {
	case t.Options.hasFixed() && isInTwo:
		return t.aroundFixedInTwo(kind)
	case t.Options.hasFixed():
		return t.aroundFixed(kind)
	}
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
	s := LayOf(t.Cloth, *one)
	s.Bound = one.Bound
	return s, nil, nil
}
