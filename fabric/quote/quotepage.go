package quote

import "ellwand/pieces/page"

// quotePage is the quote being drawn. Sizes are of the plain page, and
// multiplied by size where they are used.
type quotePage struct {
	page.Pages
	quote   Quote
	title   string
	size    float64
	picture bool
}

func (p *quotePage) plain(points float64) { p.Plain(points * p.size) }

func (p *quotePage) bold(points float64) { p.Bold(points * p.size) }

func (p *quotePage) down(mm float64) { p.Y += mm * p.size }

func (p *quotePage) at(x float64, text string) { p.Text(x, p.Y, text) }

func (p *quotePage) endAt(x float64, text string) { p.TextRight(x, p.Y, text) }

func (p *quotePage) rule(width float64, grey int) { p.Rule(edge, p.Right(), width, grey) }

// fits reports whether everything lies above the lower margin.
func (p *quotePage) fits() bool { return p.HasRoom(-1) }

// Margins of the page and its greys, mm and 0 to 255 [source.OwnChoice].
const (
	edge      = 18.0
	lightGrey = 236
	midGrey   = 105
)
