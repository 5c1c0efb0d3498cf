package tracing

import (
	"github.com/paulmach/orb"

	"ellwand/pieces"
	"ellwand/pieces/tracing/camera"
	"ellwand/pieces/tracing/reference"
)

// Outline is a piece of paper that was traced.
type Outline struct {
	// Edges from corner to corner, counter-clockwise, mm; one that closes smoothly
	// where there is no corner.
	Edges []pieces.Path
	// Accuracy is how far the true outline may lie from this one, mm.
	Accuracy float64
	// Seen is the outline as the photo shows it, pixels.
	Seen []orb.Point
	// Corners as the photo shows them, pixels.
	Corners []orb.Point
}

// tracer traces the pieces of a photo.
type tracer struct {
	*scene
	camera    camera.Camera
	reference *reference.Found
	// spread is how far nearly all points of the rim lie off the curves, pixels.
	spread float64
}

func isLine(p pieces.Path) bool {
	_, ok := p[0].(pieces.Line)
	return ok
}
