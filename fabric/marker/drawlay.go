package marker

import (
	"fmt"
	"math"

	"ellwand/fabric/purchase"
)

// drawLay draws all pages of the lay.
func (s *sheets) drawLay() {
	low, high := Edges(s.plan)
	paging := pagingFor(s.options.Paper, high-low, purchase.OnTable(s.plan))
	s.denominator = paging.denominator
	_, along := roomOn(paging.Paper)
	for page := range paging.pages {
		v := view{scale: 1 / s.denominator, low: low, high: high, page: page + 1, pages: paging.pages}
		v.from = float64(page) * along * s.denominator
		v.to = math.Min(v.from+along*s.denominator, purchase.OnTable(s.plan))
		s.Add(paging.Paper)
		s.drawPage(v)
	}
}

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
