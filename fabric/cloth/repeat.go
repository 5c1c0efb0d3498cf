package cloth

import "ellwand/pieces/marks"

// Repeat of the pattern of a cloth, and what is to be matched on it. The zero
// value is plain cloth.
//
// Two points match when they fall on the same place of the repeat. On cloth
// with a repeat the lower ends of long seams that join two pieces of a garment match,
// notches of the same name, the right and the left of a pair, and the copies of a
// piece that are joined to each other, such as gores. Across the cloth a piece that is
// laid whole has its points twice: those as drawn match what lies face up, their
// images what lies face down.
type Repeat struct {
	// Along is the repeat of stripes that run across the cloth, mm along the
	// warp; Across that of stripes that run along it, mm across. Both make
	// checks; 0 is none.
	Along, Across float64
	// Matches names what to match, the most important first; empty
	// keeps all that can be kept together, in the order of the trade.
	Matches []marks.Name
	// SideBySide names pieces that hang side by side, as curtains do: all of them, and
	// all their copies, match along the cloth at their lower edges.
	SideBySide []string
	// Even says that the pattern looks the same when it is turned end for end, as plain
	// stripes do. Otherwise all pieces of a garment that are matched point the same way.
	Even bool
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
