package sheet

import (
	"fmt"
	"math"
	"strings"

	"ellwand/pieces/measure"
)

// Paper is what a printer or plotter prints on.
type Paper struct {
	// Width of the sheet; 0 for a roll, whose pages are as long as what is on
	// them.
	Width float64
	// Height of the sheet, or the width of the roll.
	Height float64
	// Margin that stays white on all sides; printers need 4 to 7 mm.
	Margin float64
	// Overlap that two neighbours both show, half of it beyond the trim line
	// of each.
	Overlap float64
	// Unit in which messages give its sides, rounded as people read them.
	Unit measure.Unit
}

// Say prints a length in the unit of the paper.
func (p Paper) Say(mm float64) string { return measure.Length(mm).Format(p.Unit) }

// Usual margins and overlaps, mm.
const (
	UsualMargin  = 10.0
	UsualOverlap = 12.0
)

// papers by name, upright, mm: the A series [source.ISO216], and the papers of
// North America [source.PWG5101], where tabloid is called ledger.
var papers = []struct {
	name          string
	width, height float64
}{
	{"a0", 841, 1189}, {"a1", 594, 841}, {"a2", 420, 594}, {"a3", 297, 420}, {"a4", 210, 297}, {"a5", 148, 210},
	{"letter", 215.9, 279.4}, {"legal", 215.9, 355.6}, {"tabloid", 279.4, 431.8},
}

// PaperNames lists the sheets that are known by name.
func PaperNames() []string {
	var out []string
	for _, p := range papers {
		out = append(out, p.name)
	}
	return out
}

// ParsePaper reads the name of a sheet, "a4", or its sides, "600mm x 900mm"
// or "24in x 36in"; a side without a unit is in the one given, which becomes
// that of the paper. Margin and overlap are the usual ones.
func ParsePaper(text string, unit measure.Unit) (Paper, error) {
	plain := strings.ToLower(strings.TrimSpace(text))
	for _, p := range papers {
		if p.name == plain {
			return Paper{p.width, p.height, UsualMargin, UsualOverlap, unit}, nil
		}
	}
	first, second, found := strings.Cut(strings.ReplaceAll(plain, "×", "x"), "x")
	if !found || !strings.ContainsAny(first[:min(1, len(first))], ".0123456789") {
		return Paper{}, fmt.Errorf("the paper %q is not known; use one of %s, or its sides, such as %s", text, strings.Join(PaperNames(), ", "), sidesInWords(unit))
	}
	width, err := measure.Parse(strings.TrimSpace(first), unit)
	if err != nil {
		return Paper{}, fmt.Errorf("the paper %q: %w", text, err)
	}
	height, err := measure.Parse(strings.TrimSpace(second), unit)
	if err != nil {
		return Paper{}, fmt.Errorf("the paper %q: %w", text, err)
	}
	return Paper{float64(width), float64(height), UsualMargin, UsualOverlap, unit}, nil
}

// sidesInWords are the sides of a sheet, as an example.
func sidesInWords(unit measure.Unit) string {
	if unit == measure.Inch || unit == measure.Yard {
		return "24inx36in"
	}
	return "600mmx900mm"
}

// Turned is the sheet on its other side; a roll has none.
func (p Paper) Turned() Paper {
	if !p.IsRoll() {
		p.Width, p.Height = p.Height, p.Width
	}
	return p
}

// IsRoll reports whether pages are as long as what is on them.
func (p Paper) IsRoll() bool { return p.Width == 0 }

// Cell is the size of a tile between its trim lines: what one sheet adds to
// the whole. Of a roll the width is 0.
func (p Paper) Cell() (width, height float64) {
	lost := 2*p.Margin + p.Overlap
	return math.Max(0, p.Width-lost), p.Height - lost
}

// Check refuses a paper that cannot be printed on, or not with the squares by
// which the print is measured.
func (p Paper) Check() error {
	say := p.Say
	width, height := p.Cell()
	sides := fmt.Sprintf("sheet of %s x %s", say(p.Width), say(p.Height))
	if p.IsRoll() {
		width, sides = math.Max(leastLong, height), "roll of "+say(p.Height)
	}
	const most = 5000
	switch {
	case !(p.Margin >= 0) || !(p.Overlap >= 0):
		return fmt.Errorf("a margin of %s and an overlap of %s: neither can be negative", say(p.Margin), say(p.Overlap))
	case !(p.Width <= most) || !(p.Height <= most):
		return fmt.Errorf("a %s is too large; no side can be over %s", sides, say(most))
	case !(math.Min(width, height) >= leastCell) || !(math.Max(width, height) >= leastLong):
		return fmt.Errorf("a %s with a margin of %s and an overlap of %s leaves %s x %s for the pieces; %s x %s are needed for the squares by which the print is measured: take a smaller margin or overlap, or larger paper",
			sides, say(p.Margin), say(p.Overlap), say(math.Max(0, width)), say(math.Max(0, height)), say(leastCell), say(leastLong))
	}
	return nil
}

// The least cell has room for the title and a square of 4 in, mm.
const leastCell, leastLong = 106.0, 125.0
