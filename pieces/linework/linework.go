// Package linework is what a drawing in a file has: its lines as they are drawn, with
// the pen that draws them, and its words. The readers of drawings make it; what is a
// piece among it is found later.
//
// Lengths are millimetres; x runs to the right and y up.
package linework

import (
	"github.com/paulmach/orb"

	"ellwand/pieces"
)

// Drawing is what was found in a file.
type Drawing struct {
	// Title of the file; may be empty.
	Title string
	// About is more that the file says of itself, by keys of our own.
	About  map[string]string
	Lines  []Line
	Words  []Words
	Groups []Group
	Pages  []Page
	// Pictures is how many pictures of dots there are, which hold no lines.
	Pictures int
	// Unsized says that the file does not say how large it is drawn.
	Unsized bool
	// InPixels says that its size is in pixels, which are 96 to the inch by the standard,
	// and which programs write for want of a size as often as they mean it.
	InPixels bool
}

// Page is one sheet of the drawing: the box of its paper, in its own frame. A drawing
// that has no sheets is one page.
type Page struct{ Box orb.Bound }

// Line is one line as it is drawn, from one end to the other or closed.
type Line struct {
	// Path in one stretch, each curve beginning where the one before ends.
	Path pieces.Path
	// Closed says that the path ends where it begins.
	Closed bool
	// Name that the file gives the line, or empty.
	Name string
	// Group is the innermost one that the line is in, as index of Groups; -1 for none.
	Group int
	// Layer names the layer, or is empty.
	Layer string
	// Hidden says that its layer is not shown unless it is asked for.
	Hidden bool
	// Page is the index of its sheet.
	Page int
	Pen  Pen
	// About is more that the file says of the line, by keys of our own.
	About map[string]string
}

// Pen is how a line is drawn.
type Pen struct {
	// Colour as #rrggbb, or as the file writes it; empty where no line is drawn and
	// the inside alone is filled.
	Colour string
	// Fill is the colour of the inside, or empty.
	Fill string
	// Width in mm; 0 is the finest.
	Width float64
	// Dashes are the lengths of strokes and gaps in turn, mm; none is a solid line.
	Dashes []float64
}

// Words are a line of text.
type Words struct {
	Text string
	// At is where the words begin.
	At    orb.Point
	Size  float64 // height of the letters, mm
	Group int     // as of a Line
	Layer string
	Page  int
}

// Group is what the file holds together.
type Group struct {
	Name   string
	Parent int // as index of Groups; -1 for none
	// About is more that the file says of it, by keys of our own.
	About map[string]string
}

// Ends of the line.
func (l Line) Ends() (from, to orb.Point) { return l.Path.Start(), l.Path.End() }
