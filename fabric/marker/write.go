// Package marker draws the plan of a lay on paper, to be chalked on the cloth
// with a tape measure.
package marker

import (
	"fmt"
	"io"

	"ellwand/fabric"
	"ellwand/pieces/drawing"
	"ellwand/pieces/paper"
)

// Options of a plan. The zero value prints A4 in metric.
type Options struct {
	// Job is the title, for example "Summer blouse for Mrs Quenaya".
	Job string
	// Paper of a printer; without a size it is A4.
	Paper paper.Paper
	// Inches gives every measure in inches and yards instead of cm and m.
	Inches bool
	// Remnant says that the cloth is there already, LayPlan.Buy of it, and is
	// not to be bought.
	Remnant bool
}

// Write draws the plan as a PDF: the lay to scale over as many pages as it
// needs, then the table by which it is laid, and the words that go with it.
// The same plan gives the same bytes. It refuses a lay that is not possible.
func Write(w io.Writer, plan fabric.LayPlan, options Options) error {
	if err := check(plan); err != nil {
		return err
	}
	pages := pagesOf(plan, options)
	return drawing.WritePDF(w, titleOf(plan, options), pages)
}

// check refuses what cannot be drawn.
func check(plan fabric.LayPlan) error {
	if !plan.Possible() {
		return fmt.Errorf("the %s lay of %s cannot be drawn: %s", plan.Lay, plan.Cloth, plan.Impossible)
	}
	if len(plan.Pieces) == 0 {
		return fmt.Errorf("the %s lay of %s has no pieces to draw", plan.Lay, plan.Cloth)
	}
	return nil
}

// pagesOf draws all pages of the plan.
func pagesOf(plan fabric.LayPlan, options Options) []drawing.Page {
	s := newSheets(plan, options)
	s.drawLay()
	s.drawTable()
	s.drawWords()
	s.drawRest()
	s.numberPages()
	return s.pages()
}

// sheets is the plan being drawn.
type sheets struct {
	brush
	plan        fabric.LayPlan
	options     Options
	paper.Paper         // the page being drawn
	all         []page  // every page so far
	denominator float64 // of the scale
	onScreen    bool    // there is no print to be checked
	// y is how far down the page is filled, mm.
	y float64
}

// page is a sheet with what is drawn on it.
type page struct {
	paper.Paper
	picture *drawing.Picture
}

func newSheets(plan fabric.LayPlan, options Options) *sheets {
	if options.Paper == (paper.Paper{}) {
		options.Paper = paper.A4
	}
	return &sheets{plan: plan, options: options}
}

// addPage begins a page; y is its upper margin.
func (s *sheets) addPage(of paper.Paper) {
	s.on = &drawing.Picture{}
	s.Paper, s.y = of, margin
	s.all = append(s.all, page{of, s.on})
}

func (s *sheets) pages() []drawing.Page {
	var out []drawing.Page
	for _, p := range s.all {
		out = append(out, drawing.Page{Width: p.Width, Height: p.Height, Picture: *p.picture})
	}
	return out
}

// addTextPage begins a page of words.
func (s *sheets) addTextPage(head string) {
	s.addPage(s.options.Paper.OnItsSide())
	s.drawHead(head)
}

func titleOf(plan fabric.LayPlan, options Options) string {
	if options.Job == "" {
		return "Marker plan"
	}
	return options.Job
}

// inner is the width between the margins.
func (s *sheets) inner() float64 { return s.Width - 2*margin }

// numberPages writes the foot of every page once their number is known.
func (s *sheets) numberPages() {
	for i, page := range s.all {
		s.on, s.Paper = page.picture, page.Paper
		s.font("", 7)
		s.ink(90)
		foot := s.Height - margin + 4
		s.text(margin, foot, s.textCut(titleOf(s.plan, s.options)+" · "+subtitle(s.plan), s.inner()-30))
		s.textRight(s.Width-margin, foot, fmt.Sprintf("page %d of %d", i+1, len(s.all)))
		s.ink(0)
	}
}
