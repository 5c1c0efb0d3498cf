package marker

import (
	"github.com/paulmach/orb"

	"ellwand/fabric/lay"
)

// EdgeLine is an edge of the cloth as it lies, in the frame of the lay.
type EdgeLine struct {
	From, To orb.Point
	IsFold   bool
	// Name of a far edge; the near ones are named together by NearEdge.
	Name string
}

// EdgeLines are the outer edges of the lay along the warp, the far one before
// the near one, for each length of cloth.
func EdgeLines(plan lay.Plan) []EdgeLine {
	var out []EdgeLine
	for i, s := range stretches(plan) {
		out = append(out,
			EdgeLine{orb.Point{s.from, s.high}, orb.Point{s.to, s.high}, plan.Lay == lay.BothSelvedgesIn, farEdge(plan.Lay, i)},
			EdgeLine{orb.Point{s.from, s.low}, orb.Point{s.to, s.low}, hasFoldNearby(plan.Lay, i), ""})
	}
	return out
}

// farEdge names the edge farthest from the cutter, on the length with that
// index.
func farEdge(kind lay.Kind, length int) string {
	switch kind {
	case lay.FoldedAlong, lay.FoldedAcross, lay.CutAcross:
		return "both selvedges"
	case lay.BothSelvedgesIn:
		return "fold"
	case lay.InStretches:
		if length == 0 {
			return "both selvedges"
		}
	}
	return "selvedge"
}

// hasFoldNearby reports whether the edge nearest to the cutter is a fold, on
// the length with that index.
func hasFoldNearby(kind lay.Kind, length int) bool {
	switch kind {
	case lay.FoldedAlong, lay.SelvedgeIn, lay.BothSelvedgesIn:
		return true
	case lay.InStretches:
		return length == 0
	}
	return false
}

// NearEdge names the edge of the lay nearest to the cutter.
func NearEdge(plan lay.Plan) string {
	switch plan.Lay {
	case lay.FoldedAlong, lay.SelvedgeIn, lay.BothSelvedgesIn:
		return "fold"
	case lay.FoldedAcross, lay.CutAcross:
		return "both selvedges nearest to you"
	case lay.InStretches:
		return "fold, then selvedge nearest to you"
	}
	return "selvedge nearest to you"
}

// End is the end of the lay where distances along begin.
type End struct {
	From, To orb.Point
	Name     string
	IsFold   bool
}

// LeftEnd is the end at the left of the cutter.
func LeftEnd(plan lay.Plan) End {
	first := stretches(plan)[0]
	out := End{From: orb.Point{0, first.low}, To: orb.Point{0, first.high}, Name: "cut end"}
	switch plan.Lay {
	case lay.FoldedAcross:
		out.Name, out.IsFold = "fold", true
	case lay.CutAcross:
		out.Name = "two cut ends"
	}
	return out
}
