package marker

import (
	"ellwand/fabric/lay"
	"ellwand/pieces/page"
	"ellwand/pieces/paper"
	"ellwand/pieces/safety"
)

// Options of a plan. The zero value prints A4 in metric.
type Options struct {
	// Job is the title, for example "Summer blouse for Mrs Quenaya".
	Job string
	// Paper of a printer; without a size it is A4.
	Paper paper.Paper
	// Inches gives every measure in inches and yards instead of cm and m.
	Inches bool
	// Remnant says that the cloth is there already, lay.Plan.Buy of it, and is
	// not to be bought.
	Remnant bool
	// Youngest of those who wear what is cut.
	Youngest safety.Wearer
}

// sheets is the plan being drawn.
type sheets struct {
	page.Pages
	plan        lay.Plan
	options     Options
	denominator float64 // of the scale
	onScreen    bool    // there is no print to be checked
}

func newSheets(plan lay.Plan, options Options) *sheets {
	if options.Paper == (paper.Paper{}) {
		options.Paper = paper.A4
	}
	return &sheets{Pages: page.Pages{Edge: margin}, plan: plan, options: options}
}

// addTextPage begins a page of words.
func (s *sheets) addTextPage(head string) {
	s.Add(s.options.Paper.OnItsSide())
	s.drawHead(head)
}

func titleOf(plan lay.Plan, options Options) string {
	if options.Job == "" {
		return "Marker plan"
	}
	return options.Job
}

// drawHead writes the head of a page after the first.
func (s *sheets) drawHead(text string) {
	s.Bold(12)
	s.Text(margin, margin+5, text)
	s.SetPen(0.3, 0)
	s.Line(margin, margin+8, s.Width-margin, margin+8)
	s.Y = margin + 11
}

// subtitle names the cloth and the lay.
func subtitle(plan lay.Plan) string {
	text := "lay " + plan.Lay.String()
	if plan.Cloth.Name != "" {
		text = plan.Cloth.String() + ", " + text
	}
	return text
}
