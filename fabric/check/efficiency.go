package check

import (
	"fmt"
	"math"

	"ellwand/fabric/lay"
	"ellwand/pieces"
)

var _ = register(rule{whole: checkEfficiency})

// checkEfficiency: the efficiency is the area of all that comes out of the plies over
// the cloth between the selvedges that is taken.
func checkEfficiency(p lay.Plan, opened []openedPiece, _ []pieces.Piece) error {
	out := 0.0
	for _, o := range opened {
		halves := 1.0
		if o.OnFold {
			halves = 2
		}
		out += halves * math.Abs(area(o.outline))
	}
	usable := p.Taken * (widthLaid(p.Cloth) - 2*p.Cloth.Selvedge)
	if usable <= 0 || !(p.Density >= 0 && p.Density <= 1+figureTolerance) ||
		math.Abs(p.Density-out/usable) > figureTolerance {
		return fmt.Errorf("the efficiency is %.6f, and it says %.6f", out/usable, p.Density)
	}
	return nil
}
