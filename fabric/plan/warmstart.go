package plan

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/fabric/bed"
	"ellwand/fabric/internal/motion"
	"ellwand/fabric/lay"
	"ellwand/fabric/rules"
	"ellwand/nest/layout"
	"ellwand/nest/verify"
	"ellwand/pieces"
)

// startFor a lay is the shortest layout known, or nil: for the open one the other
// lays opened out, and for any the plans that the caller knows.
func (t *Planner) startFor(kind lay.Kind, b bed.Bed, templates []rules.Template,
	problem layout.Problem) *layout.Layout {
	var out *layout.Layout
	offer := func(laid layout.Layout) {
		if (out == nil || laid.Length < out.Length) && verify.Layout(problem, laid) == nil {
			out = &laid
		}
	}
	for _, s := range t.solved {
		if opened, ok := unfolded(t.Cloth, s.Beds, b, templates, problem); ok && kind == lay.Open {
			offer(opened)
		}
	}
	for _, plan := range t.Options.WarmStarts {
		isFirst := b.At == orb.Point{} || kind == lay.FoldedAcross
		if plan.Lay == kind && isFirst && len(plan.Beds) == 1 {
			if laid, ok := relaid(plan, b, t.Asked, templates, problem); ok {
				offer(laid)
			}
		}
	}
	return out
}

// relaid brings a plan of another question about the same pieces, in the same
// lay, back to a layout of this one. It reports false when the plan does not
// answer it, for example because a piece lies in a turn that is not allowed.
// Whether the layout keeps the rest of the rules is for verify.Layout to say.
func relaid(plan lay.Plan, b bed.Bed, all []pieces.Piece, templates []rules.Template,
	problem layout.Problem) (layout.Layout, bool) {
	used, sources := make([]int, len(templates)), lay.SourcesIn(all)
	out := layout.Layout{}
	for _, l := range plan.Pieces {
		l.X, l.Y = l.X-b.At[0], l.Y-b.At[1]
		placement, ok := relaidPiece(l, sources.Of(l), templates, problem, used)
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
		move := motion.MotionOf(l.Turn, l.Mirrored, l.X, l.Y)
		if t.IsAlike && l.Mirrored {
			move = t.Image.Then(move)
		}
		for k, turn := range problem.Items[item].Turns {
			off := math.Remainder(motion.TurnedBy(move)-turn.Degrees, 360)
			if turn.Mirrored != move.Mirrors() || math.Abs(off) > problem.Items[item].Tilt+rules.GrainTolerance {
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
