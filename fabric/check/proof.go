// Package check proves a lay by the rules of the trade, from the pieces that were
// asked and the cloth alone. It imports nothing that makes plans, and has its own
// geometry.
package check

import (
	"errors"

	"ellwand/fabric/lay"
	"ellwand/pieces"
)

// Plan says whether a plan keeps the rules of the trade for the pieces that were
// asked. It is written apart from the code that makes plans, and starts again from the
// pieces; it opens the lay out and looks at each piece where it lies on the open cloth,
// by every rule of this package.
//
// That pieces do not overlap is checked by verify.Layout.
func Plan(p lay.Plan, all []pieces.Piece) error { return new(Lines).Plan(p, all) }

// Plan is the proof of this package, with what earlier ones have derived of lines; nil
// knows nothing, and learns nothing.
func (known *Lines) Plan(p lay.Plan, all []pieces.Piece) error {
	if known == nil {
		known = new(Lines)
	}
	var faults []error
	all = ruledPieces(p.Cloth, all)
	var opened []openedPiece
	sources := lay.SourcesIn(all)
	for _, l := range p.Pieces {
		source, err := sourceOf(p, l, sources)
		if err != nil {
			faults = append(faults, err)
			continue
		}
		gives := openedOut(p, l, source)
		opened = append(opened, gives...)
		faults = append(faults, looked(p, l, gives, all[source], known))
	}
	whole := onEach(func(r rule) error {
		if r.whole == nil {
			return nil
		}
		return r.whole(p, opened, all)
	})
	return errors.Join(append(faults, whole)...)
}
