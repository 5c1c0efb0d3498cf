package marker

import (
	"github.com/paulmach/orb"

	"ellwand/fabric/lay"
	"ellwand/pieces/page"
)

// drawInnerLines draws and names the edge that is folded in, the line where
// the selvedges meet, and where a stretch ends.
func (s *sheets) drawInnerLines(v view, shown []shownPiece, labels []label) {
	switch s.plan.Lay {
	case lay.SelvedgeIn:
		s.innerLine(v, orb.Point{v.from, s.plan.FoldedIn}, orb.Point{v.to, s.plan.FoldedIn}, "edge folded in", shown, labels)
	case lay.BothSelvedgesIn:
		s.innerLine(v, orb.Point{v.from, s.plan.Width / 2}, orb.Point{v.to, s.plan.Width / 2}, "selvedges meet", shown,
			labels)
	case lay.InStretches:
		if len(s.plan.Beds) < 2 || s.plan.Beds[1].X < v.from || s.plan.Beds[1].X > v.to {
			return
		}
		x := s.plan.Beds[1].X
		a, b := v.at(orb.Point{x, v.high}), v.at(orb.Point{x, v.low})
		s.SetPen(0.9, 0)
		s.Line(a[0], a[1], b[0], b[1])
		s.Bold(7.5)
		// Beside the upper half, where the folded length leaves the table bare.
		s.TextUp(a[0]-1, 0.75*a[1]+0.25*b[1], "cut across here, "+s.options.Short(x))
	}
}

// innerLine names its line on free ground beside it or, where there is none,
// on a white slip over the line.
func (s *sheets) innerLine(v view, from, to orb.Point, name string, shown []shownPiece, labels []label) {
	a, b := v.at(from), v.at(to)
	s.SetPen(0.5, 0, 3, 1.5)
	s.Line(a[0], a[1], b[0], b[1])
	s.Bold(6.5)
	const height = 2.6
	gap := 0.4
	if s.plan.Lay == lay.BothSelvedgesIn {
		gap += s.plan.Cloth.Selvedge * v.scale // which is hatched
	}
	width := s.TextWidth(name) + 1
	g := newGround(shown)
	for _, l := range labels {
		g.add(l)
	}
	ends := v.at(orb.Point{s.plan.Length, from[1]})[0] // the line where the pieces end
	for x := b[0] - width - 0.5; x > a[0]+0.5; x -= 2 {
		for _, top := range []float64{a[1] - height - gap, a[1] + gap} {
			box := orb.Bound{Min: orb.Point{x, top}, Max: orb.Point{x + width, top + height}}
			if g.isFree(box) && (ends < x || ends > x+width) {
				s.Text(x+0.5, top+height-0.6, name)
				return
			}
		}
	}
	s.Fill(255)
	s.Rect(b[0]-width-1, a[1]-height/2, width, height, page.Inside)
	s.Text(b[0]-width-0.5, a[1]+0.8, name)
}
