package found

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/pieces"
	"ellwand/pieces/geometry"
)

// nearest is the distance along a path of its point nearest to another, and how far
// away that is, mm.
func nearest(path pieces.Path, to orb.Point) (at, away float64) {
	away = math.Inf(1)
	before := 0.0
	for _, c := range path {
		length := c.Length()
		points := c.Flatten(Flattening)
		chords := 0.0
		for i := 1; i < len(points); i++ {
			chords += geometry.Distance(points[i-1], points[i])
		}
		along := 0.0
		for i := 1; i < len(points) && chords > 0; i++ {
			a, b := points[i-1], points[i]
			step := geometry.Distance(a, b)
			if d := geometry.SegmentDistance(to, a, b); d < away {
				away = d
				part := geometry.Dot(geometry.Sub(to, a), geometry.Unit(geometry.Sub(b, a)))
				at = before + (along+math.Min(step, math.Max(0, part)))*length/chords
			}
			along += step
		}
		before += length
	}
	return at, away
}

// distanceTo a line from a point.
func distanceTo(line []orb.Point, p orb.Point) float64 {
	best := math.Inf(1)
	for i := 1; i < len(line); i++ {
		a, b := line[i-1], line[i]
		if beyond(p[0], a[0], b[0], best) || beyond(p[1], a[1], b[1], best) {
			continue // it is no nearer, without its distance being reckoned
		}
		best = math.Min(best, geometry.SegmentDistance(p, a, b))
	}
	return best
}

// beyond says that a place lies off a stretch by more than a distance.
func beyond(at, a, b, away float64) bool {
	return at < a-away && at < b-away || at > a+away && at > b+away
}
