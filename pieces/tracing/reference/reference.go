// Package reference finds what is known in a photo, squares of the ground, sheets of a
// known size or distances, and fits the camera to it.
//
// Lengths are millimetres on the plane, pixels in the photo.
package reference

import (
	"errors"

	"github.com/paulmach/orb"
	"gonum.org/v1/gonum/mat"

	"ellwand/pieces/tracing/camera"
)

// Kind of a reference.
type Kind int

// The kinds.
const (
	Squares   Kind = iota // a squared ground or a cutting mat
	Sheets                // several sheets of a known size
	OneSheet              // one such sheet
	Distances             // two distances, on a scan or a photo taken square on
)

// The ways in which no camera is found.
var (
	ErrNoSquares   = errors.New("no squared ground was found")
	ErrNoSheet     = errors.New("no sheet of that size was found")
	ErrSheetBulged = errors.New("the sheets do not fit one camera")
	ErrNotSquareOn = errors.New("the distances do not agree")
	ErrDistances   = errors.New("a distance has no length")
)

// Found is a reference and the camera that fits it.
type Found struct {
	Kind   Kind
	Camera camera.Camera
	// Sigma is how far off a place of the reference lies, one standard deviation, pixels.
	Sigma float64
	// Covariance of the parameters of the camera.
	Covariance *mat.SymDense
	// Count of squares seen along the two directions, or of sheets and 0.
	Count [2]int
	// Box about the squares that were seen, on the plane.
	Box orb.Bound
	// Marks are places of the photo that the camera rests on.
	Marks []orb.Point
	// Sheets are the numbers of the quadrangles that are sheets.
	Sheets []int
	// Relative is by what share a length may be wrong, where the reference is two
	// distances.
	Relative float64
}
