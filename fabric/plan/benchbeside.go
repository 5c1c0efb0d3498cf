package plan

import (
	"math"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/fabric/internal/motion"
	"ellwand/fabric/lay"
	"ellwand/nest"
	"ellwand/nest/layout"
	"ellwand/pieces/geometry"
)

// lying is one of the pieces as it lies where a hand holds it, turned as it may.
func (b *Bench) lying(all []lay.Laid, piece int, held lay.Laid) lay.Laid {
	held.Bed, held.OnFold = all[piece].Bed, all[piece].OnFold
	on, err := b.under(all, piece)
	if err != nil {
		return held
	}
	placed, _ := on.still(all, piece)
	held, at, ok := on.turnedToLie(held, placed)
	if ok {
		held.Outline = moveRing(on.Problem.Placed(at), on.Bed.At)
	}
	return held
}

// beside lays a further piece where there is room for it, as near to the cut end as it
// can; where there is none, behind all others.
func (b *Bench) beside(all []lay.Laid, one lay.Laid) lay.Laid {
	end := math.Max(endOf(all, 0), endOf(all, 1))
	all = append(slices.Clip(all), one)
	on, err := b.under(all, len(all)-1)
	if err != nil {
		return one
	}
	placed, still := on.still(all, len(all)-1)
	one, at, ok := on.turnedToLie(one, placed)
	if !ok {
		return one
	}
	at.X -= on.Problem.Placed(at).Bound().Min[0]
	hand, err := nest.NewHand(on.upToBorder(), at.Item, still, b.planner.Options.Tables)
	if err != nil {
		return one
	}
	if to, free := hand.Slide(at, end, 0); free {
		at = to
	} else {
		at.X += end - on.Bed.At[0] + b.planner.Cloth.Gap
	}
	one.X, one.Y = at.X+on.Bed.At[0], at.Y+on.Bed.At[1]
	one.Outline = moveRing(on.Problem.Placed(at), on.Bed.At)
	return one
}

// turnedToLie is a piece turned as it may lie on the bed: as it is held, or else the first
// way there is, with its middle where it was.
func (b benchBed) turnedToLie(l lay.Laid, placed []int) (lay.Laid, layout.Placement, bool) {
	if at, ok := b.placement(l, placed); ok {
		return l, at, true
	}
	middleOf := func(l lay.Laid) orb.Point {
		return motion.Mapped(motion.MotionOf(l.Turn, l.Mirrored, l.X, l.Y), b.drawn(l)).Bound().Center()
	}
	middle, source := middleOf(l), lay.SourcesIn(b.asked).Of(l)
	for item, t := range b.Templates {
		if t.Source != source || t.OnFold != l.OnFold || placed[item] >= t.Copies {
			continue
		}
		for _, turn := range b.Problem.Items[item].Turns {
			next := l
			next.Turn, next.Mirrored = motion.WholeTurn(turn.Degrees), turn.Mirrored
			off := geometry.Sub(middle, middleOf(next))
			next.X, next.Y = next.X+off[0], next.Y+off[1]
			if at, ok := b.placement(next, placed); ok {
				return next, at, true
			}
		}
	}
	return l, layout.Placement{}, false
}
