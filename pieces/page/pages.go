package page

import (
	"github.com/paulmach/orb"

	"ellwand/pieces/drawing"
	"ellwand/pieces/paper"
)

// Pages are pages in the making, filled from above one after the other. The
// zero value has none.
type Pages struct {
	Brush               // draws on the page being filled
	paper.Paper         // of that page
	Edge        float64 // what stays white on each side, mm
	Y           float64 // how far down the page is filled, mm
	columns     Columns
	all         []filled
}

// filled is a page with what is drawn on it.
type filled struct {
	paper.Paper
	picture *drawing.Picture
}

// Add begins a page; Y is its upper edge.
func (p *Pages) Add(of paper.Paper) {
	p.On = &drawing.Picture{}
	p.Paper, p.Y = of, p.Edge
	p.all = append(p.all, filled{of, p.On})
}

// Count of the pages so far.
func (p *Pages) Count() int { return len(p.all) }

// Keep drops all pages but the first.
func (p *Pages) Keep(first int) { p.all = p.all[:first] }

// Inner is the width between the edges.
func (p *Pages) Inner() float64 { return p.Width - 2*p.Edge }

// Right is where the right edge begins.
func (p *Pages) Right() float64 { return p.Width - p.Edge }

// HasRoom reports whether so many mm more lie above the lower edge.
func (p *Pages) HasRoom(height float64) bool { return p.Y+height <= p.Height-p.Edge }

// Rule draws a line at Y from one place across the page to another, ended
// square, with a pen of that width and grey.
func (p *Pages) Rule(from, to, width float64, grey int) {
	p.On.Line(drawing.Pen{Width: width, Grey: grey, Blunt: true}, orb.Point{from, p.Y}, orb.Point{to, p.Y})
}

// Paragraph writes a text in lines no wider than given, the first at Y, and
// moves Y a step below the last. With a mark before it, a bullet or a number,
// its lines are indented beside that.
func (p *Pages) Paragraph(x, width, step, indent float64, mark, text string) {
	p.Text(x, p.Y, mark)
	for _, line := range p.Wrapped(text, width-indent) {
		p.Text(x+indent, p.Y, line)
		p.Y += step
	}
}

// Foot visits every page, numbered from 1, once their number is known.
func (p *Pages) Foot(draw func(number int)) {
	for i, page := range p.all {
		p.On, p.Paper = page.picture, page.Paper
		draw(i + 1)
	}
}

// Done are the pages as drawn.
func (p *Pages) Done() []drawing.Page {
	var out []drawing.Page
	for _, page := range p.all {
		out = append(out, drawing.Page{Width: page.Width, Height: page.Height, Picture: *page.picture})
	}
	return out
}

// Columns of words on a page, filled one after the other.
type Columns struct {
	Count int
	Gap   float64 // between them, mm
	top   float64
	at    int // the one that is filled, from 0
}
