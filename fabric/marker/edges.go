package marker

import (
	"github.com/paulmach/orb"

	"ellwand/fabric"
)

// EdgeLine is an edge of the cloth as it lies, in the frame of the lay.
type EdgeLine struct {
	From, To orb.Point
	IsFold   bool
}

// EdgeLines are the outer edges of the lay along the warp, the far one before
// the near one, for each length of cloth.
func EdgeLines(plan fabric.LayPlan) []EdgeLine {
	var out []EdgeLine
	for i, s := range stretches(plan) {
		out = append(out,
			EdgeLine{orb.Point{s.from, s.high}, orb.Point{s.to, s.high}, plan.Lay == fabric.BothSelvedgesIn},
			EdgeLine{orb.Point{s.from, s.low}, orb.Point{s.to, s.low}, hasFoldNearby(plan.Lay, i)})
	}
	return out
}

// hasFoldNearby reports whether the edge nearest to the cutter is a fold, on
// the length with that index.
func hasFoldNearby(lay fabric.Lay, length int) bool {
	switch lay {
	case fabric.FoldedAlong, fabric.SelvedgeIn, fabric.BothSelvedgesIn:
		return true
	case fabric.InStretches:
		return length == 0
	}
	return false
}

// FarEdge names the edge of the lay farthest from the cutter.
func FarEdge(plan fabric.LayPlan) string {
	switch plan.Lay {
	case fabric.FoldedAlong, fabric.FoldedAcross, fabric.CutAcross:
		return "both selvedges"
	case fabric.BothSelvedgesIn:
		return "fold"
	}
	return "selvedge"
}

// NearEdge names the edge of the lay nearest to the cutter.
func NearEdge(plan fabric.LayPlan) string {
	switch plan.Lay {
	case fabric.FoldedAlong, fabric.SelvedgeIn, fabric.BothSelvedgesIn:
		return "fold"
	case fabric.FoldedAcross, fabric.CutAcross:
		return "both selvedges nearest to you"
	case fabric.InStretches:
		return "fold, then selvedge nearest to you"
	}
	return "selvedge nearest to you"
}

// LeftEnd names the end where distances along begin, and reports whether it is
// a fold.
func LeftEnd(plan fabric.LayPlan) (name string, isFold bool) {
	switch plan.Lay {
	case fabric.FoldedAcross:
		return "fold", true
	case fabric.CutAcross:
		return "two cut ends", false
	}
	return "cut end", false
}
