package marker

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/fabric"
)

// drawRepeat draws lines on the same place of the repeat: along the warp from
// the left end, across from the centre line of the cloth. Across they are left
// out where the lower ply does not lie as in an open or a simply folded lay.
func (s *sheets) drawRepeat(v view) {
	s.pen(0.12, 60, 0.3, 1.1)
	if along := s.plan.Cloth.Repeat.Along; along > 0 {
		for x := math.Ceil(v.from/along) * along; x <= v.to; x += along {
			a, b := v.at(orb.Point{x, v.low}), v.at(orb.Point{x, v.high})
			s.line(a[0], a[1], b[0], b[1])
		}
	}
	first, ok := firstAcross(s.plan)
	if !ok {
		return
	}
	for y := first; y <= v.high; y += s.plan.Cloth.Repeat.Across {
		a, b := v.at(orb.Point{v.from, y}), v.at(orb.Point{v.to, y})
		s.line(a[0], a[1], b[0], b[1])
	}
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
