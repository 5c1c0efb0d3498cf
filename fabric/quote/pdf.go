package quote

import (
	"errors"
	"fmt"
	"io"
	"strings"
	"time"

	"github.com/jung-kurt/gofpdf"

	"ellwand/pieces/drawing"
	"ellwand/pieces/paper"
)

// day is how a date is printed.
const day = "2 January 2006"

// WritePDF draws the quote on one sheet. Long quotes are set smaller, and
// without the picture; one that does not fit even so is refused. The same
// quote gives the same bytes.
func (q Quote) WritePDF(w io.Writer, sheet paper.Paper) error {
	for _, try := range []struct {
		size    float64
		picture bool
	}{{1, true}, {0.92, true}, {0.84, true}, {0.84, false}, {0.76, false}, {0.68, false}} {
		page := newPage(q, sheet, try.size, try.picture)
		page.draw()
		if page.fits() {
			return page.pdf.Output(w)
		}
	}
	return errors.New("the quote does not fit on one page: shorten its terms, or put several notions into one line")
}

// Margins of the page and its greys, mm and 0 to 255 [source.OwnChoice].
const (
	edge      = 18.0
	lightGrey = 236
	midGrey   = 105
)

// page is the quote being drawn. Sizes are of the plain page, and multiplied
// by size where they are used.
type page struct {
	pdf           *gofpdf.Fpdf
	quote         Quote
	width, height float64
	size          float64
	picture       bool
	y             float64
}

func newPage(q Quote, sheet paper.Paper, size float64, picture bool) *page {
	width, height := sheet.Upright().Width, sheet.Upright().Height
	pdf := gofpdf.NewCustom(&gofpdf.InitType{OrientationStr: "P", UnitStr: "mm", Size: gofpdf.SizeType{Wd: width, Ht: height}})
	// The quote's own date keeps the file the same from run to run.
	date := q.Date
	if date.IsZero() {
		date = time.Date(2000, 1, 1, 0, 0, 0, 0, time.UTC)
	}
	pdf.SetCreationDate(date)
	pdf.SetModificationDate(date)
	pdf.SetCatalogSort(true)
	pdf.SetAutoPageBreak(false, 0)
	pdf.SetTitle(drawing.Printable("Quote "+q.Number+" "+q.Job), true)
	pdf.SetLineJoinStyle("round")
	drawing.AddFonts(pdf)
	pdf.AddPage()
	return &page{pdf: pdf, quote: q, width: width, height: height, size: size, picture: picture, y: edge}
}

func (p *page) draw() {
	p.head()
	p.subject()
	p.table()
	p.totals()
	p.remarks()
}

// fits reports whether everything lies above the lower margin.
func (p *page) fits() bool { return p.y <= p.height-edge+1 && p.pdf.Ok() }

func (p *page) font(style string, points float64) {
	p.pdf.SetFont(drawing.Family, style, points*p.size)
}

func (p *page) ink(grey int) { p.pdf.SetTextColor(grey, grey, grey) }

func (p *page) down(mm float64) { p.y += mm * p.size }

func (p *page) at(x float64, text string) { p.pdf.Text(x, p.y, drawing.Printable(text)) }

func (p *page) endAt(x float64, text string) {
	text = drawing.Printable(text)
	p.pdf.Text(x-p.pdf.GetStringWidth(text), p.y, text)
}

func (p *page) rule(width float64, grey int) {
	p.pdf.SetLineWidth(width)
	p.pdf.SetDrawColor(grey, grey, grey)
	p.pdf.Line(edge, p.y, p.width-edge, p.y)
}

// ruleFrom draws a heavy rule from x to the right margin.
func (p *page) ruleFrom(x, width float64) {
	p.pdf.SetLineWidth(width)
	p.pdf.SetDrawColor(0, 0, 0)
	p.pdf.Line(x, p.y, p.width-edge, p.y)
}

// lines breaks a text to a width.
func (p *page) lines(text string, width float64) []string {
	var out []string
	for _, line := range p.pdf.SplitText(drawing.Printable(text), width) {
		out = append(out, strings.TrimSpace(line))
	}
	return out
}

