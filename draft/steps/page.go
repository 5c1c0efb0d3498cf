package steps

import (
	"fmt"
	"io"

	"github.com/paulmach/orb"

	"ellwand/draft/construct"
	"ellwand/pieces/drawing"
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
	// tallestShare is how much of a page a drawing may take.
	tallestShare = 0.46
	leastShare   = 0.38
)

// WritePDF writes the draft sheet as PDF: a page or more for each piece, and
// one at the end of each garment with the seams that are sewn together.
func WritePDF(w io.Writer, d Document, sheet paper.Paper) error {
	s := &sheets{document: d, paper: sheet.Upright()}
	for _, garment := range d.Garments {
		for _, c := range garment.contents(d.Unit) {
			s.piecePage(garment, c)
		}
		s.closingPage(garment)
	}
	return s.finish(w, "Draft sheet: "+d.Title)
}

// finish numbers the pages and writes them.
func (s *sheets) finish(w io.Writer, title string) error {
	pages := make([]drawing.Page, len(s.pages))
	for i, p := range s.pages {
		s.foot(p, i+1)
		pages[i] = *p
	}
	return drawing.WritePDF(w, title, pages)
}

// sheets are the pages in the making, and where the next words go.
type sheets struct {
	document Document
	paper    paper.Paper
	pages    []*drawing.Page
	title    [2]string // of the page that is being written
	column   int
	x, y     float64
	top      float64 // of both columns
}

func (s *sheets) page() *drawing.Page { return s.pages[len(s.pages)-1] }

func (s *sheets) inner() float64 { return s.paper.Width - 2*margin }

func (s *sheets) columnWidth() float64 { return (s.inner() - columnGap) / 2 }

func (s *sheets) addPage() {
	p := &drawing.Page{Width: s.paper.Width, Height: s.paper.Height}
	s.pages = append(s.pages, p)
	p.Write(drawing.Text{Words: s.title[0], At: orb.Point{margin, margin + 5}, Points: 16, Bold: true})
	p.Write(drawing.Text{Words: s.title[1], At: orb.Point{margin, margin + 11}, Points: 9})
	p.Write(drawing.Text{Words: drawing.Shortened(s.document.Title, 9, false, s.inner()/2), At: orb.Point{s.paper.Width - margin, margin + 5}, Points: 9, Align: drawing.Right})
	s.startColumns(figureTop)
}

func (s *sheets) startColumns(top float64) {
	s.column, s.top, s.x, s.y = 0, top, margin, top
}

// piecePage writes a piece, its drawing smaller where that saves a page.
func (s *sheets) piecePage(garment Garment, c content) {
	begin := len(s.pages)
	for share := tallestShare; ; share -= 0.04 {
		s.pages = s.pages[:begin]
		s.writePiece(garment, c, share)
		if len(s.pages) == begin+1 {
			return
		}
		if share-0.04 < leastShare {
			break
		}
	}
	s.pages = s.pages[:begin]
	s.writePiece(garment, c, tallestShare)
}

// writePiece writes a piece whose drawing takes a share of the page's height.
func (s *sheets) writePiece(garment Garment, c content, share float64) {
	s.title = [2]string{c.head, garment.Name + ": " + c.cut}
	s.addPage()
	height, scale := c.draw(&s.page().Picture, margin, figureTop-4, s.inner(), s.paper.Height*share)
	note := fmt.Sprintf("Drawn at 1 : %.4g. Bold line: seam line. Broken lines: construction. Arrow: grain, this end up.", scale)
	s.page().Write(drawing.Text{Words: note, At: orb.Point{margin, figureTop + height}, Points: 7, Grey: 70})
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
		s.row(line.name, line.length, line.allowance)
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
	"Lay pieces that meet edge to edge at the shoulder, the side and under the arm: neck, armhole, waist and hem must run on without a peak or a hollow.",
	"Make a toile of cheap cloth first: a draft is a beginning, not a fit.",
	"Rotary cutters and shears: cut away from yourself, keep the other hand behind the blade, and close the blade when you put it down.",
}

// room makes room for so many mm of words: in this column, the next, or on
// another page.
func (s *sheets) room(height float64) {
	if s.y+height <= s.paper.Height-margin-4 {
		return
	}
	if s.column == 0 {
		s.column, s.x, s.y = 1, margin+s.columnWidth()+columnGap, s.top
		return
	}
	s.title[1] = "continued"
	s.addPage()
}

func (s *sheets) head(words string) {
	s.room(2*lineStep + 8)
	if s.y > s.top {
		s.y += 2.5
	}
	s.write(words, s.x, headSize, true, drawing.Left)
	s.y += lineStep + 1.5
}

// item is a paragraph with a number or a dash before it.
func (s *sheets) item(before, words string) {
	indent := hang
	if before == "" {
		indent = 0
	}
	lines := drawing.Wrapped(words, textSize, false, s.columnWidth()-indent)
	s.room(lineStep * float64(len(lines)))
	if before != "" {
		s.write(before, s.x+hang-2, textSize, true, drawing.Right)
	}
	for _, line := range lines {
		s.write(line, s.x+indent, textSize, false, drawing.Left)
		s.y += lineStep
	}
	s.y += itemGap
}

// row is a line of the table of seams.
func (s *sheets) row(name, length, allowance string) {
	s.room(lineStep)
	s.write(name, s.x, textSize, false, drawing.Left)
	s.write(length, s.x+0.68*s.columnWidth(), textSize, true, drawing.Right)
	if allowance != "on the fold" {
		allowance = "+ " + allowance
	}
	s.write(allowance, s.x+s.columnWidth(), textSize, false, drawing.Right)
	s.y += lineStep + 0.4
}

func (s *sheets) write(words string, x, size float64, bold bool, align drawing.Align) {
	s.page().Write(drawing.Text{Words: words, At: orb.Point{x, s.y}, Points: size, Bold: bold, Align: align})
}

// foot numbers a page and says how its lengths are worded.
func (s *sheets) foot(p *drawing.Page, number int) {
	words := "Lengths in cm, to the nearest millimetre."
	if construct.Length(25.4).In(s.document.Unit) == "1 in" {
		words = "Lengths in inches, to the nearest 1/16."
	}
	y := s.paper.Height - margin + 4
	p.Write(drawing.Text{Words: words, At: orb.Point{margin, y}, Points: 7, Grey: 70})
	p.Write(drawing.Text{Words: fmt.Sprintf("%d of %d", number, len(s.pages)), At: orb.Point{s.paper.Width - margin, y}, Points: 7, Grey: 70, Align: drawing.Right})
}
