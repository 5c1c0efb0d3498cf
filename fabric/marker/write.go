// Package marker draws the plan of a lay on paper, to be chalked on the cloth
// with a tape measure.
package marker

import (
	"fmt"
	"io"
	"time"

	"github.com/jung-kurt/gofpdf"

	"ellwand/fabric"
)

// Options of a plan. The zero value prints A4 in metric.
type Options struct {
	// Job is the title, for example "Summer blouse for Mrs Okafor".
	Job   string
	Paper Paper
	// Inches gives every measure in inches and yards instead of cm and m.
	Inches bool
}

// Write draws the plan as a PDF: the lay to scale over as many pages as it
// needs, then the table by which it is laid, and the words that go with it.
// The same plan gives the same bytes. It refuses a lay that is not possible.
func Write(w io.Writer, plan fabric.LayPlan, options Options) error {
	if !plan.Possible() {
		return fmt.Errorf("the %s lay of %s cannot be drawn: %s", plan.Lay, plan.Cloth, plan.Impossible)
	}
	if len(plan.Pieces) == 0 {
		return fmt.Errorf("the %s lay of %s has no pieces to draw", plan.Lay, plan.Cloth)
	}
	s := newSheets(plan, options)
	s.drawLay()
	s.drawTable()
	s.drawWords()
	s.numberPages()
	return s.pdf.Output(w)
}

// sheets is the plan being drawn.
type sheets struct {
	pdf         *gofpdf.Fpdf
	plan        fabric.LayPlan
	options     Options
	sheet               // the page being drawn
	all         []sheet // every page so far
	denominator float64 // of the scale
	style       string  // of the font
	points      float64 // size of the font
	filled      int     // grey of the fill
	// y is how far down the page is filled, mm.
	y float64
}

func newSheets(plan fabric.LayPlan, options Options) *sheets {
	first := options.Paper.onItsSide()
	pdf := gofpdf.NewCustom(&gofpdf.InitType{
		OrientationStr: "P", UnitStr: "mm", Size: gofpdf.SizeType{Wd: first.width, Ht: first.height},
	})
	// A fixed date keeps the file the same from run to run.
	fixed := time.Date(2000, 1, 1, 0, 0, 0, 0, time.UTC)
	pdf.SetCreationDate(fixed)
	pdf.SetModificationDate(fixed)
	pdf.SetCatalogSort(true)
	pdf.SetMargins(margin, margin, margin)
	pdf.SetAutoPageBreak(false, margin)
	pdf.SetTitle(Printable(titleOf(plan, options)), true)
	pdf.SetLineCapStyle("round")
	pdf.SetLineJoinStyle("round")
	AddFonts(pdf)
	return &sheets{pdf: pdf, plan: plan, options: options}
}

// addPage begins a page; y is its upper margin.
func (s *sheets) addPage(page sheet) {
	s.pdf.AddPageFormat("P", gofpdf.SizeType{Wd: page.width, Ht: page.height})
	s.sheet, s.y = page, margin
	s.all = append(s.all, page)
}

// addTextPage begins a page of words.
func (s *sheets) addTextPage(head string) {
	s.addPage(s.options.Paper.onItsSide())
	s.drawHead(head)
}

func titleOf(plan fabric.LayPlan, options Options) string {
	if options.Job == "" {
		return "Marker plan"
	}
	return options.Job
}

// inner is the width between the margins.
func (s *sheets) inner() float64 { return s.width - 2*margin }

func (s *sheets) font(style string, points float64) {
	s.style, s.points = style, points
	s.pdf.SetFont(Family, style, points)
}

// restore writes the font and the fill again. gofpdf leaves out a font, or
// the colour of a text, that it believes to be set, but the end of a clip or
// a turn, and another page, bring back an earlier one.
func (s *sheets) restore() {
	s.fill(s.filled)
	s.pdf.SetFont(Family, s.style, s.points+1)
	s.pdf.SetFont(Family, s.style, s.points)
}

func (s *sheets) text(x, y float64, text string) { s.pdf.Text(x, y, Printable(text)) }

func (s *sheets) textWidth(text string) float64 { return s.pdf.GetStringWidth(Printable(text)) }

func (s *sheets) textCentred(x, y float64, text string) { s.text(x-s.textWidth(text)/2, y, text) }

func (s *sheets) textRight(x, y float64, text string) { s.text(x-s.textWidth(text), y, text) }

// textUp writes a line that reads upwards, centred at a point.
func (s *sheets) textUp(x, y float64, text string) {
	s.pdf.TransformBegin()
	s.pdf.TransformRotate(90, x, y)
	s.textCentred(x, y, text)
	s.pdf.TransformEnd()
	s.restore()
}

// textCut shortens a line with an ellipsis until it is no wider than given.
func (s *sheets) textCut(text string, width float64) string {
	text = Printable(text)
	if s.pdf.GetStringWidth(text) <= width {
		return text
	}
	runes := []rune(text)
	for len(runes) > 1 && s.pdf.GetStringWidth(string(runes)+"…") > width {
		runes = runes[:len(runes)-1]
	}
	return string(runes) + "…"
}

func (s *sheets) pen(width float64, grey int, dashes ...float64) {
	s.pdf.SetLineWidth(width)
	s.pdf.SetDrawColor(grey, grey, grey)
	s.pdf.SetDashPattern(dashes, 0)
}

func (s *sheets) fill(grey int) {
	s.filled = grey
	s.pdf.SetFillColor(grey, grey, grey)
}

func (s *sheets) ink(grey int) { s.pdf.SetTextColor(grey, grey, grey) }

// numberPages writes the foot of every page once their number is known.
// gofpdf measures from the head of a page with the height of the last one.
func (s *sheets) numberPages() {
	last := s.sheet
	for i, page := range s.all {
		s.sheet = page
		s.pdf.SetPage(i + 1)
		s.restore()
		s.font("", 7)
		s.ink(90)
		foot := last.height - margin + 4
		s.text(margin, foot, s.textCut(titleOf(s.plan, s.options)+" · "+subtitle(s.plan), s.inner()-30))
		s.textRight(s.width-margin, foot, fmt.Sprintf("page %d of %d", i+1, len(s.all)))
		s.ink(0)
	}
}
