package pieces

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/pieces/geometry"
)

// OpenedAt returns the points of an outline from the end of the stretch that
// lies along a fold round to its start; start and end are the ends of the fold
// line, in the sense of rotation of the outline, which may be closed or not.
func OpenedAt(outline []orb.Point, start, end orb.Point) []orb.Point {
	points := outline
	if n := len(points); n > 1 && points[0] == points[n-1] {
		points = points[:n-1]
	}
	n, at, least := len(points), 0, math.Inf(1)
	for i, p := range points {
		if off := math.Max(geometry.LineDistance(p, start, end),
			geometry.LineDistance(points[(i+1)%n], start, end)); off < least {
			at, least = i, off
		}
	}
	return append(points[at+1:n:n], points[:at+1]...)
}
