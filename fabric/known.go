package fabric

import (
	"math"
	"time"

	"github.com/paulmach/orb"

	"ellwand/nest/layout"
	"ellwand/nest/verify"
	"ellwand/pieces"
)

// usualTime to search a lay when nothing else is asked [source.OwnChoice].
const usualTime = 5 * time.Second

// starts are layouts to begin a search with.
type starts struct {
	// sound keeps every rule of the bed; near breaks nothing but the gap, and
	// is shorter. Nil when there is none.
	sound, near *layout.Layout
}

// where a search begins.
func (s starts) where() *layout.Layout {
	if s.near != nil {
		return s.near
	}
	return s.sound
}

// startsFor a lay are the shortest layouts known: for the open one the other
// lays opened out, and for any the plans that the caller knows. Along a fold
// or a straight cut pieces lie without a gap, so that with one an opened lay
// may need a little more; a lay opened about a line across is moved apart there.
func (t *table) startsFor(lay Lay, b bed, templates []template, problem layout.Problem) starts {
	var out starts
	offer := func(laid layout.Layout) bool {
		if verify.Layout(problem, laid) != nil {
			return false
		}
		if out.sound == nil || laid.Length < out.sound.Length {
			out.sound = &laid
		}
		return true
	}
	for _, s := range t.solved {
		opened, ok := unfolded(t.cloth, s.beds, b, templates, problem)
		if lay != Open || !ok || offer(opened) || t.cloth.Gap == 0 {
			continue
		}
		offer(parted(opened, problem, s.seam(t.cloth)))
		if out.near == nil || opened.Length < out.near.Length {
			out.near = &opened
		}
	}
	for _, plan := range t.options.Known {
		if plan.Lay == lay && b.at == (orb.Point{}) && len(plan.Parts) == 1 {
			if laid, ok := relaid(plan, t.asked, templates, problem); ok {
				offer(laid)
			}
		}
	}
	if out.near != nil && out.sound != nil && out.near.Length >= out.sound.Length {
		out.near = nil
	}
	return out
}

// relaid brings a plan of another question about the same pieces, in the same
// lay, back to a layout of this one. It reports false when the plan does not
// answer it, for example because a piece lies in a turn that is not allowed.
// Whether the layout keeps the rest of the rules is for verify.Layout to say.
func relaid(plan LayPlan, all []pieces.Piece, templates []template, problem layout.Problem) (layout.Layout, bool) {
	used := make([]int, len(templates))
	out := layout.Layout{}
	for _, l := range plan.Pieces {
		placement, ok := relaidPiece(l, sourceOf(l, all), templates, problem, used)
		if !ok {
			return layout.Layout{}, false
		}
		used[placement.Item]++
		out.Placements = append(out.Placements, placement)
	}
	for item, n := range used {
		if n != templates[item].copies {
			return layout.Layout{}, false
		}
	}
	out.Length = lengthOf(problem, out)
	return out, true
}

// relaidPiece finds the turn in which a piece lies as in the plan, the pin
// being that of the fold it lies on.
func relaidPiece(l Laid, source int, templates []template, problem layout.Problem, used []int) (layout.Placement, bool) {
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
			at := layout.Placement{Item: item, Copy: used[item], Turn: k, X: move.E, Y: move.F}
			if problem.Items[item].Tilt > 0 {
				at.Tilt = off
			}
			box := problem.Placed(at).Bound()
			if turn.Pin == layout.PinLow && math.Abs(box.Min[1]) > edgeTolerance ||
				turn.Pin == layout.PinHigh && math.Abs(box.Max[1]-problem.Width) > edgeTolerance {
				continue
			}
			return at, true
		}
	}
	return layout.Placement{}, false
}
