package marker

import (
	"fmt"
	"strconv"

	"ellwand/pieces/drawing"
)

func (s *sheets) drawLabel(l label) {
	centre := l.box.Center()
	if l.leader != nil {
		s.pen(0.2, 0)
		s.line(centre[0], centre[1], l.leader[0], l.leader[1])
		s.fill(0)
		s.disc(l.leader[0], l.leader[1], 0.4)
	}
	width, height := s.blockSize(l)
	if l.up {
		s.upright = &centre
		defer func() { s.upright = nil }()
	}
	y := centre[1] - height/2 + 0.4
	if len(l.lines) > 0 || l.plain {
		s.fill(255)
		s.rect(centre[0]-width/2, centre[1]-height/2, width, height, "F")
	}
	if l.plain {
		s.font("B", l.points)
		s.textCentred(centre[0], centre[1]+l.points*drawing.Point*0.36, strconv.Itoa(l.number))
		return
	}
	if l.inline {
		left := centre[0] - width/2 + 0.4
		s.drawDisc(left+discSize(l.points)/2, centre[1], l)
		s.lineFont(l, 0)
		s.text(left+discSize(l.points)+0.7, centre[1]+l.points*drawing.Point*0.36, l.lines[0])
		return
	}
	s.drawDisc(centre[0], y+discSize(l.points)/2, l)
	y += discSize(l.points)
	for i, line := range l.lines {
		y += lineStep(l.points)
		s.lineFont(l, i)
		s.textCentred(centre[0], y-lineStep(l.points)*0.2, line)
	}
}

// drawDisc draws the number by which the table is read.
func (s *sheets) drawDisc(x, y float64, l label) {
	s.fill(0)
	s.disc(x, y, discSize(l.points)/2)
	text := fmt.Sprint(l.number)
	points := l.points
	if len(text) > 2 {
		points *= 0.7
	}
	s.font("B", points)
	s.ink(255)
	s.textCentred(x, y+points*drawing.Point*0.36, text)
	s.ink(0)
}
