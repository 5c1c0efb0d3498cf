package construct

import (
	"github.com/paulmach/orb"

	"ellwand/pieces"
)

// Through is the smooth curve through points, at least two and no two alike
// in a row, that leaves the first and arrives at the last in a direction: what
// a flexible curve laid on the points gives. It is the clamped cubic spline
// over the chord lengths, so that the bend changes without a jump (de Boor, A
// Practical Guide to Splines, 1978, chapter IV).
func Through(leaving orb.Point, points []orb.Point, arriving orb.Point) pieces.Path {
	last := len(points) - 1
	chord := make([]float64, last)
	for i := range chord {
		chord[i] = Distance(points[i], points[i+1])
	}
	speeds := splineSpeeds(leaving, points, arriving, chord)
	path := make(pieces.Path, last)
	for i := range path {
		third := chord[i] / 3
		path[i] = pieces.Bezier{
			P0: points[i], P1: Go(points[i], speeds[i], third),
			P2: Go(points[i+1], speeds[i+1], -third), P3: points[i+1],
		}
	}
	return path
}

// splineSpeeds solves for the derivative at each point, by the elimination
// for equations with three terms each.
func splineSpeeds(leaving orb.Point, points []orb.Point, arriving orb.Point, chord []float64) []orb.Point {
	last := len(points) - 1
	speeds := make([]orb.Point, last+1)
	speeds[0], speeds[last] = leaving, arriving
	upper := make([]float64, last+1)
	for i := 1; i < last; i++ {
		before, after := 1/chord[i-1], 1/chord[i]
		pivot := 2*(before+after) - float64(before*upper[i-1])
		upper[i] = after / pivot
		for k := range 2 {
			into, out := points[i][k]-points[i-1][k], points[i+1][k]-points[i][k]
			slope := float64(3 * (float64(into*before*before) + float64(out*after*after)))
			speeds[i][k] = (slope - float64(before*speeds[i-1][k])) / pivot
		}
	}
	for i := last - 1; i > 0; i-- {
		for k := range 2 {
			speeds[i][k] -= float64(upper[i] * speeds[i+1][k])
		}
	}
	return speeds
}
