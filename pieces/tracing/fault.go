package tracing

import "github.com/paulmach/orb"

// Trouble is a reason not to trace a photo, or a shape on it.
type Trouble int

// The troubles.
const (
	Unreadable   Trouble = iota // it is no JPEG or PNG, or broken
	TooLarge                    // it has too many pixels
	TooSmall                    // it has too few
	Flat                        // nothing stands out from its ground
	NoSquares                   // no squared ground
	NoSheet                     // no sheet of the size
	SheetBulged                 // the sheets do not fit one camera
	NotSquareOn                 // the two distances do not agree
	BadDistances                // a distance without length
	NoPiece                     // nothing but the ground, and the reference
	OverRim                     // a shape goes over the rim of the photo
	Touching                    // two pieces touch
	Blurred                     // the rim of a piece is too blurred
	Unclear                     // the rim of a piece is not seen clearly
	Small                       // a shape is smaller than a piece
)

// Fault is a trouble and where it is.
type Fault struct {
	Trouble Trouble
	// At is the middle of the shape as a share of the width and height of the photo,
	// from its upper left corner; (-1, -1) where it is no shape.
	At orb.Point
	// Width and Height of the photo, pixels, where it is too large.
	Width, Height int
}

var nowhere = orb.Point{-1, -1} // [source.Geometry]

func plain(trouble Trouble) *Fault { return &Fault{Trouble: trouble, At: nowhere} }
