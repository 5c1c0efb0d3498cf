package remnant

import (
	"ellwand/fabric/lay"
	"ellwand/fabric/plan"
)

// kept lays what was found before anew; it returns the first lay that fits. One that
// does not is where the search begins.
func (q *question) kept(settings []setting) (lay.Kind, *plan.SolvedLay) {
	for _, s := range settings {
		found := q.Rebuilt(s.lay)
		if found == nil {
			continue
		}
		if s.isSingle() {
			q.strips[s.lay] = found.Beds[0].Layout
		}
		if fits := q.keep(s.lay, found); fits != nil {
			return s.lay, fits
		}
	}
	return 0, nil
}
