package marker

// rowHeight of the table, mm.
const rowHeight = 5.6

// columns of the table: their widths as shares, and whether they hold
// figures, which stand to the right.
var columns = []struct {
	share   float64
	figures bool
}{{9, true}, {40, false}, {36, false}, {15, false}, {22, false}, {19, false}, {27, true}, {27, true}, {27, true}, {52, false}}

// drawTable draws the laying table on pages of its own, its head repeated.
func (s *sheets) drawTable() {
	rows := Rows(s.plan, s.options)
	s.addTextPage("How to lay it with a tape measure")
	s.drawTableHead()
	for i, row := range rows {
		if s.y+rowHeight > s.height-margin {
			s.addTextPage("How to lay it, continued")
			s.drawTableHead()
		}
		s.drawRow(row, i%2 == 1)
	}
	s.pen(0.3, 0)
	s.line(margin, s.y, s.width-margin, s.y)
}

func (s *sheets) columnWidths() []float64 {
	var sum float64
	for _, c := range columns {
		sum += c.share
	}
	out := make([]float64, len(columns))
	for i, c := range columns {
		out[i] = c.share / sum * s.inner()
	}
	return out
}

func (s *sheets) drawTableHead() {
	const step = 3.5
	s.font("B", 8)
	headings, widths := Headings(s.plan, s.options), s.columnWidths()
	most := 0
	for i, width := range widths {
		most = max(most, len(s.wrapped(headings[i], width-2)))
	}
	height := 3 + step*float64(most)
	x := float64(margin)
	for i, width := range widths {
		lines := s.wrapped(headings[i], width-2)
		for k, line := range lines {
			s.inColumn(x, s.y+height-2-float64(len(lines)-1-k)*step, width, columns[i].figures, line)
		}
		x += width
	}
	s.y += height
	s.pen(0.3, 0)
	s.line(margin, s.y, s.width-margin, s.y)
}

func (s *sheets) inColumn(x, y, width float64, figures bool, text string) {
	text = s.textCut(text, width-2)
	if figures {
		s.textRight(x+width-2, y, text)
		return
	}
	s.text(x+1, y, text)
}

func (s *sheets) drawRow(row []string, shaded bool) {
	if shaded {
		s.fill(238)
		s.rect(margin, s.y, s.inner(), rowHeight, "F")
	}
	x := float64(margin)
	for i, width := range s.columnWidths() {
		s.font("", 8.5)
		if i < 2 || columns[i].figures {
			s.font("B", 8.5)
		}
		s.inColumn(x, s.y+3.9, width, columns[i].figures, row[i])
		x += width
	}
	s.y += rowHeight
}
