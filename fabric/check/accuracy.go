package check

import (
	"fmt"

	"ellwand/fabric/lay"
	"ellwand/pieces"
	"ellwand/pieces/seams"
)

var _ = register(rule{laid: checkAccuracy})

// checkAccuracy: a piece whose outline is only so accurate has that much room on
// every side.
func checkAccuracy(_ lay.Plan, l lay.Laid, asked pieces.Piece, _ *Lines) error {
	if asked.Accuracy == 0 {
		return nil
	}
	for _, edge := range l.Piece.Edges {
		for _, e := range asked.Edges {
			same := e.Name == edge.Name && (asked.Fold == seams.None || e.Name != asked.Fold)
			if same && edge.Allowance < e.Allowance+asked.Accuracy-edgeTolerance {
				return fmt.Errorf("%s copy %d: it has no room for the accuracy of its outline", l.Name, l.Copy)
			}
		}
	}
	return nil
}
