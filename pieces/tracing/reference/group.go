package reference

import (
	"github.com/paulmach/orb"

	"ellwand/pieces/tracing/camera"
)

// Known is the size of the sheets, mm.
type Known struct{ Width, Height float64 }

// candidate is a quadrangle and the number of its rim.
type candidate struct {
	rim int
	quadrangle
}

// sheet is one that was recognised, turned so that its first side is the short one of
// the known size, with where it lies: its first corner and the direction of that side.
type sheet struct {
	candidate
	at    orb.Point
	angle float64
}

// group of sheets with the camera that fits them.
type group struct {
	known  Known
	camera camera.Camera
	sheets []sheet
	fit    camera.Fit
	// square is how well pixels are square by this camera (0 is best).
	square float64
}

// corners of a sheet that lies at 0, counter-clockwise.
func (k Known) corners() []orb.Point {
	return []orb.Point{{0, 0}, {k.Width, 0}, {k.Width, k.Height}, {0, k.Height}}
}
