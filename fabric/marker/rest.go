package marker

import (
	"fmt"
	"math"

	"github.com/paulmach/orb"
)

// drawRest draws the page of the cloth that is left over: the lay with its
// pieces in grey, and the largest rectangles between them with their sizes.
func (s *sheets) drawRest() {
	rests := leftovers(s.plan)
	if len(rests) == 0 {
		return
	}
	s.addTextPage("What is left over")
	low, high := Edges(s.plan)
	const listWidth = 62.0
	wide, tall := s.inner()-listWidth-8, s.height-margin-s.y-14
	scale := math.Min(wide/s.plan.OnTable(), tall/(high-low))
	v := view{to: s.plan.OnTable(), left: margin, bottom: s.y + 3 + (high-low)*scale, scale: scale, low: low, high: high, page: 1, pages: 1}
	box := v.box()
	s.pen(0.35, 0)
	for _, stretch := range stretches(s.plan) {
		s.polygon(v.line(ringOf(orb.Bound{Min: orb.Point{stretch.from, stretch.low}, Max: orb.Point{stretch.to, stretch.high}})), "D")
	}
	s.pen(0.15, 120)
	s.fill(greyWaste)
	for _, l := range s.plan.Pieces {
		s.polygon(v.line(l.Outline), "FD")
	}
	s.within(box, func() {
		for _, zone := range s.plan.Zones {
			s.pen(0.15, 90)
			s.crossHatch(v.line(zone), 1.2)
		}
	})
	for i, r := range rests {
		s.pen(0.5, 0)
		shown := v.line(ringOf(r.box))
		s.polygon(shown, "D")
		s.font("B", 9)
		s.textCentred(orb.Ring(shown).Bound().Center()[0], orb.Ring(shown).Bound().Center()[1]+1.2, letter(i))
	}
	s.listRest(s.width-margin-listWidth, rests)
}

func letter(i int) string { return string(rune('A' + i)) }

// listRest lists the sizes, along the warp first.
func (s *sheets) listRest(x float64, rests []leftover) {
	y := s.y + 6
	s.font("B", 8.5)
	s.text(x, y, "along the warp × across")
	for i, r := range rests {
		y += 5.5
		s.font("B", 9)
		s.text(x, y, letter(i))
		s.font("", 9)
		s.text(x+6, y, fmt.Sprintf("%s × %s%s", s.options.Short(r.box.Max[0]-r.box.Min[0]), s.options.Short(r.box.Max[1]-r.box.Min[1]), layers(r.plies)))
	}
	y += 8
	s.font("", 8.5)
	for _, line := range s.wrapped("White is left over: usable cloth from cut end to cut end, selvedges and flaws apart. Keep what is large enough for a pocket, a facing or a bag, with its warp marked.", s.width-margin-x) {
		s.text(x, y, line)
		y += adviceStep
	}
}

func layers(plies int) string {
	if plies == 2 {
		return ", two layers"
	}
	return ""
}
