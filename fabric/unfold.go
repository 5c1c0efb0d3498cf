package fabric

import (
	"math"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/fabric/cloth"
	"ellwand/nest/layout"
	"ellwand/pieces"
)

// unfolded opens a lay out flat: every template, and its image in the upper
// ply, in its place on the open cloth. It is a layout of the open problem, so
// an open lay need never be longer than a doubled one. The templates, of the
// bed that is the open cloth, must come from the same pieces. It reports false when a piece has no such turn in the
// open lay.
func unfolded(c cloth.Cloth, beds []lain, flat bed, open []template, openProblem layout.Problem) (layout.Layout, bool) {
	used := make([]int, len(open))
	var out layout.Layout
	toBed := pieces.Motion{A: 1, D: 1, F: -flat.v}
	for _, found := range beds {
		plies := found.bed.pliesOn(c, found.layout.Length)
		for _, at := range found.layout.Placements {
			t, motion := found.templates[at.Item], placementMotion(found.problem, at)
			over := pliesOver(plies, found.problem.Placed(at))
			if t.onFold { // whole already, when laid open
				over = over[:1]
			}
			for _, p := range over {
				placement, ok := placedOpen(after(toBed, after(p.motion, motion)), t.source, open, openProblem)
				if !ok {
					return layout.Layout{}, false
				}
				placement.Copy = used[placement.Item]
				used[placement.Item]++
				out.Placements = append(out.Placements, placement)
			}
		}
	}
	for item, n := range used {
		if n != open[item].copies {
			return layout.Layout{}, false
		}
	}
	out.Length = lengthOf(openProblem, out)
	return out, true
}

// seam is where the open cloth was folded or cut across, in a lay opened out;
// 0 where it was not.
func (s *spread) seam(c cloth.Cloth) float64 {
	last := s.beds[len(s.beds)-1]
	switch last.bed.lay {
	case FoldedAcross:
		return last.layout.Length
	case CutAcross:
		return secondLength(c, last.layout.Length)
	}
	return last.bed.before
}

// parted moves everything beyond a line across away from it by the gap.
func parted(laid layout.Layout, problem layout.Problem, seam float64) layout.Layout {
	out := layout.Layout{Placements: slices.Clone(laid.Placements)}
	for i, at := range out.Placements {
		if problem.Placed(at).Bound().Center()[0] > seam {
			out.Placements[i].X += problem.Gap
		}
	}
	out.Length = lengthOf(problem, out)
	return out
}

// lengthOf a layout is the largest x of its outlines.
func lengthOf(problem layout.Problem, laid layout.Layout) float64 {
	length := 0.0
	for _, at := range laid.Placements {
		length = math.Max(length, problem.Placed(at).Bound().Max[0])
	}
	return length
}

// pliesOver are the plies that a template at that place is cut from.
func pliesOver(plies []ply, outline orb.Ring) []ply {
	middle := outline.Bound().Center()[1]
	var out []ply
	for _, p := range plies {
		if middle >= p.low && middle <= p.high && len(out) < 2 {
			out = append(out, p)
		}
	}
	return out
}

// placedOpen finds the template of the open lay, and its turn, that lies as
// the motion says. Face down and face up are the same for a piece that is its
// own mirror image.
func placedOpen(m pieces.Motion, source int, open []template, problem layout.Problem) (layout.Placement, bool) {
	for item, t := range open {
		if t.source != source {
			continue
		}
		move := m
		if t.isAlike && reflects(m) {
			move = after(m, t.image)
		}
		allowed := problem.Items[item].Tilt + grainTolerance
		best := layout.Placement{Turn: -1}
		for k, turn := range problem.Items[item].Turns {
			off := math.Remainder(turnedBy(move)-turn.Degrees, 360)
			if turn.Mirrored == reflects(move) && math.Abs(off) < allowed && turn.Pin == layout.PinNone {
				best, allowed = layout.Placement{Item: item, Turn: k, X: move.E, Y: move.F}, math.Abs(off)
				if problem.Items[item].Tilt > 0 {
					best.Tilt = math.Max(-problem.Items[item].Tilt, math.Min(off, problem.Items[item].Tilt))
				}
			}
		}
		if best.Turn >= 0 {
			return best, true
		}
	}
	return layout.Placement{}, false
}
