package fabric

import (
	"math"
	"time"

	"ellwand/nest"
	"ellwand/pieces"
)

// usualTime to search a lay when nothing else is asked.
const usualTime = 5 * time.Second

// relaid brings a plan of another question about the same pieces, in the same
// lay, back to a layout of this one. It reports false when the plan does not
// answer it, for example because a piece lies in a turn that is not allowed.
// Whether the layout keeps the rest of the rules is for nest.Verify to say.
func relaid(plan LayPlan, all []pieces.Piece, templates []template, problem nest.Problem) (nest.Layout, bool) {
	used := make([]int, len(templates))
	out := nest.Layout{}
	for _, l := range plan.Pieces {
		placement, ok := relaidPiece(l, sourceOf(l, all), templates, problem, used)
		if !ok {
			return nest.Layout{}, false
		}
		used[placement.Item]++
		out.Placements = append(out.Placements, placement)
	}
	for item, n := range used {
		if n != templates[item].copies {
			return nest.Layout{}, false
		}
	}
	out.Length = lengthOf(problem, out)
	return out, true
}

// relaidPiece finds the turn in which a piece lies as in the plan, the pin
// being that of the fold it lies on.
func relaidPiece(l Laid, source int, templates []template, problem nest.Problem, used []int) (nest.Placement, bool) {
	for item, t := range templates {
		if t.source != source || used[item] >= t.copies || t.onFold != l.OnFold {
			continue
		}
		move := l.motion()
		if t.isAlike && l.Mirrored {
			move = after(move, t.image)
		}
		for k, turn := range problem.Items[item].Turns {
			off := math.Remainder(turnedBy(move)-turn.Degrees, 360)
			if turn.Mirrored != reflects(move) || math.Abs(off) > problem.Items[item].Tilt+grainTolerance {
				continue
			}
			at := nest.Placement{Item: item, Copy: used[item], Turn: k, X: move.E, Y: move.F}
			if problem.Items[item].Tilt > 0 {
				at.Tilt = off
			}
			box := problem.Placed(at).Bound()
			if turn.Pin == nest.PinLow && math.Abs(box.Min[1]) > edgeTolerance ||
				turn.Pin == nest.PinHigh && math.Abs(box.Max[1]-problem.Width) > edgeTolerance {
				continue
			}
			return at, true
		}
	}
	return nest.Placement{}, false
}
