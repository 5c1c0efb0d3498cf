package remnant

import (
	"ellwand/fabric/lay"
	"ellwand/fabric/plan"
)

// round lays all other pieces round those that stay, as short as can be: what is left
// over is then in one piece without pushing anything together. The reason why they
// cannot stay is an error.
func (q *question) round() (lay.Kind, *plan.SolvedLay, error) {
	kind := q.Options.Fixed.Lay
	found, why, err := q.SolveLay(kind)
	if err == nil {
		err = why
	}
	if err != nil {
		return kind, nil, err
	}
	return kind, q.keep(kind, found), nil
}
