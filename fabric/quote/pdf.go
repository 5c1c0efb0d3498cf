package quote

import (
	"errors"
	"fmt"
	"io"
	"strings"

	"github.com/paulmach/orb"

	"ellwand/pieces/drawing"
	"ellwand/pieces/page"
	"ellwand/pieces/paper"
)

// day is how a date is printed.
const day = "2 January 2006"

// WritePDF draws the quote on one sheet. Long quotes are set smaller, and
// without the picture; one that does not fit even so is refused. The same
// quote gives the same bytes.
func (q Quote) WritePDF(w io.Writer, sheet paper.Paper) error { return q.writePDF(w, sheet, "Quote") }

// WriteOwnPDF draws the quote as the maker's own sheet, which says that it is one.
func (q Quote) WriteOwnPDF(w io.Writer, sheet paper.Paper) error {
	return q.writePDF(w, sheet, "For the maker")
}

func (q Quote) writePDF(w io.Writer, sheet paper.Paper, title string) error {
	for _, try := range []struct {
		size    float64
		picture bool
	}{{1, true}, {0.92, true}, {0.84, true}, {0.84, false}, {0.76, false}, {0.68, false}} {
		p := newPage(q, sheet, try.size, try.picture)
		p.title = title
		p.draw()
		if p.fits() {
			return drawing.WriteDatedPDF(w, title+" "+q.Number+" "+q.Job, q.Date, p.Done())
		}
	}
	return errors.New("the quote does not fit on one page: shorten its terms, or put several notions into one line")
}

func newPage(q Quote, sheet paper.Paper, size float64, picture bool) *quotePage {
	p := &quotePage{Pages: page.Pages{Edge: edge}, quote: q, size: size, picture: picture}
	p.Add(sheet.Upright())
	return p
}

func (p *quotePage) draw() {
	p.head()
	p.subject()
	p.table()
	p.totals()
	p.remarks()
}

// head has the maker at the left and what the sheet is at the right.
func (p *quotePage) head() {
	right, top := p.Right(), p.Y
	p.down(7)
	maker := p.quote.Maker
	if len(maker) > 0 {
		p.bold(16)
		p.at(edge, maker[0])
		p.plain(8.5)
		p.Ink(midGrey)
		for _, line := range maker[1:] {
			p.down(4.4)
			p.at(edge, line)
		}
		p.Ink(0)
	}
	below := p.Y
	p.Y = top
	p.down(7)
	p.plain(16)
	p.Ink(midGrey)
	p.endAt(right, p.title)
	p.plain(8.5)
	for _, line := range p.dates() {
		p.down(4.4)
		p.endAt(right, line)
	}
	p.Ink(0)
	p.Y = max(p.Y, below)
	p.down(5)
	p.rule(0.6, 0)
}

func (p *quotePage) dates() []string {
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
func (p *quotePage) subject() {
	top := p.Y
	p.down(10)
	textWidth := p.Width - 2*edge
	if p.picture {
		textWidth *= 0.52
	}
	p.bold(13)
	for i, line := range p.Wrapped(p.quote.Job, textWidth) {
		if i > 0 {
			p.down(5.5)
		}
		p.at(edge, line)
	}
	if p.quote.Client != "" {
		p.down(1)
		p.plain(10)
		for _, line := range p.Wrapped("for "+p.quote.Client, textWidth) {
			p.down(5)
			p.at(edge, line)
		}
	}
	p.down(2.5)
	p.plain(9)
	for _, garment := range garmentTexts(p.quote.Garments) {
		for _, line := range p.Wrapped(garment, textWidth) {
			p.down(4.6)
			p.at(edge, line)
		}
	}
	below := p.Y
	if p.picture {
		const height = 46.0 // mm [source.OwnChoice]
		left := edge + textWidth + 8
		p.drawPicture(left, top+5*p.size, p.Right()-left, height*p.size)
		below = max(below, top+(height+7)*p.size)
	}
	p.Y = below
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

func (p *quotePage) drawPicture(left, top, width, height float64) {
	all, scale := pictureOf(p.quote.Garments, width, height)
	p.Fill(lightGrey)
	p.SetPen(0.2, midGrey)
	right := 0.0
	for _, s := range all {
		right = max(right, s.x+s.width)
	}
	left += width - right*scale // flush right
	for _, s := range all {
		points := make([]orb.Point, len(s.ring))
		for i, at := range s.ring {
			points[i] = orb.Point{left + (s.x+at[0])*scale, top + (s.y+s.height-at[1])*scale}
		}
		p.Polygon(points, page.Whole)
	}
}
