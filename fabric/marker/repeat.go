package marker

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/fabric"
)

// drawRepeat draws the lines of the repeat on this page.
func (s *sheets) drawRepeat(v view) {
	s.pen(0.12, 60, 0.3, 1.1)
	for _, line := range RepeatLines(s.plan, v.from, v.to) {
		a, b := v.at(line[0]), v.at(line[1])
		s.line(a[0], a[1], b[0], b[1])
	}
}

// RepeatLines are lines on the same place of the repeat between two places
// along the warp, in the frame of the lay: along the warp from the left end,
// across from the centre line of the cloth. Across they are left out where the
// lower ply does not lie as in an open or a simply folded lay.
func RepeatLines(plan fabric.LayPlan, from, to float64) [][2]orb.Point {
	var out [][2]orb.Point
	for _, stretch := range stretches(plan) {
		low, high := max(stretch.from, from), min(stretch.to, to)
		if along := plan.Cloth.Repeat.Along; along > 0 {
			for x := math.Ceil(low/along) * along; x <= high; x += along {
				out = append(out, [2]orb.Point{{x, stretch.low}, {x, stretch.high}})
			}
		}
		first, ok := firstAcross(plan)
		for y := first; ok && low < high && y <= stretch.high; y += plan.Cloth.Repeat.Across {
			out = append(out, [2]orb.Point{{low, y}, {high, y}})
		}
	}
	return out
}

// firstAcross is the lowest line of the repeat across, in the frame of the
// lay; not ok where there is none, or none that can be shown.
func firstAcross(plan fabric.LayPlan) (y float64, ok bool) {
	repeat := plan.Cloth.Repeat
	if repeat.Across <= 0 {
		return 0, false
	}
	edge := plan.Cloth.Selvedge // of the cloth, below y = 0
	switch plan.Lay {
	case fabric.Open, fabric.FoldedAcross, fabric.CutAcross:
	case fabric.FoldedAlong:
		edge = plan.Cloth.Width / 2
	default:
		return 0, false
	}
	low, _ := Edges(plan)
	at := repeat.CentreLine - edge
	return at + math.Ceil((low-at)/repeat.Across)*repeat.Across, true
}

// hasRepeat reports whether lines of a repeat are drawn.
func hasRepeat(plan fabric.LayPlan) bool {
	_, across := firstAcross(plan)
	return across || plan.Cloth.Repeat.Along > 0
}
