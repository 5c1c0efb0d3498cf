package cloth

import (
	"slices"

	"ellwand/pieces/marks"
)

// Motif is a figure of the print, once in every repeat, whose centre falls on the
// centre of a piece, along and across (common practice with large prints). The zero
// value centres nothing.
type Motif struct {
	// Along and Across are where the centre of one motif lies: from the cut end,
	// straightened, and from the outer edge of the selvedge nearest to the cutter,
	// mm. It comes again with every repeat.
	Along, Across float64
	// Pieces names those on which a motif is centred; empty is none.
	Pieces []string
	// Point names a mark or a match point of those pieces on which the centre
	// falls; None is the middle of the whole piece.
	Point marks.Name
}

// Has reports whether a motif is centred on the piece of that name.
func (m Motif) Has(piece string) bool { return slices.Contains(m.Pieces, piece) }

// What a motif cannot have.
const (
	// NegativeMotif lies a Length along and Other across.
	NegativeMotif Defect = "negative motif"
	// MotifWithoutRepeat comes once.
	MotifWithoutRepeat Defect = "motif without a repeat"
)

// faults are a place off the cloth, and a print that does not repeat.
func (m Motif) faults(_ float64, repeat Repeat) []Fault {
	if !IsLength(m.Along) || !IsLength(m.Across) {
		return []Fault{{Of: NegativeMotif, Length: m.Along, Other: m.Across}}
	}
	if len(m.Pieces) > 0 && (repeat.Along == 0 || repeat.Across == 0) {
		return []Fault{{Of: MotifWithoutRepeat}}
	}
	return nil
}
