package nofit

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/nest/internal/convex"
)

// region is one convex part sum with its half-planes and box.
type region struct {
	points         []orb.Point
	planes         []plane
	x0, y0, x1, y1 float64
}

func newRegion(points []orb.Point) region {
	r := region{points: points, x0: math.Inf(1), y0: math.Inf(1), x1: math.Inf(-1), y1: math.Inf(-1)}
	for _, p := range points {
		r.x0, r.x1 = min(r.x0, p[0]), max(r.x1, p[0])
		r.y0, r.y1 = min(r.y0, p[1]), max(r.y1, p[1])
	}
	for _, side := range convex.Sides(points) {
		r.planes = append(r.planes, plane{nx: side.NX, ny: side.NY, c: side.C})
	}
	return r
}

// localSum is a sum as seen from one cell: the half-planes that cross it.
type localSum struct {
	region *region
	planes []plane
}
