package quote

import (
	"errors"
	"io"
	"strings"

	"ellwand/pieces/drawing"
	"ellwand/pieces/page"
	"ellwand/pieces/paper"
)

// mostColumns that can be read on one sheet [source.OwnChoice].
const mostColumns = 9

// WritePDF draws the table, on as many sheets as it needs. Metres and yards
// stand one above the other in each cell. The same table gives the same bytes.
func (t Table) WritePDF(w io.Writer, sheet paper.Paper) error {
	if err := t.Proven(); err != nil {
		return err
	}
	for _, cloth := range t.Cloths {
		if len(cloth.Widths) > mostColumns {
			return errors.New("the table has too many widths for a page; ask for nine at the most, or write it as CSV")
		}
	}
	s := &tablePage{quotePage: quotePage{Pages: page.Pages{Edge: edge}, size: 1}, table: t, paper: sheet.Upright()}
	s.newSheet()
	for _, cloth := range t.Cloths {
		s.cloth(cloth)
	}
	if !s.HasRoom(11) {
		s.newSheet()
	}
	s.down(7)
	s.plain(7.5)
	s.Ink(midGrey)
	s.at(edge, "With nap: pile, print or shading that runs one way. Seam allowances are included.")
	if t.Ended.Early {
		s.down(3.6)
		s.at(edge, t.Ended.Say())
	}
	return drawing.WritePDF(w, t.Title, s.Done())
}

// tablePage is the table being drawn.
type tablePage struct {
	quotePage
	table Table
	paper paper.Paper
}

// Heights on the sheet, mm [source.OwnChoice].
const (
	rowHeight  = 9.6
	headHeight = 19.0
)

func (s *tablePage) newSheet() {
	s.Add(s.paper)
	s.down(5)
	s.bold(15)
	s.at(edge, s.table.Title)
	s.down(5.5)
	s.plain(9)
	s.Ink(midGrey)
	s.at(edge, "How much cloth to buy, by its width")
	s.Ink(0)
	s.down(3)
	s.rule(0.6, 0)
}

func (s *tablePage) cloth(cloth ClothTable) {
	if !s.HasRoom(headHeight + 2*rowHeight) {
		s.newSheet()
	}
	s.clothHead(cloth)
	for i, row := range cloth.Rows {
		if !s.HasRoom(rowHeight) {
			s.newSheet()
			s.clothHead(cloth)
		}
		isFirst := i == 0 || cloth.Rows[i-1].Name != row.Name
		s.row(cloth, row, isFirst)
	}
	s.basis(cloth)
}

// basis says below a cloth what its amounts rest on.
func (s *tablePage) basis(cloth ClothTable) {
	s.plain(7.5)
	s.down(3)
	units := Units{Inches: s.table.Inches}
	said := strings.Join(strings.Fields(cloth.RestsOn(units)+" "+cloth.NotMeasured(units)+" "+cloth.Raised()+
		" "+cloth.LeftOut()), " ")
	for _, line := range s.Wrapped(said, s.Width-2*edge) {
		if !s.HasRoom(rowHeight) {
			s.newSheet()
		}
		s.down(3.6)
		s.Ink(midGrey)
		s.plain(7.5)
		s.at(edge, line)
		s.Ink(0)
	}
}

// column is the right end of a cell; the cells share what the names leave.
func (s *tablePage) column(cloth ClothTable, i int) float64 {
	const names = 62.0 // mm [source.OwnChoice]
	left := edge + names
	return left + (s.Right()-left)*float64(i+1)/float64(len(cloth.Widths))
}

func (s *tablePage) clothHead(cloth ClothTable) {
	s.down(12)
	s.bold(11)
	s.at(edge, capital(cloth.Cloth))
	s.bold(9)
	for i, text := range cloth.WidthTexts(s.table.Inches) {
		s.endAt(s.column(cloth, i), text)
	}
	s.down(2.2)
	s.rule(0.3, 0)
}

func (s *tablePage) row(cloth ClothTable, row TableRow, isFirst bool) {
	top := s.Y
	if isFirst {
		s.rule(0.1, 190)
		s.Y = top + 4.4
		s.bold(9)
		s.at(edge, drawing.Shortened(row.Name, 9, true, 38))
	}
	s.Y = top + 4.4
	s.plain(8)
	s.at(edge+40, row.NapText())
	for i, cell := range row.Cells {
		metric, yards := cell.Texts()
		if s.table.Inches {
			metric, yards = yards, metric
		}
		s.Y = top + 4.4
		s.plain(9)
		s.endAt(s.column(cloth, i), metric)
		if cell.Impossible == "" {
			s.Y = top + 8
			s.plain(7.5)
			s.Ink(midGrey)
			s.endAt(s.column(cloth, i), yards)
			s.Ink(0)
		}
	}
	s.Y = top + rowHeight
}
