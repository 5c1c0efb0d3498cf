package found

import (
	"github.com/paulmach/orb"

	"ellwand/pieces"
)

// View says which part of a drawing is the pattern, and how its sheets lie. The zero
// value leaves all to be found.
type View struct {
	// Pages are the sheets of the file that count, from 1; none means all.
	Pages []int
	// Rows are the sheets as they lie beside each other, from the upper row, each from
	// the left; 0 where none lies. None means that it is found.
	Rows [][]int
	// Overlap is how far sheets lie over each other, mm; used where OverlapSaid.
	Overlap     float64
	OverlapSaid bool
	// Lines are kinds of lines by their numbers in the overview, from 1; none means all
	// that are shown.
	Lines []int
	// Layers whose lines count, by their names; none means all that are shown.
	Layers []string
	// Square is the side of a test square in the drawing, mm; 0 where none was said.
	Square float64
	// ByGroup makes a piece of each group of lines, in place of each outline.
	ByGroup bool
}

// Overview is a drawing as a whole: what a view chooses from.
type Overview struct {
	Kinds  []LineKind
	Sheets []PlacedSheet
}

// LineKind are lines that are drawn alike.
type LineKind struct {
	Number int // from 1
	Layer  string
	Colour string // #rrggbb; empty of areas that are filled alone
	Width  float64
	// Dashes are the lengths of strokes and gaps in turn, mm; none is a solid line.
	Dashes []float64
	Lines  []pieces.Path
	// Chosen says that the lines count.
	Chosen bool
}

// Length of all lines, mm.
func (k LineKind) Length() float64 {
	sum := 0.0
	for _, l := range k.Lines {
		sum += l.Length()
	}
	return sum
}

// PlacedSheet is a sheet of a file where it was joined to others.
type PlacedSheet struct {
	Page int // from 1
	Box  orb.Bound
}
