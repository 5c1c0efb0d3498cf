package construct

import (
	"github.com/paulmach/orb"

	"ellwand/pieces"
)

// rimSteps is in how many places each curve is measured when a line is drawn
// beside it [source.OwnChoice].
const rimSteps = 6

// RimAt is the smooth line at a distance to the right of a chain of paths, as
// a facing's or a collar's edge is drawn: marked square to the edge in several
// places and joined by a curve. It leaves and arrives as the chain does.
func RimAt(distance float64, chain ...pieces.Path) pieces.Path {
	points := RimPoints(distance, chain)
	return ThroughRim(points, chain)
}

// RimPoints are the marks at a distance to the right of a chain.
func RimPoints(distance float64, chain []pieces.Path) []orb.Point {
	last := chain[len(chain)-1]
	points := []orb.Point{Beside(chain[0], 0, distance)}
	for _, path := range chain {
		for i := range rimSteps {
			points = append(points, Beside(path, (float64(i)+0.5)/rimSteps*path.Length(), distance))
		}
	}
	return append(points, Beside(last, last.Length(), distance))
}

// ThroughRim is the curve through marks beside a chain.
func ThroughRim(points []orb.Point, chain []pieces.Path) pieces.Path {
	last := chain[len(chain)-1]
	return Through(chain[0].Tangent(0), points, last.Tangent(last.Length()))
}

// Beside is the point at a distance to the right of a path.
func Beside(path pieces.Path, at, distance float64) orb.Point {
	return Go(path.At(at), Square(path.Tangent(at)), -distance)
}
