package marker

import (
	"fmt"
	"strconv"

	"ellwand/pieces/drawing"
	"ellwand/pieces/page"
)

func (s *sheets) drawLabel(l label) {
	centre := l.box.Center()
	if l.leader != nil {
		s.SetPen(0.2, 0)
		s.Line(centre[0], centre[1], l.leader[0], l.leader[1])
		s.Fill(0)
		s.Disc(l.leader[0], l.leader[1], 0.4)
	}
	width, height := s.blockSize(l)
	if l.up {
		s.TurnedAbout = &centre
		defer func() { s.TurnedAbout = nil }()
	}
	y := centre[1] - height/2 + 0.4
	if len(l.lines) > 0 || l.plain {
		s.Fill(255)
		s.Rect(centre[0]-width/2, centre[1]-height/2, width, height, page.Inside)
	}
	if l.plain {
		s.Bold(l.points)
		s.TextCentred(centre[0], centre[1]+l.points*drawing.Point*0.36, strconv.Itoa(l.number))
		return
	}
	if l.inline {
		left := centre[0] - width/2 + 0.4
		s.drawDisc(left+discSize(l.points)/2, centre[1], l)
		s.lineFont(l, 0)
		s.Text(left+discSize(l.points)+0.7, centre[1]+l.points*drawing.Point*0.36, l.lines[0])
		return
	}
	s.drawDisc(centre[0], y+discSize(l.points)/2, l)
	y += discSize(l.points)
	for i, line := range l.lines {
		y += lineStep(l.points)
		s.lineFont(l, i)
		s.TextCentred(centre[0], y-lineStep(l.points)*0.2, line)
	}
}

// drawDisc draws the number by which the table is read.
func (s *sheets) drawDisc(x, y float64, l label) {
	s.Fill(0)
	s.Disc(x, y, discSize(l.points)/2)
	text := fmt.Sprint(l.number)
	points := l.points
	if len(text) > 2 {
		points *= 0.7
	}
	s.Bold(points)
	s.Ink(255)
	s.TextCentred(x, y+points*drawing.Point*0.36, text)
	s.Ink(0)
}
