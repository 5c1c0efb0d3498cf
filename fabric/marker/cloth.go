package marker

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/fabric/lay"
	"ellwand/fabric/purchase"
	"ellwand/pieces/page"
)

// Greys of the plan, made for a black and white printer.
const (
	greyWaste = 226
	greyDown  = 170 // hatching of pieces face down
)

// drawCloth fills the cloth: the waste grey, so that the pieces stand out,
// the selvedges with a row of short strokes, what may not be used crossed out.
func (s *sheets) drawCloth(v view) {
	for _, stretch := range stretches(s.plan) {
		from, to := max(stretch.from, v.from), min(stretch.to, v.to)
		if from >= to {
			continue
		}
		a, b := v.at(orb.Point{from, stretch.high}), v.at(orb.Point{to, stretch.low})
		s.Fill(greyWaste)
		s.Rect(a[0], a[1], b[0]-a[0], b[1]-a[1], page.Inside)
		if stretch.low < 0 {
			s.drawSelvedge(v, from, to, stretch.low, 0)
		}
		if s.plan.Lay != lay.BothSelvedgesIn {
			s.drawSelvedge(v, from, to, stretch.high-s.plan.Cloth.Selvedge, stretch.high)
		}
	}
	for _, zone := range s.plan.Zones {
		s.drawZone(v, zone)
	}
}

// drawZone crosses out a place that may not be used.
func (s *sheets) drawZone(v view, zone orb.Ring) {
	box := zone.Bound()
	if box.Max[0] <= v.from || box.Min[0] >= v.to {
		return
	}
	shown := v.box()
	outline := v.line(zone)
	s.Within(shown, func() {
		s.SetPen(0.15, 90)
		s.CrossHatch(outline, 1.2)
		s.SetPen(0.3, 0)
		s.Polygon(outline, page.Rim)
	})
}

func (s *sheets) drawSelvedge(v view, from, to, low, high float64) {
	if high-low <= 0 {
		return
	}
	a, b := v.at(orb.Point{from, high}), v.at(orb.Point{to, low})
	s.Fill(255)
	s.Rect(a[0], a[1], b[0]-a[0], b[1]-a[1], page.Inside)
	s.SetPen(0.1, 90)
	for x := a[0] + 0.6; x < b[0]; x += 1.2 {
		s.Line(x, a[1], x, b[1])
	}
}

// drawEdges draws and names the selvedges, the folds and the cut ends.
func (s *sheets) drawEdges(v view) {
	for _, edge := range EdgeLines(s.plan) {
		from, to := max(edge.From[0], v.from), min(edge.To[0], v.to)
		if from >= to {
			continue
		}
		s.edgeLine(v, from, to, edge.From[1], edge.IsFold)
		s.Bold(7.5)
		start := v.at(orb.Point{from, edge.From[1]})
		s.Text(start[0], start[1]-1.8, edge.Name)
	}
	s.drawEnd(v, true)
	s.drawEnd(v, false)
	s.drawPiecesEnd(v)
	s.nameOrigins(v)
}

// edgeLine draws an edge of the cloth: a fold with long and short dashes.
func (s *sheets) edgeLine(v view, from, to, y float64, fold bool) {
	s.SetPen(0.35, 0)
	if fold {
		s.SetPen(0.9, 0, 5, 1.5, 1, 1.5)
	}
	a, b := v.at(orb.Point{from, y}), v.at(orb.Point{to, y})
	s.Line(a[0], a[1], b[0], b[1])
}

// drawEnd draws one end of this page: a cut end, or where the page breaks.
func (s *sheets) drawEnd(v view, start bool) {
	box := v.box()
	if left := LeftEnd(s.plan); start && v.first() {
		box.Min[1] = v.at(left.To)[1]
		box.Max[1] = v.at(left.From)[1]
	}
	x, middle := box.Min[0], (box.Min[1]+box.Max[1])/2
	textX := x - 2
	if !start {
		x = box.Max[0]
		textX = x + 4.2
	}
	s.Bold(7.5)
	switch {
	case start && v.first():
		s.SetPen(0.9, 0)
		left := LeftEnd(s.plan)
		if left.IsFold {
			s.SetPen(0.9, 0, 5, 1.5, 1, 1.5)
		}
		s.TextUp(textX, middle, left.Name)
	case !start && v.last():
		s.SetPen(0.6, 0)
		name := endName(s.plan)
		if len(s.plan.Offcuts) == 0 {
			name += ", " + s.options.bought(purchase.OnTable(s.plan))
		}
		s.TextUp(textX, middle, name)
	default:
		s.SetPen(0.3, 0, 2, 1.2)
		text := "continued on the next page"
		if start {
			text = "continued from the page before"
		}
		s.Plain(7)
		s.TextUp(textX, middle, text)
	}
	s.Line(x, box.Min[1], x, box.Max[1])
}

// roomForName of the upper edge, mm of paper.
const roomForName = 26.0

// drawPiecesEnd marks how far the pieces reach.
func (s *sheets) drawPiecesEnd(v view) {
	if s.plan.Length < v.from || s.plan.Length > v.to {
		return
	}
	foot, head := v.at(orb.Point{s.plan.Length, v.low}), v.at(orb.Point{s.plan.Length, v.high})
	s.SetPen(0.4, 0, 1.5, 1)
	s.Line(foot[0], foot[1], head[0], head[1]-2.5)
	s.Plain(7)
	text := "the pieces end here, " + s.options.Long(s.plan.Length-originAt(s.plan, s.plan.Length).from)
	start := v.at(orb.Point{originAt(s.plan, s.plan.Length).from, v.low})
	if foot[0]-s.TextWidth(text) < math.Max(v.left, start[0])+roomForName {
		s.Text(foot[0]+1, head[1]-1.8, text)
		return
	}
	s.TextRight(foot[0]-1, head[1]-1.8, text)
}

// endName is what lies at the right of the lay.
func endName(plan lay.Plan) string {
	if plan.Lay == lay.FoldedAcross || plan.Lay == lay.CutAcross {
		return "both ends of the cloth"
	}
	return "end of the cloth"
}
