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
		cells, height := s.cells(row)
		if s.y+height > s.Height-margin {
			s.addTextPage("How to lay it, continued")
			s.drawTableHead()
		}
		s.drawRow(cells, height, i%2 == 1)
	}
	s.pen(0.3, 0)
	s.line(margin, s.y, s.Width-margin, s.y)
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
	s.line(margin, s.y, s.Width-margin, s.y)
}

func (s *sheets) inColumn(x, y, width float64, figures bool, text string) {
	text = s.textCut(text, width-2)
	if figures {
		s.textRight(x+width-2, y, text)
		return
	}
	s.text(x+1, y, text)
}

// cellStep is the distance of two lines in a row, mm.
const cellStep = 3.5

// cells breaks a row into the lines of its cells, and gives its height.
func (s *sheets) cells(row []string) (cells [][]string, height float64) {
	most := 1
	for i, width := range s.columnWidths() {
		s.cellFont(i)
		lines := s.wrapped(row[i], width-2)
		cells = append(cells, lines)
		most = max(most, len(lines))
	}
	return cells, rowHeight + cellStep*float64(most-1)
}

// cellFont is bold where one looks first.
func (s *sheets) cellFont(column int) {
	s.font("", 8.5)
	if column < 2 || columns[column].figures {
		s.font("B", 8.5)
	}
}

func (s *sheets) drawRow(cells [][]string, height float64, shaded bool) {
	if shaded {
		s.fill(238)
		s.rect(margin, s.y, s.inner(), height, "F")
	}
	x := float64(margin)
	for i, width := range s.columnWidths() {
		s.cellFont(i)
		for k, line := range cells[i] {
			s.inColumn(x, s.y+3.9+cellStep*float64(k), width, columns[i].figures, line)
		}
		x += width
	}
	s.y += height
}
