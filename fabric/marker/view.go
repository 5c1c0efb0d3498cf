package marker

import (
	"github.com/paulmach/orb"

	"ellwand/fabric/lay"
)

// view is the stretch of the lay on one page.
type view struct {
	from, to float64 // along the warp, mm of cloth
	// left and bottom are where (from, lowest y of the cloth) lies on paper.
	left, bottom float64
	scale        float64 // mm of paper for each mm of cloth
	low, high    float64 // edges of the cloth across, selvedges included
	page, pages  int
}

// at brings a point of the cloth to the paper.
func (v view) at(p orb.Point) orb.Point {
	return orb.Point{v.left + (p[0]-v.from)*v.scale, v.bottom - (p[1]-v.low)*v.scale}
}

func (v view) line(line []orb.Point) []orb.Point {
	out := make([]orb.Point, len(line))
	for i, p := range line {
		out[i] = v.at(p)
	}
	return out
}

// box is the cloth on this page, on paper.
func (v view) box() orb.Bound {
	top := v.at(orb.Point{v.from, v.high})
	return orb.Bound{Min: top, Max: v.at(orb.Point{v.to, v.low})}
}

func (v view) first() bool { return v.page == 1 }

func (v view) last() bool { return v.page == v.pages }

// Edges are the outer edges of the cloth across, mm in the frame of the lay.
func Edges(plan lay.Plan) (low, high float64) {
	selvedge := plan.Cloth.Selvedge
	switch plan.Lay {
	case lay.FoldedAlong, lay.SelvedgeIn:
		return 0, plan.Width + selvedge
	case lay.BothSelvedgesIn:
		return 0, plan.Width
	}
	return -selvedge, plan.Width + selvedge
}
