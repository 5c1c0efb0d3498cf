package check

import (
	"fmt"
	"math"

	"github.com/paulmach/orb"

	"ellwand/fabric/lay"
	"ellwand/pieces"
	"ellwand/pieces/seams"
)

var _ = register(rule{laid: checkFold})

// checkFold: a half piece lies with its fold edge exactly on a fold. The two plies
// give the two halves of a whole piece when both bring that edge to the same place.
func checkFold(p lay.Plan, l lay.Laid, asked pieces.Piece, _ *Lines) error {
	plies := foldedOver(p, l)
	if l.OnFold != (asked.Fold != seams.None && len(plies) == 2 && !p.Lay.IsAcross()) {
		return fmt.Errorf("%s copy %d: it is wrongly laid to the fold", l.Name, l.Copy)
	}
	if !l.OnFold {
		if asked.Fold != seams.None && math.Abs(area(l.Seam)) < 1.99*math.Abs(area(asked.SeamOutline(seamTolerance))) {
			return fmt.Errorf("%s copy %d: it is a half piece and lies away from a fold", l.Name, l.Copy)
		}
		return nil
	}
	edge, _ := l.Piece.Map(motion(l)).Edge(asked.Fold)
	start, end := edge.Path.Start(), edge.Path.End()
	for _, q := range []orb.Point{start, end} {
		if distance(plies[0].place(q), plies[1].place(q)) > 2*edgeTolerance {
			return fmt.Errorf("%s copy %d: its fold edge is not on the fold", l.Name, l.Copy)
		}
	}
	return nil
}
