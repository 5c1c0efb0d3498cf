package marker

import "ellwand/pieces/page"

// rowHeight of the table, mm.
const rowHeight = 5.6

// columns of the table: their widths as shares, and whether they hold
// figures, which stand to the right.
var columns = []struct {
	share   float64
	figures bool
}{{9, true}, {40, false}, {36, false}, {15, false}, {22, false}, {19, false}, {27, true}, {27, true}, {27, true}, {52,
	false}}

// drawTable draws the laying table on pages of its own, its head repeated.
func (s *sheets) drawTable() {
	rows := Rows(s.plan, s.options)
	s.addTextPage("How to lay it with a tape measure")
	s.drawTableHead()
	for i, row := range rows {
		cells, height := s.cells(row)
		if s.Y+height > s.Height-margin {
			s.addTextPage("How to lay it, continued")
			s.drawTableHead()
		}
		s.drawRow(cells, height, i%2 == 1)
	}
	s.SetPen(0.3, 0)
	s.Line(margin, s.Y, s.Width-margin, s.Y)
}

func (s *sheets) columnWidths() []float64 {
	var sum float64
	for _, c := range columns {
		sum += c.share
	}
	out := make([]float64, len(columns))
	for i, c := range columns {
		out[i] = c.share / sum * s.Inner()
	}
	return out
}

func (s *sheets) drawTableHead() {
	const step = 3.5
	s.Bold(8)
	headings, widths := Headings(s.plan, s.options), s.columnWidths()
	most := 0
	for i, width := range widths {
		most = max(most, len(s.Wrapped(headings[i], width-2)))
	}
	height := 3 + step*float64(most)
	x := float64(margin)
	for i, width := range widths {
		lines := s.Wrapped(headings[i], width-2)
		for k, line := range lines {
			s.inColumn(x, s.Y+height-2-float64(len(lines)-1-k)*step, width, columns[i].figures, line)
		}
		x += width
	}
	s.Y += height
	s.SetPen(0.3, 0)
	s.Line(margin, s.Y, s.Width-margin, s.Y)
}

func (s *sheets) inColumn(x, y, width float64, figures bool, text string) {
	text = s.TextCut(text, width-2)
	if figures {
		s.TextRight(x+width-2, y, text)
		return
	}
	s.Text(x+1, y, text)
}

// cellStep is the distance of two lines in a row, mm.
const cellStep = 3.5

// cells breaks a row into the lines of its cells, and gives its height.
func (s *sheets) cells(row []string) (cells [][]string, height float64) {
	most := 1
	for i, width := range s.columnWidths() {
		s.cellFont(i)
		lines := s.Wrapped(row[i], width-2)
		cells = append(cells, lines)
		most = max(most, len(lines))
	}
	return cells, rowHeight + cellStep*float64(most-1)
}

// cellFont is bold where one looks first.
func (s *sheets) cellFont(column int) {
	s.Plain(8.5)
	if column < 2 || columns[column].figures {
		s.Bold(8.5)
	}
}

func (s *sheets) drawRow(cells [][]string, height float64, shaded bool) {
	if shaded {
		s.Fill(238)
		s.Rect(margin, s.Y, s.Inner(), height, page.Inside)
	}
	x := float64(margin)
	for i, width := range s.columnWidths() {
		s.cellFont(i)
		for k, line := range cells[i] {
			s.inColumn(x, s.Y+3.9+cellStep*float64(k), width, columns[i].figures, line)
		}
		x += width
	}
	s.Y += height
}