// head has the maker at the left and what the sheet is at the right.
func (p *page) head() {
	right, top := p.width-edge, p.y
	p.down(7)
	maker := p.quote.Maker
	if len(maker) > 0 {
		p.font("B", 16)
		p.at(edge, maker[0])
		p.font("", 8.5)
		p.ink(midGrey)
		for _, line := range maker[1:] {
			p.down(4.4)
			p.at(edge, line)
		}
		p.ink(0)
	}
	below := p.y
	p.y = top
	p.down(7)
	p.font("", 16)
	p.ink(midGrey)
	p.endAt(right, "Quote")
	p.font("", 8.5)
	for _, line := range p.dates() {
		p.down(4.4)
		p.endAt(right, line)
	}
	p.ink(0)
	p.y = max(p.y, below)
	p.down(5)
	p.rule(0.6, 0)
}

func (p *page) dates() []string {
	var out []string
	if p.quote.Number != "" {
		out = append(out, "No. "+p.quote.Number)
	}
	if !p.quote.Date.IsZero() {
		out = append(out, p.quote.Date.Format(day))
	}
	if !p.quote.ValidUntil.IsZero() {
		out = append(out, "valid until "+p.quote.ValidUntil.Format(day))
	}
	return out
}

// subject names the job, the client and the garments at the left of the
// picture.
func (p *page) subject() {
	top := p.y
	p.down(10)
	textWidth := p.width - 2*edge
	if p.picture {
		textWidth *= 0.52
	}
	p.font("B", 13)
	for i, line := range p.lines(p.quote.Job, textWidth) {
		if i > 0 {
			p.down(5.5)
		}
		p.at(edge, line)
	}
	if p.quote.Client != "" {
		p.down(1)
		p.font("", 10)
		for _, line := range p.lines("for "+p.quote.Client, textWidth) {
			p.down(5)
			p.at(edge, line)
		}
	}
	p.down(2.5)
	p.font("", 9)
	for _, garment := range garmentTexts(p.quote.Garments) {
		for _, line := range p.lines(garment, textWidth) {
			p.down(4.6)
			p.at(edge, line)
		}
	}
	below := p.y
	if p.picture {
		const height = 46.0 // mm [source.OwnChoice]
		left := edge + textWidth + 8
		p.drawPicture(left, top+5*p.size, p.width-edge-left, height*p.size)
		below = max(below, top+(height+7)*p.size)
	}
	p.y = below
	p.down(6)
}

// garmentTexts lists what is made: "dress for Imke, Noor and Rosalind".
func garmentTexts(garments []Garment) []string {
	var order []string
	wearers, counts := map[string][]string{}, map[string]int{}
	for _, g := range garments {
		if counts[g.Name] == 0 {
			order = append(order, g.Name)
		}
		counts[g.Name] += g.Quantity
		if g.Wearer != "" {
			wearers[g.Name] = append(wearers[g.Name], g.Wearer)
		}
	}
	var out []string
	for _, name := range order {
		text := fmt.Sprintf("%d × %s", counts[name], name)
		if who := wearers[name]; len(who) > 1 {
			text += ", for " + strings.Join(who[:len(who)-1], ", ") + " and " + who[len(who)-1]
		} else if len(who) == 1 {
			text += ", for " + who[0]
		}
		out = append(out, text)
	}
	return out
}

func (p *page) drawPicture(left, top, width, height float64) {
	all, scale := pictureOf(p.quote.Garments, width, height)
	p.pdf.SetFillColor(lightGrey, lightGrey, lightGrey)
	p.pdf.SetDrawColor(midGrey, midGrey, midGrey)
	p.pdf.SetLineWidth(0.2)
	right := 0.0
	for _, s := range all {
		right = max(right, s.x+s.width)
	}
	left += width - right*scale // flush right
	for _, s := range all {
		points := make([]gofpdf.PointType, len(s.ring))
		for i, at := range s.ring {
			points[i] = gofpdf.PointType{X: left + (s.x+at[0])*scale, Y: top + (s.y+s.height-at[1])*scale}
		}
		p.pdf.Polygon(points, "FD")
	}
}
