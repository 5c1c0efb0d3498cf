package tracing

import (
	"math"

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
	// lines says of a pixel whether it lies on a line of a squared ground; nil where there
	// is none.
	lines func(orb.Point) bool
	// spread is how far nearly all points of the rim lie off the curves, pixels.
	spread float64
	// last is what the outline was drawn from.
	last drawn
}

func isLine(p pieces.Path) bool {
	_, ok := p[0].(pieces.Line)
	return ok
}

// drawn is what an outline was drawn from: places of its rim, how far each is trusted, and
// which of them are corners; how many mm a pixel is wide.
type drawn struct {
	points  []orb.Point
	trust   []float64
	corners []int
	scale   float64
}

// besideCorner is how many places beside a corner show whether a line of the ground meets
// it [source.OwnChoice].
const besideCorner = 15

// hidden is the share of the places beside a corner, before it or after it, that a line of
// the ground draws off.
func (d drawn) hidden(corner int) float64 {
	if corner >= len(d.corners) {
		return 0
	}
	var doubted [2]float64
	n := len(d.trust)
	for i := 1; i <= besideCorner; i++ {
		for side, way := range [2]int{-i, i} {
			if d.trust[((d.corners[corner]+way)%n+n)%n] < 1 {
				doubted[side]++
			}
		}
	}
	return math.Max(doubted[0], doubted[1]) / besideCorner
}
