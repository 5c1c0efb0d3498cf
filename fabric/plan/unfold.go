package plan

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/fabric/bed"
	"ellwand/fabric/cloth"
	"ellwand/fabric/internal/motion"
	"ellwand/fabric/rules"
	"ellwand/nest/layout"
	"ellwand/pieces"
)

// unfolded opens a lay out flat: every template, and its image in the upper
// ply, in its place on the open cloth. It is a layout of the open problem, so
// an open lay need never be longer than a doubled one. The templates, of the
// bed that is the open cloth, must come from the same pieces. It reports false when a piece has no such turn in the
// open lay.
func unfolded(c cloth.Cloth, beds []SolvedBed, flat bed.Bed, open []rules.Template,
	openProblem layout.Problem) (layout.Layout, bool) {
	used := make([]int, len(open))
	var out layout.Layout
	toBed := pieces.Motion{A: 1, D: 1, F: -flat.V}
	for _, found := range beds {
		plies := found.Bed.PliesOn(c, found.Layout.Length)
		for _, at := range found.Layout.Placements {
			t, motion := found.Templates[at.Item], rules.PlacementMotion(found.Problem, at)
			over := pliesOver(plies, found.Problem.Placed(at))
			if t.OnFold || t.FromLower { // whole already when laid open, or one alone
				over = over[:1]
			}
			for _, p := range over {
				placement, ok := placedOpen(motion.Then(p.Motion).Then(toBed), t.Source, open, openProblem)
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
		if n != open[item].Copies {
			return layout.Layout{}, false
		}
	}
	out.Length = LengthOf(openProblem, out)
	return out, true
}

// LengthOf a layout is the largest x of its outlines.
func LengthOf(problem layout.Problem, laid layout.Layout) float64 {
	length := 0.0
	for _, at := range laid.Placements {
		length = math.Max(length, problem.Placed(at).Bound().Max[0])
	}
	return length
}

// pliesOver are the plies that a template at that place is cut from.
func pliesOver(plies []bed.Ply, outline orb.Ring) []bed.Ply {
	middle := outline.Bound().Center()[1]
	var out []bed.Ply
	for _, p := range plies {
		if middle >= p.Low && middle <= p.High && len(out) < 2 {
			out = append(out, p)
		}
	}
	return out
}

// placedOpen finds the template of the open lay, and its turn, that lies as
// the motion says. Face down and face up are the same for a piece that is its
// own mirror image.
func placedOpen(m pieces.Motion, source int, open []rules.Template, problem layout.Problem) (layout.Placement, bool) {
	for item, t := range open {
		if t.Source != source {
			continue
		}
		move := m
		if t.IsAlike && m.Mirrors() {
			move = t.Image.Then(m)
		}
		allowed := problem.Items[item].Tilt + rules.GrainTolerance
		best := layout.Placement{Turn: -1}
		for k, turn := range problem.Items[item].Turns {
			off := math.Remainder(motion.TurnedBy(move)-turn.Degrees, 360)
			if turn.Mirrored == move.Mirrors() && math.Abs(off) < allowed && turn.Pin == layout.PinNone {
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
