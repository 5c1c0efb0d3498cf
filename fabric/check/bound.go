package check

import (
	"fmt"

	"ellwand/fabric/lay"
	"ellwand/pieces"
)

var _ = register(rule{whole: checkBound})

// checkBound: nothing proves that this lay, which is there, cannot be.
func checkBound(p lay.Plan, _ []openedPiece, _ []pieces.Piece) error {
	if !(p.Bound >= 0 && p.Bound <= p.Length+edgeTolerance) {
		return fmt.Errorf("the lay is %.3f mm long, and its bound is %.3f mm", p.Length, p.Bound)
	}
	return nil
}
