package check

import (
	"fmt"
	"math"

	"ellwand/fabric/lay"
	"ellwand/pieces"
)

var _ = register(rule{laid: checkPlace})

// checkPlace: the cutting line of each piece, moved as the plan says, is covered by
// the outline that was laid, that outline is hardly larger, and it lies on its part
// of the lay.
func checkPlace(p lay.Plan, l lay.Laid, _ pieces.Piece, known *Lines) error {
	drawn, err := known.cutLine(l.Piece)
	if err != nil {
		return err
	}
	cut := moved(motion(l), drawn)
	var around float64
	for i, q := range cut {
		if !covers(l.Outline, q) && off(l.Outline, q) > coverTolerance {
			return fmt.Errorf("%s copy %d: its cutting line is not inside the outline laid", l.Name, l.Copy)
		}
		if i > 0 {
			around += distance(cut[i-1], q)
		}
	}
	if math.Abs(area(l.Outline)) > math.Abs(area(cut))+excessAllowed*around {
		return fmt.Errorf("%s copy %d: the outline laid is too large", l.Name, l.Copy)
	}
	box, part := l.Outline.Bound(), p.Beds[l.Bed]
	if box.Min[0] < part.X-edgeTolerance || box.Min[1] < part.Y-edgeTolerance ||
		box.Max[0] > part.X+part.Length+edgeTolerance || box.Max[1] > part.Y+part.Width+edgeTolerance ||
		box.Max[0] > p.Length+edgeTolerance || box.Max[1] > p.Width+edgeTolerance {
		return fmt.Errorf("%s copy %d hangs over the cloth", l.Name, l.Copy)
	}
	return nil
}
