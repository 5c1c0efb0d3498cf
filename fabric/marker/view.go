package marker

import (
	"fmt"
	"math"

	"github.com/paulmach/orb"

	"ellwand/fabric/lay"
	"ellwand/fabric/purchase"
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

// drawLay draws all pages of the lay.
func (s *sheets) drawLay() {
	low, high := Edges(s.plan)
	spread := spreadFor(s.options.Paper, high-low, purchase.OnTable(s.plan))
	s.denominator = spread.denominator
	_, along := roomOn(spread.Paper)
	for page := range spread.pages {
		v := view{scale: 1 / s.denominator, low: low, high: high, page: page + 1, pages: spread.pages}
		v.from = float64(page) * along * s.denominator
		v.to = math.Min(v.from+along*s.denominator, purchase.OnTable(s.plan))
		s.Add(spread.Paper)
		s.drawPage(v)
	}
}

func (v view) first() bool { return v.page == 1 }

func (v view) last() bool { return v.page == v.pages }

func (s *sheets) drawPage(v view) {
	if v.first() {
		s.drawTitle()
	} else {
		s.drawHead(fmt.Sprintf("The lay, part %d of %d", v.page, v.pages))
	}
	height := (v.high - v.low) * v.scale
	spare := s.Height - margin - footHeight - roomBelow - s.Y - roomAbove - height
	v.left = margin + roomLeft
	// A low drawing sits in the upper part of its room, not at the very top.
	v.bottom = s.Y + roomAbove + height + math.Max(0, math.Min(18, spare/3))
	s.drawCloth(v)
	shown, labels := s.drawPieces(v)
	s.drawEdges(v)
	s.drawInnerLines(v, shown, labels)
	s.drawClothRuler(v)
	s.drawFoot(v)
}

// drawHead writes the head of a page after the first.
func (s *sheets) drawHead(text string) {
	s.Bold(12)
	s.Text(margin, margin+5, text)
	s.SetPen(0.3, 0)
	s.Line(margin, margin+8, s.Width-margin, margin+8)
	s.Y = margin + 11
}

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
