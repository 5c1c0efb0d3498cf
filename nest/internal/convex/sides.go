package convex

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/nest/portable"
)

// Side is a side of a convex outline as a half-plane: the outline lies where
// NX*x + NY*y <= C. (NX, NY) is the outward normal, of length 1.
type Side struct{ NX, NY, C float64 }

// Sides returns the half-planes of a counter-clockwise outline. C is taken
// from the end of the side that lies farther out, so that rounding never
// shrinks the outline.
func Sides(points []orb.Point) []Side {
	out := make([]Side, 0, len(points))
	for i, p := range points {
		q := points[(i+1)%len(points)]
		dx, dy := q[0]-p[0], q[1]-p[1]
		d := portable.Hypot(dx, dy)
		if d == 0 {
			continue
		}
		nx, ny := dy/d, -dx/d
		out = append(out, Side{nx, ny, math.Max(float64(nx*p[0])+float64(ny*p[1]), float64(nx*q[0])+float64(ny*q[1]))})
	}
	return out
}
