package cloth

import (
	"ellwand/pieces/marks"
	"errors"
	"fmt"
	"slices"
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

// check refuses a place off the cloth, and a print that does not repeat.
func (m Motif) check(_ float64, repeat Repeat, say func(mm float64) string) error {
	if !IsLength(m.Along) || !IsLength(m.Across) {
		return fmt.Errorf("the centre of the motif lies %s along and %s across; neither can be negative", say(m.Along),
			say(m.Across))
	}
	if len(m.Pieces) > 0 && (repeat.Along == 0 || repeat.Across == 0) {
		return errors.New("a motif can only be centred where the print repeats; give the repeat along and across")
	}
	return nil
}
