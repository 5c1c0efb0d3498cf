package marker

import (
	"fmt"
	"math"
	"strconv"

	"github.com/paulmach/orb"

	"ellwand/fabric/purchase"
	"ellwand/pieces/page"
)

// drawClothRuler draws a ruler along the near edge, in cm or inches from the
// cut end or, of several lengths, from that of each.
func (s *sheets) drawClothRuler(v view) {
	minor, each, unit, name := 50.0, 100.0, 10.0, "cm"
	if s.options.Inches {
		minor, each, unit, name = 25.4, 6*25.4, 25.4, "inches"
	}
	for each*v.scale < 5.5 {
		each *= 2
	}
	y := v.bottom + 0.8
	s.Plain(6)
	s.SetPen(0.15, 0)
	for _, o := range origins(s.plan) {
		from, to := max(v.from, o.from)-o.from, min(v.to, o.to)-o.from
		for k := int(math.Ceil(from/minor - 1e-9)); float64(k)*minor <= to+1e-6; k++ {
			at := float64(k) * minor
			x := v.at(orb.Point{o.from + at, 0})[0]
			major := math.Abs(math.Remainder(at, each)) < 1e-6
			tick := 1.0
			if major {
				tick = 1.8
			}
			s.Line(x, y, x, y+tick)
			if major && (o.to >= purchase.OnTable(s.plan) || (to-at)*v.scale > 4) {
				s.TextCentred(x, y+4.2, strconv.Itoa(int(math.Round(at/unit))))
			}
		}
	}
	s.Bold(7.5)
	edge := NearEdge(s.plan)
	s.Text(v.left, y+8, edge)
	width := s.TextWidth(edge)
	s.Plain(7)
	from := "the " + leftEnd(s.plan)
	if len(origins(s.plan)) > 1 {
		from = "each left end"
	}
	s.Text(v.left+width+3, y+8, fmt.Sprintf("the warp runs left to right; ruler in %s from %s", name, from))
}

// drawFoot draws the scale bar of the lay, the ruler by which the print is
// checked and, between them or above, what the lines mean.
func (s *sheets) drawFoot(v view) {
	y := s.Height - margin - 5.5
	s.drawScaleBar(margin, y, v.scale)
	if !s.onScreen {
		s.drawTestRuler(s.Width-margin-100, y)
	}
	switch {
	case s.Inner() > 220:
		s.drawLegend(margin+92, y)
	case v.first():
		s.drawLegend(margin, y-8)
	}
}

// drawScaleBar shows a length of cloth at the scale of the lay.
func (s *sheets) drawScaleBar(x, y, scale float64) {
	length, names := 500.0, []string{"0", "25", "50 cm of cloth"}
	if s.options.Inches {
		length, names = 24*25.4, []string{"0", "12", "24 in of cloth"}
	}
	for length*scale > 70 {
		length /= 2
		names = halved(names)
	}
	half := length * scale / 2
	s.SetPen(0.2, 0)
	s.Fill(0)
	s.Rect(x, y-1.5, half, 1.5, page.Whole)
	s.Rect(x+half, y-1.5, half, 1.5, page.Rim)
	s.Plain(6.5)
	for i, name := range names {
		s.Text(x+float64(i)*half, y+2.8, name)
	}
}

// halved halves the figures at the start of the names.
func halved(names []string) []string {
	out := make([]string, len(names))
	for i, name := range names {
		var figure float64
		var rest string
		if n, _ := fmt.Sscanf(name, "%g", &figure); n == 1 {
			rest = name[len(strconv.FormatFloat(figure, 'f', -1, 64)):]
		}
		out[i] = strconv.FormatFloat(figure/2, 'f', -1, 64) + rest
	}
	return out
}

// drawTestRuler draws exactly 100 mm of paper.
func (s *sheets) drawTestRuler(x, y float64) {
	s.SetPen(0.25, 0)
	s.Pen.Blunt = true
	s.Line(x, y, x+100, y)
	for mm := 0; mm <= 100; mm += 5 {
		tick := 1.2
		if mm%10 == 0 {
			tick = 2.2
		}
		s.Line(x+float64(mm), y, x+float64(mm), y-tick)
	}
	s.Plain(6.5)
	s.Text(x, y+2.8, "check the print: this ruler is exactly 100 mm (3 15/16 in) at full size")
}

// drawLegend explains the lines.
func (s *sheets) drawLegend(x, y float64) {
	s.Plain(6.5)
	s.SetPen(0.35, 0)
	s.Line(x, y-2.6, x+8, y-2.6)
	s.Text(x+9.5, y-1.8, "cutting line")
	s.SetPen(0.15, 60, 1, 0.7)
	s.Line(x, y+0.4, x+8, y+0.4)
	s.Text(x+9.5, y+1.2, "seam line")
	sample := func(top float64) orb.Ring {
		return ringOf(orb.Bound{Min: orb.Point{x + 30, top}, Max: orb.Point{x + 38, top + 2.4}})
	}
	s.drawHatched(sample(y - 3.9))
	s.Text(x+39.5, y-1.8, "face down")
	if len(s.plan.Zones) > 0 {
		s.SetPen(0.15, 90)
		s.CrossHatch(sample(y-0.8), 1.2)
		s.SetPen(0.3, 0)
		s.Polygon(sample(y-0.8), page.Rim)
		s.Text(x+39.5, y+1.2, "not to be used")
	}
	if hasRepeat(s.plan) {
		s.SetPen(0.12, 60, 0.3, 1.1)
		s.Line(x, y-5.4, x+8, y-5.4)
		s.Text(x+9.5, y-4.6, "repeat")
	}
}
