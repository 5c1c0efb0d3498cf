package quote

import (
	"errors"
	"io"
	"time"

	"github.com/jung-kurt/gofpdf"

	"ellwand/pieces/drawing"
	"ellwand/pieces/paper"
)

// mostColumns that can be read on one sheet [source.OwnChoice].
const mostColumns = 9

// WritePDF draws the table, on as many sheets as it needs. Metres and yards
// stand one above the other in each cell. The same table gives the same bytes.
func (t Table) WritePDF(w io.Writer, sheet paper.Paper) error {
	for _, cloth := range t.Cloths {
		if len(cloth.Widths) > mostColumns {
			return errors.New("the table has too many widths for a page; ask for nine at the most, or write it as CSV")
		}
	}
	width, height := sheet.Upright().Width, sheet.Upright().Height
	pdf := gofpdf.NewCustom(&gofpdf.InitType{OrientationStr: "P", UnitStr: "mm", Size: gofpdf.SizeType{Wd: width, Ht: height}})
	fixed := time.Date(2000, 1, 1, 0, 0, 0, 0, time.UTC) // the same bytes from run to run
	pdf.SetCreationDate(fixed)
	pdf.SetModificationDate(fixed)
	pdf.SetCatalogSort(true)
	pdf.SetAutoPageBreak(false, 0)
	pdf.SetTitle(drawing.Printable(t.Title), true)
	drawing.AddFonts(pdf)
	s := &tableSheet{page: page{pdf: pdf, width: width, height: height, size: 1}, table: t}
	s.newSheet()
	for _, cloth := range t.Cloths {
		s.cloth(cloth)
	}
	if s.y+7 > s.height-edge {
		s.newSheet()
	}
	s.down(7)
	s.font("", 7.5)
	s.ink(midGrey)
	s.at(edge, "With nap: pile, print or shading that runs one way. Seam allowances are included.")
	return pdf.Output(w)
}

// tableSheet is the table being drawn.
type tableSheet struct {
	page
	table Table
}

// Heights on the sheet, mm [source.OwnChoice].
const (
	rowHeight  = 9.6
	headHeight = 19.0
)

func (s *tableSheet) newSheet() {
	s.pdf.AddPage()
	s.y = edge
	s.down(5)
	s.font("B", 15)
	s.at(edge, s.table.Title)
	s.down(5.5)
	s.font("", 9)
	s.ink(midGrey)
	s.at(edge, "How much cloth to buy, by its width")
	s.ink(0)
	s.down(3)
	s.rule(0.6, 0)
}

func (s *tableSheet) cloth(cloth ClothTable) {
	if s.y+headHeight+2*rowHeight > s.height-edge {
		s.newSheet()
	}
	s.clothHead(cloth)
	for i, row := range cloth.Rows {
		if s.y+rowHeight > s.height-edge {
			s.newSheet()
			s.clothHead(cloth)
		}
		isFirst := i == 0 || cloth.Rows[i-1].Name != row.Name
		s.row(cloth, row, isFirst)
	}
	s.basis(cloth)
}

// basis says below a cloth what its amounts rest on.
func (s *tableSheet) basis(cloth ClothTable) {
	s.font("", 7.5)
	s.down(3)
	for _, line := range s.lines(cloth.RestsOn(Units{Inches: s.table.Inches}), s.width-2*edge) {
		if s.y+rowHeight > s.height-edge {
			s.newSheet()
		}
		s.down(3.6)
		s.ink(midGrey)
		s.font("", 7.5)
		s.at(edge, line)
		s.ink(0)
	}
}

// column is the right end of a cell; the cells share what the names leave.
func (s *tableSheet) column(cloth ClothTable, i int) float64 {
	const names = 62.0 // mm [source.OwnChoice]
	left := edge + names
	return left + (s.width-edge-left)*float64(i+1)/float64(len(cloth.Widths))
}

func (s *tableSheet) clothHead(cloth ClothTable) {
	s.down(12)
	s.font("B", 11)
	s.at(edge, capital(cloth.Cloth))
	s.font("B", 9)
	for i, text := range cloth.WidthTexts(s.table.Inches) {
		s.endAt(s.column(cloth, i), text)
	}
	s.down(2.2)
	s.rule(0.3, 0)
}

func (s *tableSheet) row(cloth ClothTable, row TableRow, isFirst bool) {
	top := s.y
	if isFirst {
		s.pdf.SetDrawColor(190, 190, 190)
		s.pdf.SetLineWidth(0.1)
		s.pdf.Line(edge, top, s.width-edge, top)
		s.y = top + 4.4
		s.font("B", 9)
		s.at(edge, drawing.Shortened(row.Name, 9, true, 38))
	}
	s.y = top + 4.4
	s.font("", 8)
	s.at(edge+40, row.NapText())
	for i, cell := range row.Cells {
		metric, yards := cell.Texts()
		if s.table.Inches {
			metric, yards = yards, metric
		}
		s.y = top + 4.4
		s.font("", 9)
		s.endAt(s.column(cloth, i), metric)
		if cell.Impossible == "" {
			s.y = top + 8
			s.font("", 7.5)
			s.ink(midGrey)
			s.endAt(s.column(cloth, i), yards)
			s.ink(0)
		}
	}
	s.y = top + rowHeight
}
