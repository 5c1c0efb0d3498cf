package found

import "github.com/paulmach/orb"

// Note is something that was repaired, read in one of several ways, or left out.
type Note struct {
	Kind NoteKind
	// Piece that it is about, by its number from 1; 0 where it is about the file.
	Piece int
	// Count of the places or things; Size of the largest of them, mm, where it has one.
	Count int
	Size  float64
	// At is the place, or the first of several, where there is one.
	At orb.Point
	// What is the name of it as the file has it, such as that of an entity.
	What string
}

// NoteKind is what a note says.
type NoteKind int

// The kinds of notes.
const (
	RepeatedPoint   NoteKind = iota // points on the one before were left out
	ClosedGap                       // ends that did not meet were joined
	TurnedRound                     // the outline ran clockwise
	SpikeRemoved                    // the outline ran back on itself
	TouchParted                     // the outline touched itself, and was parted by Size
	LineTwice                       // lines that were drawn twice were taken once
	OpenLine                        // lines that close to no outline were left out
	SmallOutline                    // outlines too small for a piece were left out
	Ignored                         // things of the kind What were left out
	UnitAssumed                     // the file's unit is What
	ChordsKept                      // curves are drawn by chords, Size at most
	Untold                          // the file says What, which is not understood
	Joined                          // sheets or pages were joined: Count of them, as What
	ScaleChecked                    // a test square of What measures Size, and is kept
	ScaleSet                        // a test square of What measured Size, and was brought to its size
	MirrorOpened                    // a half piece was opened to a whole one
	SewLineKept                     // the sew line keeps no even distance on Count edges
	NotchMoved                      // notches lay off the outline, by Size at most
	NotchLost                       // notches lay too far from the outline
	MaterialAsCloth                 // the material What is taken for the cloth's name
	RenamedTwin                     // another piece had the name What
	DashesJoined                    // strokes that are dashes of lines were joined to Count lines
	SharedTaken                     // Count stretches were taken from lines of other kinds
	KindsMixed                      // lines of Count kinds were taken all together
	PixelsAssumed                   // the size of the file is in pixels, 96 to the inch
	SquaresSeen                     // squares of the ground of a photo, What of them
	SheetsSeen                      // sheets of a known size in a photo, Count of them
	PhotoAccuracy                   // the outline is traced to within Size
	ShapeLeft                       // a shape of a photo was left out: What
	LeftOnes                        // Count are cut as drawn, others mirrored: a piece of its own
	RightOnes                       // Count are cut mirrored: a piece of its own, drawn so
	PairTaken                       // Count are cut, not its own mirror image: half of them are mirrored
)

// TooMuch is the refusal of a file that holds more than is read.
type TooMuch struct{ What Amount }

// Amount is what is counted of a file.
type Amount int

// The amounts.
const (
	Bytes Amount = iota
	Things
	Vertices
	Nesting
	Outlines
	Words
)

// amounts in words, for Error.
var amounts = [...]string{"bytes", "drawn things", "points", "levels of blocks in blocks", "outlines", "words"}

// Error says what there is too much of; a caller that knows the bound says more.
func (t *TooMuch) Error() string { return "there are too many " + amounts[t.What] }

// Limits of what is read, by Amount.
type Limits [Words + 1]int

// Check refuses more of something than is read.
func (l Limits) Check(what Amount, n int) error {
	if n > l[what] {
		return &TooMuch{What: what}
	}
	return nil
}

// Options are what a reader of files is told.
type Options struct {
	Limits Limits
	// Unit, mm, of a file that does not say its own; 0 where that was not said.
	Unit float64
	// Gap, mm, up to which ends are joined; 0 for the usual one.
	Gap float64
	// Open asks for half pieces to be opened at their mirror line, in place of being
	// laid on the fold.
	Open bool
	// Smooth asks for smooth lines through the curve points of outlines that are
	// drawn by chords.
	Smooth bool
	// View says which part of the drawing counts.
	View View
	// Reference is what is known in a photo.
	Reference Reference
}

// NeedUnit is the refusal of a file that does not say its unit.
type NeedUnit struct {
	// Across and Up are its size in its own numbers.
	Across, Up float64
}

// Error asks for the unit.
func (n *NeedUnit) Error() string { return "the file does not say its unit of length" }
