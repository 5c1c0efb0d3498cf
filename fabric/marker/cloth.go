package marker

import (
	"github.com/paulmach/orb"

	"ellwand/fabric"
)

// Greys of the plan, made for a black and white printer.
const (
	greyWaste = 226
	greyDown  = 170 // hatching of pieces face down
)

// drawCloth fills the cloth: the waste grey, so that the pieces stand out,
// the selvedges with a row of short strokes.
func (s *sheets) drawCloth(v view) {
	box := v.box()
	s.fill(greyWaste)
	s.pdf.Rect(box.Min[0], box.Min[1], box.Max[0]-box.Min[0], box.Max[1]-box.Min[1], "F")
	s.drawSelvedge(v, s.plan.Width, v.high)
	if s.plan.Lay == fabric.Open {
		s.drawSelvedge(v, v.low, 0)
	}
}

func (s *sheets) drawSelvedge(v view, low, high float64) {
	if high-low <= 0 {
		return
	}
	a, b := v.at(orb.Point{v.from, high}), v.at(orb.Point{v.to, low})
	s.fill(255)
	s.pdf.Rect(a[0], a[1], b[0]-a[0], b[1]-a[1], "F")
	s.pen(0.1, 90)
	for x := a[0] + 0.6; x < b[0]; x += 1.2 {
		s.pdf.Line(x, a[1], x, b[1])
	}
}

// drawEdges draws and names the selvedges, the fold and the cut ends.
func (s *sheets) drawEdges(v view) {
	box := v.box()
	left, right, top, bottom := box.Min[0], box.Max[0], box.Min[1], box.Max[1]
	s.pen(0.35, 0)
	s.pdf.Line(left, top, right, top)
	if s.plan.Lay == fabric.FoldedAlong {
		s.pen(0.9, 0, 5, 1.5, 1, 1.5)
	}
	s.pdf.Line(left, bottom, right, bottom)
	s.drawEnd(v, true)
	s.drawEnd(v, false)
	s.font("B", 7.5)
	name := "selvedge"
	if s.plan.Lay == fabric.FoldedAlong {
		name = "both selvedges"
	}
	s.text(left, top-1.8, name)
	s.drawPiecesEnd(v)
}

// drawEnd draws one end of this page: a cut end, or where the page breaks.
func (s *sheets) drawEnd(v view, start bool) {
	box := v.box()
	x, middle := box.Min[0], (box.Min[1]+box.Max[1])/2
	textX := x - 2
	if !start {
		x = box.Max[0]
		textX = x + 4.2
	}
	s.font("B", 7.5)
	switch {
	case start && v.first():
		s.pen(0.9, 0)
		s.textUp(textX, middle, "cut end")
	case !start && v.last():
		s.pen(0.6, 0)
		s.textUp(textX, middle, "end of the cloth, "+s.options.bought(s.plan.Buy))
	default:
		s.pen(0.3, 0, 2, 1.2)
		text := "continued on the next page"
		if start {
			text = "continued from the page before"
		}
		s.font("", 7)
		s.textUp(textX, middle, text)
	}
	s.pdf.Line(x, box.Min[1], x, box.Max[1])
}

// roomForName of the upper edge, mm of paper.
const roomForName = 26.0

// drawPiecesEnd marks how far the pieces reach.
func (s *sheets) drawPiecesEnd(v view) {
	if s.plan.Length < v.from || s.plan.Length > v.to {
		return
	}
	foot, head := v.at(orb.Point{s.plan.Length, v.low}), v.at(orb.Point{s.plan.Length, v.high})
	s.pen(0.4, 0, 1.5, 1)
	s.pdf.Line(foot[0], foot[1], head[0], head[1]-2.5)
	s.font("", 7)
	text := "the pieces end here, " + s.options.short(s.plan.Length)
	if foot[0]-s.textWidth(text) < v.left+roomForName {
		s.text(foot[0]+1, head[1]-1.8, text)
		return
	}
	s.textRight(foot[0]-1, head[1]-1.8, text)
}
