package fabric

import (
	"math"

	"ellwand/nest"
	"ellwand/pieces"
)

// unfolded opens a folded lay out flat: every template and its mirror image
// about the fold, which then runs along the middle of the open cloth. It is a
// layout of the open problem, so an open lay need never be longer than the
// folded one. The templates of both lays must come from the same pieces. It
// reports false when a piece has no such turn in the open lay.
func unfolded(folded lain, open []template, openProblem nest.Problem) (nest.Layout, bool) {
	half := folded.problem.Width
	lower := pieces.Motion{A: 1, D: 1, F: half}
	upper := pieces.Motion{A: 1, D: -1, F: half}
	used := make([]int, len(open))
	out := nest.Layout{Length: folded.layout.Length}
	for _, at := range folded.layout.Placements {
		t := folded.templates[at.Item]
		motion := placementMotion(folded.problem, at)
		motions := []pieces.Motion{after(lower, motion)}
		if !t.onFold {
			motions = append(motions, after(upper, motion))
		}
		for _, m := range motions {
			placement, ok := placedOpen(m, t.source, open, openProblem)
			if !ok {
				return nest.Layout{}, false
			}
			placement.Copy = used[placement.Item]
			used[placement.Item]++
			out.Placements = append(out.Placements, placement)
		}
	}
	return out, true
}

// placedOpen finds the template of the open lay, and its turn, that lies as
// the motion says. Face down and face up are the same for a piece that is its
// own mirror image.
func placedOpen(m pieces.Motion, source int, open []template, problem nest.Problem) (nest.Placement, bool) {
	for item, t := range open {
		if t.source != source {
			continue
		}
		move := m
		if t.isAlike && reflects(m) {
			move = after(m, t.image)
		}
		for k, turn := range problem.Items[item].Turns {
			if turn.Mirrored == reflects(move) && math.Abs(math.Remainder(turn.Degrees-turnedBy(move), 360)) < grainTolerance {
				return nest.Placement{Item: item, Turn: k, X: move.E, Y: move.F}, true
			}
		}
	}
	return nest.Placement{}, false
}
