// Package pieces holds what a pattern piece is: named edges with their seam
// allowances, the grainline, the cut count, the fold, notches and marks; and
// what is derived from it, above all the cutting outline.
//
// Lengths are millimetres. A piece is drawn right side up, its grainline
// pointing to "this end up"; outlines run counter-clockwise.
package pieces

import (
	"github.com/paulmach/orb"

	"ellwand/pieces/marks"
	"ellwand/pieces/role"
	"ellwand/pieces/seams"
)

// Piece is one pattern piece. It is a value: functions return new pieces and
// never edit the one they are given.
type Piece struct {
	Name    string    // "sleeve"
	Role    role.Role // of our own blocks; the name is made from it
	Garment string    // "blouse"
	Size    string    // "12", or empty
	Cloth   string    // the cloth it is cut from: "shell"
	Kind    Kind
	// Edges are the line that the piece is drawn by, counter-clockwise; each ends
	// where the next begins, the last where the first begins. It is the seam
	// line, but for edges that came from elsewhere as a cutting line (see Edge).
	Edges []Edge
	Grain Grain
	// Cut is how many are cut, 1 or more. Of a pair it is the number of
	// single pieces, so it is even.
	Cut int
	// Pair says that half of the cut count is mirrored: one right, one left.
	Pair bool
	// Approximate says that the outline is drawn about the true one, such as a
	// rectangle about a paper piece, so that it proves nothing impossible.
	Approximate bool
	// Accuracy is how far the true outline may lie from this one, to either
	// side, in mm: of a piece that was measured with a tape or traced. 0 for one
	// that is exact.
	Accuracy float64
	// Fold names the edge that lies on the fold, or is empty. That edge is
	// straight, is not cut and has no allowance; the piece is drawn as a half.
	Fold    seams.Name
	Notches []Notch
	Darts   []Dart
	Marks   []Mark
}

// Edge is a named stretch of the line that a piece is drawn by: of the seam line,
// from which the cutting line is derived; or of a cutting line that came from
// elsewhere, which is kept as it came, and from which the seam line is derived
// where it is known how wide its allowance is.
type Edge struct {
	Name seams.Name // unique in its piece
	Path Path
	// Allowance from the path out to the cutting line. Not negative.
	Allowance float64
	// Included is how wide the allowance is that the path already includes, from
	// the path in to the seam line. Not negative; 0 for a seam line.
	Included float64
	// Unknown says that the path is a cutting line, and that nobody said how
	// wide its allowance is: it is never added to, nor taken from.
	Unknown bool
	// Hem says that the allowance folds up along the edge, so that it
	// mirrors the piece inside the edge.
	Hem bool
}

// Grain is the grainline: a line on the piece with a direction.
type Grain struct {
	// From the lower end To the upper: "this end up".
	From, To orb.Point
	Lie      GrainLie
}

// Notch is a mark on an edge that meets one on another piece.
type Notch struct {
	Edge seams.Name
	// At is the distance along the edge from its start.
	At float64
	// Count of strokes: 1 (front, by custom) or 2 (back).
	Count int
	// Match names notches that meet: "front armhole". May be None.
	Match marks.Name
}

// Dart is a wedge sewn out of a piece. Its mouth is an edge of its own on the
// seam line, from the start leg's end to the end leg's end; the mouth is left
// out when the seam it interrupts is measured.
type Dart struct {
	Name seams.Name // the dart of a seam
	// Mouth names the edge across the dart's open end, or is empty for a
	// dart that lies wholly inside the piece.
	Mouth seams.Name
	// Start and End are where the legs meet the seam line, Apex the point.
	// For a dart inside the piece, Start and End are its widest place and
	// Apex and OtherApex its two ends.
	Start, Apex, End, OtherApex orb.Point
}

// Mark is a line or a point drawn inside a piece: a drill hole, the bust
// line, the bicep line.
type Mark struct {
	Name marks.Name
	Path Path      // a line; nil for a point
	At   orb.Point // a point, when Path is nil
}
