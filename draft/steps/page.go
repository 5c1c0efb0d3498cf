package steps

import (
	"fmt"
	"io"

	"ellwand/pieces/drawing"
	"ellwand/pieces/page"
	"ellwand/pieces/paper"
)

// The layout of a page, mm.
const (
	margin    = 14.0
	columnGap = 8.0
	lineStep  = 3.9
	itemGap   = 1.1
	hang      = 6.0
	textSize  = 8.5 // points
	headSize  = 10.0
	figureTop = margin + 17
	// footHeight is how far below the words the foot stands.
	footHeight = 4.0
	// tallestShare is how much of a page a drawing may take.
	tallestShare = 0.46
	leastShare   = 0.38
)

// WritePDF writes the draft sheet as PDF: a page or more for each piece, and
// one at the end of each garment with the seams that are sewn together.
func WritePDF(w io.Writer, d Document, sheet paper.Paper) error {
	return drawing.WritePDF(w, "Draft sheet: "+d.Title, d.pages(sheet))
}

func (d Document) pages(sheet paper.Paper) []drawing.Page {
	s := newSheets(d, sheet)
	for _, garment := range d.Garments {
		for _, c := range garment.contents(d.Unit) {
			s.piecePage(garment, c)
		}
		s.closingPage(garment)
	}
	return s.finish()
}

// finish numbers the pages.
func (s *sheets) finish() []drawing.Page {
	s.Plain(7)
	s.Ink(70)
	s.Foot(s.foot)
	return s.Done()
}

// sheets are the pages in the making.
type sheets struct {
	page.Pages
	document Document
	paper    paper.Paper
	title    [2]string // of the page that is being written
}

func newSheets(d Document, on paper.Paper) *sheets {
	return &sheets{Pages: page.Pages{Edge: margin}, document: d, paper: on.Upright()}
}

func (s *sheets) addPage() {
	s.Add(s.paper)
	s.Bold(16)
	s.Text(margin, margin+5, s.title[0])
	s.Plain(9)
	s.Text(margin, margin+11, s.title[1])
	s.TextRight(s.Right(), margin+5, s.TextCut(s.document.Title, s.Inner()/2))
	s.startColumns(figureTop)
}

func (s *sheets) startColumns(top float64) {
	s.Y = top
	s.Start(page.Columns{Count: 2, Gap: columnGap})
}

// note writes small and grey what a drawing shows.
func (s *sheets) note(y float64, words string) {
	s.Plain(7)
	s.Ink(70)
	s.Text(margin, y, words)
	s.Ink(0)
}

// piecePage writes a piece, its drawing smaller where that saves a page.
func (s *sheets) piecePage(garment Garment, c content) {
	begin := s.Count()
	for share := tallestShare; ; share -= 0.04 {
		s.Keep(begin)
		s.writePiece(garment, c, share)
		if s.Count() == begin+1 {
			return
		}
		if share-0.04 < leastShare {
			break
		}
	}
	s.Keep(begin)
	s.writePiece(garment, c, tallestShare)
}

// writePiece writes a piece whose drawing takes a share of the page's height.
func (s *sheets) writePiece(garment Garment, c content, share float64) {
	s.title = [2]string{c.head, garment.Name + ": " + c.cut}
	s.addPage()
	height, scale := c.draw(s.On, margin, figureTop-4, s.Inner(), s.Height*share)
	note := fmt.Sprintf("Drawn at 1 : %.4g. Bold line: seam line. Broken lines: construction. Arrow: grain, this end "+
		"up.", scale)
	s.note(figureTop+height, note)
	s.startColumns(figureTop + height + 8)

	s.head("Draw")
	for i, step := range c.steps {
		s.item(fmt.Sprintf("%d", i+1), step)
	}
	if len(c.curves) > 0 {
		s.head("Curves")
		s.item("", curvesNote)
		for _, curve := range c.curves {
			s.item("–", curve)
		}
	}
	s.head("Check the seams, then add the allowance")
	for _, line := range c.seams {
		s.row(line)
	}
}

// closingPage lists the measurements and the seams that are sewn together.
func (s *sheets) closingPage(garment Garment) {
	body, rows := garment.bodyLines(s.document), garment.truingLines(s.document)
	if len(body)+len(rows) == 0 {
		return
	}
	s.title = [2]string{garment.Name, "measurements, and the seams to compare before cutting"}
	s.addPage()
	if len(body) > 0 {
		s.head("Drafted for")
		for _, line := range body {
			s.item("", line)
		}
	}
	if len(rows) > 0 {
		s.head("Sewn together: measure both, darts closed")
		for _, row := range rows {
			s.item("–", row)
		}
	}
	s.head("Before you cut")
	for _, line := range cautions {
		s.item("–", line)
	}
}

// cautions are [source.CommonPractice].
var cautions = []string{
	"Lay pieces that meet edge to edge at the shoulder, the side and under the arm: neck, armhole, waist and hem " +
		"must run on without a peak or a hollow.",
	"Make a toile of cheap cloth first: a draft is a beginning, not a fit.",
	"Rotary cutters and shears: cut away from yourself, keep the other hand behind the blade, and close the blade " +
		"when you put it down.",
}

// room makes room for so many mm of words: in this column, the next, or on
// another page.
func (s *sheets) room(height float64) {
	if s.HasRoom(height+footHeight) || s.NextColumn() {
		return
	}
	s.title[1] = "continued"
	s.addPage()
}

func (s *sheets) head(words string) {
	s.room(2*lineStep + 8)
	if !s.IsAtTop() {
		s.Y += 2.5
	}
	s.Bold(headSize)
	s.Text(s.X(), s.Y, words)
	s.Y += lineStep + 1.5
}

// item is a paragraph with a number or a dash before it.
func (s *sheets) item(before, words string) {
	indent := hang
	if before == "" {
		indent = 0
	}
	s.Plain(textSize)
	s.room(lineStep * float64(len(s.Wrapped(words, s.ColumnWidth()-indent))))
	s.Bold(textSize)
	s.TextRight(s.X()+hang-2, s.Y, before)
	s.Plain(textSize)
	s.Paragraph(s.X(), s.ColumnWidth(), lineStep, indent, "", words)
	s.Y += itemGap
}

// row is a line of the table of seams.
func (s *sheets) row(line seamLine) {
	s.room(lineStep)
	s.Plain(textSize)
	s.Text(s.X(), s.Y, line.name)
	s.Bold(textSize)
	s.TextRight(s.X()+0.68*s.ColumnWidth(), s.Y, line.length)
	allowance := line.allowance
	if !line.isOnFold {
		allowance = "+ " + allowance
	}
	s.Plain(textSize)
	s.TextRight(s.X()+s.ColumnWidth(), s.Y, allowance)
	s.Y += lineStep + 0.4
}

// foot numbers a page and says how its lengths are worded.
func (s *sheets) foot(number int) {
	words := "Lengths in cm, to the nearest millimetre."
	if isInch(s.document.Unit) {
		words = "Lengths in inches, to the nearest 1/16."
	}
	y := s.Height - margin + footHeight
	s.Text(margin, y, words)
	s.TextRight(s.Right(), y, fmt.Sprintf("%d of %d", number, s.Count()))
}
