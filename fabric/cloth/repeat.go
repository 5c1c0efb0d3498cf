package cloth

import "ellwand/pieces/marks"

// Repeat of the pattern of a cloth, and what is to be matched on it. The zero
// value is plain cloth.
//
// Two points match when they fall on the same place of the repeat. On cloth
// with a repeat, notches of the same name on two pieces match, and so do the
// right and the left of a pair. Across the cloth a piece that is laid whole has
// its notches twice: those as drawn match what lies face up, their images what
// lies face down.
type Repeat struct {
	// Along is the repeat of stripes that run across the cloth, mm along the
	// warp; Across that of stripes that run along it, mm across. Both make
	// checks; 0 is none.
	Along, Across float64
	// Matches names the match points to keep, the most important first; empty
	// keeps all that can be kept together, in the order of the pieces.
	Matches []marks.Name
	// Centred names pieces whose centre lies on one line of the repeat across:
	// their fold edge, or the edge whose name begins with "centre", or else
	// their grainline.
	Centred []string
	// CentreLine is how far that line lies from the outer edge of the selvedge
	// nearest to the cutter, mm; it comes again with every repeat.
	CentreLine float64
}

// IsPlain reports whether there is nothing to match.
func (r Repeat) IsPlain() bool { return r.Along == 0 && r.Across == 0 }
