package linework

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/pieces"
)

// farthest from the corner of the drawing, mm: 1 km [source.OwnChoice].
const farthest = 1e6

// reachable refuses what lies nowhere, or farther away than any drawing reaches.
func reachable(curve pieces.Curve) error {
	points := []orb.Point{curve.Start(), curve.End()}
	switch c := curve.(type) {
	case pieces.Bezier:
		points = append(points, c.P1, c.P2)
	case pieces.Arc:
		if sum := c.Radius + c.Sweep + c.Begin; math.IsNaN(sum) || math.IsInf(sum, 0) {
			points = append(points, orb.Point{sum, sum})
		}
	}
	for _, p := range points {
		for _, x := range p {
			if !(math.Abs(x) <= farthest) { // also what is no number
				return &Fault{Of: TooFar}
			}
		}
	}
	return nil
}
