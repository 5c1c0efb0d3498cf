package marker

import (
	"ellwand/fabric/words"
)

// drawWords writes three columns under the table, or on a page of their own:
// how to spread the cloth, how to lay the pieces, what to beware of.
func (s *sheets) drawWords() {
	const gap = 8.0
	blocks := []struct {
		head  string
		items []string
	}{
		{"1  " + s.foldHead(), words.Spreading(s.plan, s.options.Short)},
		{"2  Lay the pieces", laying(s.plan, s.options)},
		{"3  Before you cut", cautions(s.plan, s.options)},
	}
	width := (s.Inner() - gap*float64(len(blocks)-1)) / float64(len(blocks))
	tallest := 0.0
	for i, block := range blocks {
		height := s.blockHeight(block.items, width)
		if i == 0 {
			height += profilesHeight(s.plan)
		}
		tallest = max(tallest, height)
	}
	if s.Y+8+tallest > s.Height-margin {
		s.addTextPage("How to spread, lay and cut")
	}
	top := s.Y + 9
	for i, block := range blocks {
		x := margin + float64(i)*(width+gap)
		s.Bold(10)
		s.Text(x, top, block.head)
		y := top + 6
		if i == 0 {
			s.drawProfiles(x, y-3)
			y += profilesHeight(s.plan)
		}
		s.writeItems(x, y, width, block.items)
	}
}

func (s *sheets) foldHead() string {
	if s.plan.Plies == 2 {
		return "Fold the cloth"
	}
	return "Spread the cloth"
}

const (
	adviceStep = 3.9 // between lines, mm
	adviceGap  = 1.4 // between items
	adviceHang = 3.5 // indent
)

func (s *sheets) blockHeight(items []string, width float64) float64 {
	height := 6.0
	s.Plain(8.5)
	for _, item := range items {
		height += adviceStep*float64(len(s.Wrapped(item, width-adviceHang))) + adviceGap
	}
	return height
}

func (s *sheets) writeItems(x, y, width float64, items []string) {
	before := s.Y
	s.Plain(8.5)
	s.Y = y
	for _, item := range items {
		s.Paragraph(x, width, adviceStep, adviceHang, "•", item)
		s.Y += adviceGap
	}
	s.Y = before // the blocks stand beside each other
}
