// Package marker draws the plan of a lay on paper, to be chalked on the cloth
// with a tape measure.
package marker

import (
	"fmt"
	"io"

	"ellwand/fabric/lay"
	"ellwand/fabric/words"
	"ellwand/pieces/drawing"
)

// Write draws the plan as a PDF: the lay to scale over as many pages as it
// needs, then the table by which it is laid, and the words that go with it.
// The same plan gives the same bytes. It refuses a lay that is not possible.
func Write(w io.Writer, plan lay.Plan, options Options) error {
	if err := check(plan); err != nil {
		return err
	}
	pages := pagesOf(plan, options)
	return drawing.WritePDF(w, titleOf(plan, options), pages)
}

// check refuses what cannot be drawn.
func check(plan lay.Plan) error {
	if !plan.Possible() {
		return fmt.Errorf("the %s lay of %s cannot be drawn: %s", plan.Lay, plan.Cloth, words.WhyNot(plan))
	}
	if len(plan.Pieces) == 0 {
		return fmt.Errorf("the %s lay of %s has no pieces to draw", plan.Lay, plan.Cloth)
	}
	return nil
}

// pagesOf draws all pages of the plan.
func pagesOf(plan lay.Plan, options Options) []drawing.Page {
	s := newSheets(plan, options)
	s.drawLay()
	s.drawTable()
	s.drawWords()
	s.drawRest()
	s.numberPages()
	return s.Done()
}

// numberPages writes the foot of every page once their number is known.
func (s *sheets) numberPages() {
	s.Plain(7)
	s.Ink(90)
	s.Foot(func(number int) {
		foot := s.Height - margin + 4
		s.Text(margin, foot, s.TextCut(titleOf(s.plan, s.options)+" · "+subtitle(s.plan), s.Inner()-30))
		s.TextRight(s.Right(), foot, fmt.Sprintf("page %d of %d", number, s.Count()))
	})
	s.Ink(0)
}
