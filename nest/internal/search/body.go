package search

import (
	"math"

	"ellwand/nest/internal/model"
)

// Spot is where a piece lies.
type Spot = model.Spot

// body is a piece as the neighbours see it.
type body struct {
	x, y, hx, hy float64
	shape        int32
}

// near reports whether the box of the body reaches into a region of the given
// half extents about (x, y).
func (b *body) near(x, y, hx, hy float64) bool {
	return math.Abs(x-b.x) < hx+b.hx && math.Abs(y-b.y) < hy+b.hy
}
