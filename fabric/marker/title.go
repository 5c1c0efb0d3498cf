package marker

import (
	"fmt"
	"strconv"

	"ellwand/pieces/page"
)

// drawTitle draws the block at the head of the first page.
func (s *sheets) drawTitle() {
	buy := "buy " + s.options.bought(s.plan.Buy)
	if s.options.Remnant {
		buy = "remnant of " + s.options.Long(s.plan.Buy)
	}
	if n := len(s.plan.Offcuts); n > 1 {
		buy = fmt.Sprintf("%d remnants", n)
	}
	s.Bold(17)
	boxWidth := s.TextWidth(buy) + 10
	left := s.Width - margin - boxWidth
	s.Fill(0)
	s.Rect(left, margin, boxWidth, titleHeight-2, page.Inside)
	s.Ink(255)
	s.Text(left+5, margin+8.9, buy)
	s.Ink(0)
	title, room := titleOf(s.plan, s.options), left-margin-6
	for s.Points > 11 && s.TextWidth(title) > room {
		s.Bold(s.Points - 1)
	}
	s.Text(margin, margin+6, s.TextCut(title, room))
	s.Plain(10)
	s.Text(margin, margin+12, s.TextCut(subtitle(s.plan), left-margin-6))
	s.Y = margin + titleHeight
	s.drawFacts()
}

func (s *sheets) facts() []fact {
	plan, o := s.plan, s.options
	bound := "none proven"
	if plan.Bound > 0 {
		bound = o.atLeast(plan.Least())
	}
	amount := fact{ofAmount, o.bought(plan.Buy)}
	if o.Remnant {
		amount = fact{ofRemnant, o.Long(plan.Buy)}
	}
	if n := len(plan.Offcuts); n > 1 {
		amount = fact{ofRemnants, strconv.Itoa(n)}
	}
	facts := []fact{
		{ofClothWidth, o.Short(plan.Cloth.Width)},
		{ofUsableWidth, o.Short(plan.Width)},
		{ofPlies, pliesInWords(plan)},
		{ofNap, plan.Cloth.Nap.String()},
		{ofLength, o.Long(max(plan.Taken, plan.Length))},
		amount,
		{ofEfficiency, fmt.Sprintf("%.1f %%", 100*plan.Density)},
		{ofBound, bound},
		{ofScale, "1 : " + strconv.FormatFloat(s.denominator, 'f', -1, 64)},
	}
	if plan.Mark != "" {
		facts = append(facts, fact{ofMark, plan.Mark})
	}
	return facts
}

// drawFacts draws the facts in cells, each as wide as its text needs, in as
// many rows as the page needs.
func (s *sheets) drawFacts() {
	rows := s.factsRows(s.Inner())
	// Rows of about the same width, in as many rows.
	for width := s.Inner() - 10; width > 0; width -= 10 {
		narrower := s.factsRows(width)
		if len(narrower) > len(rows) {
			break
		}
		rows = narrower
	}
	for _, row := range rows {
		s.drawFactsRow(row)
	}
	s.Y += 3
}

// factsRows fills one row after the other up to a width.
func (s *sheets) factsRows(width float64) [][]fact {
	rows := [][]fact{nil}
	for _, f := range s.facts() {
		last := len(rows) - 1
		if len(rows[last]) > 0 && s.factsWidth(append(rows[last][:len(rows[last]):len(rows[last])], f)) > width {
			rows, last = append(rows, nil), last+1
		}
		rows[last] = append(rows[last], f)
	}
	return rows
}

func (s *sheets) factsWidth(row []fact) float64 {
	var sum float64
	for _, f := range row {
		sum += s.factWidth(f)
	}
	return sum
}

func (s *sheets) factWidth(f fact) float64 {
	s.Plain(6.5)
	width := s.TextWidth(f.name())
	s.Bold(9.5)
	return max(width, s.TextWidth(f.value)) + 4
}

func (s *sheets) drawFactsRow(row []fact) {
	x, spare := float64(margin), (s.Inner()-s.factsWidth(row))/float64(len(row))
	s.SetPen(0.2, 0)
	for _, f := range row {
		cell := s.factWidth(f) + spare
		s.Rect(x, s.Y, cell, factsHeight, page.Rim)
		s.Plain(6.5)
		s.Ink(70)
		s.Text(x+2, s.Y+3.6, f.name())
		s.Ink(0)
		s.Bold(9.5)
		s.Text(x+2, s.Y+8.4, f.value)
		x += cell
	}
	s.Y += factsHeight
}
