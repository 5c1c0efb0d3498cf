package lay

import (
	"github.com/paulmach/orb"

	"ellwand/pieces"
	"ellwand/pieces/marks"
)

// Turning is a way in which a template may lie.
type Turning struct {
	// Degrees and Mirrored as Laid.Turn and Laid.Mirrored.
	Degrees  float64
	Mirrored bool
}

// Laid is one template in its place. Coordinates are in the cloth frame.
type Laid struct {
	// Piece as it is chalked here, in its own frame: in an open lay a
	// cut-on-fold piece is the whole piece.
	Piece pieces.Piece
	Name  string
	// Garment and Size as in the piece.
	Garment, Size string
	// Copy counts the templates of this piece in this lay from 1.
	Copy int
	// Yields is how many pieces this template gives: 2 for a pair cut from
	// two plies, otherwise 1.
	Yields int
	// FromLower says that it lies on two plies and is cut from the lower one alone,
	// when the cloth has been opened: the odd one of a lay that is folded.
	FromLower bool
	// Mirrored says that the template lies face down. It is mirrored in x
	// first, then turned counter-clockwise by Turn degrees (0 up to 360),
	// both about the origin of the piece, then moved by X and Y.
	Mirrored bool
	Turn     float64
	X, Y     float64
	// Turnings are all the ways in which this template may lie here by its
	// grain, the nap and the fold; the tilt of the cloth is allowed besides.
	Turnings []Turning
	// ByHand says that a hand has laid it there.
	ByHand bool
	// OnFold says that the fold edge lies on a fold of its part.
	OnFold bool
	// Bed is where it lies: an index into Plan.Beds.
	Bed int
	// Outline is the cutting line: closed, no more than 0.1 mm outside the
	// true curve.
	Outline orb.Ring
	// Seam is the seam line, closed.
	Seam orb.Ring
	// Grain is the grainline; Grain[1] is "this end up".
	Grain   [2]orb.Point
	Notches []Notch
	Darts   []Dart
	Marks   []Mark
}

// Notch is a notch in its place.
type Notch struct {
	// At is on the seam line, Out where the notch meets the cutting line.
	At, Out orb.Point
	// Along is the unit direction of the seam line at the notch.
	Along orb.Point
	// Count of strokes, 1 or 2.
	Count int
}

// Dart is a dart in its place: its sewing lines, closed when the dart
// lies wholly inside the piece.
type Dart struct {
	Name string
	Line orb.LineString
}

// Mark is an inner mark in its place: a line, or a single point.
type Mark struct {
	Name marks.Name
	Line orb.LineString
}

// Sources finds the pieces that templates were made from, by their names, garments and
// sizes.
type Sources map[source]int

type source struct{ name, garment, size string }

// SourcesIn all the pieces; of two of one name the first.
func SourcesIn(all []pieces.Piece) Sources {
	out := make(Sources, len(all))
	for i, piece := range all {
		key := source{piece.Name, piece.Garment, piece.Size}
		if _, found := out[key]; !found {
			out[key] = i
		}
	}
	return out
}

// Of a template; -1 when there is none.
func (s Sources) Of(l Laid) int {
	if i, found := s[source{l.Name, l.Garment, l.Size}]; found {
		return i
	}
	return -1
}
