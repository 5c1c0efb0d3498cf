// Package paper knows what printers and plotters print on: sheets by name or by
// their sides, and rolls. Lengths are millimetres.
package paper

import (
	"fmt"
	"math"
	"strings"

	"ellwand/pieces/measure"
)

// Paper is a sheet, or a roll.
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

// named papers, upright, mm: the A series [source.ISO216], and the papers of
// North America [source.PWG5101], where tabloid is called ledger.
var named = []struct {
	name          string
	width, height float64
}{
	{"a0", 841, 1189}, {"a1", 594, 841}, {"a2", 420, 594}, {"a3", 297, 420}, {"a4", 210, 297}, {"a5", 148, 210},
	{"letter", 215.9, 279.4}, {"legal", 215.9, 355.6}, {"tabloid", 279.4, 431.8},
}

// Names lists the sheets that are known by name.
func Names() []string {
	var out []string
	for _, p := range named {
		out = append(out, p.name)
	}
	return out
}

// Parse reads the name of a sheet, "a4", or its sides, "600mm x 900mm"
// or "24in x 36in"; a side without a unit is in the one given, which becomes
// that of the paper. Margin and overlap are the usual ones.
func Parse(text string, unit measure.Unit) (Paper, error) {
	plain := strings.ToLower(strings.TrimSpace(text))
	for _, p := range named {
		if p.name == plain {
			return Paper{p.width, p.height, UsualMargin, UsualOverlap, unit}, nil
		}
	}
	first, second, found := strings.Cut(strings.ReplaceAll(plain, "×", "x"), "x")
	if !found || !strings.ContainsAny(first[:min(1, len(first))], ".0123456789") {
		return Paper{}, fmt.Errorf("the paper %q is not known; use one of %s, or its sides, such as %s", text,
			strings.Join(Names(), ", "), sidesInWords(unit))
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

// The papers that printers of desks take.
var (
	A4     = ofName("a4")
	Letter = ofName("letter")
)

// ofName is a paper of the list, in mm.
func ofName(name string) Paper {
	paper, err := Parse(name, measure.Millimetre)
	if err != nil {
		panic(err)
	}
	return paper
}

// Upright is the sheet with its short side across.
func (p Paper) Upright() Paper {
	if p.Width > p.Height {
		return p.Turned()
	}
	return p
}

// OnItsSide is the sheet with its long side across.
func (p Paper) OnItsSide() Paper {
	if p.Width < p.Height {
		return p.Turned()
	}
	return p
}

// sidesInWords are the sides of a sheet, as an example.
func sidesInWords(unit measure.Unit) string {
	if unit.System() == measure.Imperial {
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
		return fmt.Errorf("a %s with a margin of %s and an overlap of %s leaves %s x %s for the pieces; %s x %s are "+
			"needed for the squares by which the print is measured: take a smaller margin or overlap, or larger paper",
			sides, say(p.Margin), say(p.Overlap), say(math.Max(0, width)), say(math.Max(0, height)), say(leastCell),
			say(leastLong))
	}
	return nil
}

// The least cell has room for the title and a square of 4 in, mm.
const leastCell, leastLong = 106.0, 125.0
