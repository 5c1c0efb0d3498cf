package plan

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/fabric/bed"
	"ellwand/fabric/internal/geometry"
	"ellwand/fabric/lay"
	"ellwand/fabric/rules"
	"ellwand/nest/layout"
	"ellwand/nest/verify"
	"ellwand/pieces"
)

// warmStarts are layouts to begin a search with.
type warmStarts struct {
	// sound keeps every rule of the bed; near breaks nothing but the gap, and
	// is shorter. Nil when there is none.
	valid, near *layout.Layout
}

// where a search begins.
func (s warmStarts) where() *layout.Layout {
	if s.near != nil {
		return s.near
	}
	return s.valid
}

// startsFor a lay are the shortest layouts known: for the open one the other
// lays opened out, and for any the plans that the caller knows. Along a fold
// or a straight cut pieces lie without a gap, so that with one an opened lay
// may need a little more; a lay opened about a line across is moved apart there.
func (t *Table) startsFor(kind lay.Kind, b bed.Bed, templates []rules.Template, problem layout.Problem) warmStarts {
	var out warmStarts
	offer := func(laid layout.Layout) bool {
		if verify.Layout(problem, laid) != nil {
			return false
		}
		if out.valid == nil || laid.Length < out.valid.Length {
			out.valid = &laid
		}
		return true
	}
	for _, s := range t.solved {
		opened, ok := unfolded(t.Cloth, s.Beds, b, templates, problem)
		if kind != lay.Open || !ok || offer(opened) || t.Cloth.Gap == 0 {
			continue
		}
		offer(parted(opened, problem, s.seam(t.Cloth)))
		if out.near == nil || opened.Length < out.near.Length {
			out.near = &opened
		}
	}
	for _, plan := range t.Options.Known {
		if plan.Lay == kind && b.At == (orb.Point{}) && len(plan.Parts) == 1 {
			if laid, ok := relaid(plan, t.Asked, templates, problem); ok {
				offer(laid)
			}
		}
	}
	if out.near != nil && out.valid != nil && out.near.Length >= out.valid.Length {
		out.near = nil
	}
	return out
}

// relaid brings a plan of another question about the same pieces, in the same
// lay, back to a layout of this one. It reports false when the plan does not
// answer it, for example because a piece lies in a turn that is not allowed.
// Whether the layout keeps the rest of the rules is for verify.Layout to say.
func relaid(plan lay.Plan, all []pieces.Piece, templates []rules.Template,
	problem layout.Problem) (layout.Layout, bool) {
	used := make([]int, len(templates))
	out := layout.Layout{}
	for _, l := range plan.Pieces {
		placement, ok := relaidPiece(l, lay.SourceOf(l, all), templates, problem, used)
		if !ok {
			return layout.Layout{}, false
		}
		used[placement.Item]++
		out.Placements = append(out.Placements, placement)
	}
	for item, n := range used {
		if n != templates[item].Copies {
			return layout.Layout{}, false
		}
	}
	out.Length = LengthOf(problem, out)
	return out, true
}

// relaidPiece finds the turn in which a piece lies as in the plan, the pin
// being that of the fold it lies on.
func relaidPiece(l lay.Laid, source int, templates []rules.Template, problem layout.Problem,
	used []int) (layout.Placement, bool) {
	for item, t := range templates {
		if t.Source != source || used[item] >= t.Copies || t.OnFold != l.OnFold {
			continue
		}
		move := geometry.MotionOf(l.Turn, l.Mirrored, l.X, l.Y)
		if t.IsAlike && l.Mirrored {
			move = geometry.After(move, t.Image)
		}
		for k, turn := range problem.Items[item].Turns {
			off := math.Remainder(geometry.TurnedBy(move)-turn.Degrees, 360)
			if turn.Mirrored != geometry.Reflects(move) || math.Abs(off) > problem.Items[item].Tilt+rules.GrainTolerance {
				continue
			}
			at := layout.Placement{Item: item, Copy: used[item], Turn: k, X: move.E, Y: move.F}
			if problem.Items[item].Tilt > 0 {
				at.Tilt = off
			}
			box := problem.Placed(at).Bound()
			if turn.Pin == layout.PinLow && math.Abs(box.Min[1]) > pinTolerance ||
				turn.Pin == layout.PinHigh && math.Abs(box.Max[1]-problem.Width) > pinTolerance {
				continue
			}
			return at, true
		}
	}
	return layout.Placement{}, false
}

// pinTolerance, mm, within which a piece lies on a fold [source.OwnChoice].
const pinTolerance = 1e-3
