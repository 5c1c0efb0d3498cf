// Package sketch is a tool of the tests of what reads drawings: what the script
// pieces/svgin/testdata/drawn.py draws with the libraries of others, and how far what was
// read lies from what was drawn.
package sketch

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/pieces"
	"ellwand/pieces/geometry"
)

// Line that the script draws: its points, and how far a reading may lie from it, mm.
type Line struct {
	Name   string
	Points []orb.Point
	Within float64
}

// Lines of the script, in the order in which they are drawn; the last is open.
func Lines() []Line {
	const exact = 0.01 // half of what the programs that drew them round to
	line := func(x0, y0, x1, y1 float64) pieces.Curve {
		return pieces.Line{From: orb.Point{x0, y0}, To: orb.Point{x1, y1}}
	}
	sleeve := pieces.Path{line(60, 20, 260, 20), line(260, 20, 310, 320),
		pieces.Bezier{P0: orb.Point{310, 320}, P1: orb.Point{250, 320}, P2: orb.Point{230, 440}, P3: orb.Point{160, 440}},
		pieces.Bezier{P0: orb.Point{160, 440}, P1: orb.Point{90, 440}, P2: orb.Point{70, 320}, P3: orb.Point{10, 320}},
		line(10, 320, 60, 20)}
	pocket := pieces.Rectangle("pocket", 120, 140).Map(pieces.Turn(30).Then(pieces.Move(450, 100))).Boundary(0.01)
	patch := pieces.Path{pieces.Arc{Centre: orb.Point{450, 380}, Radius: 60, Sweep: 2 * math.Pi}}
	return []Line{
		{"sleeve", sleeve.Flatten(0.0005), exact},
		{"pocket", pocket, exact},
		// Their circle is four Bezier curves, which bulge by 0.016 mm.
		{Circle, patch.Flatten(0.0005), 0.018},
		{"grain", []orb.Point{{160, 60}, {160, 260}}, exact},
	}
}

// Circle is the name of the line that is a circle.
const Circle = "patch"

// Apart is how far a point of either of two lines lies from the other at most, mm.
func Apart(a, b []orb.Point) float64 { return max(farthest(a, b), farthest(b, a)) }

func farthest(of, from []orb.Point) float64 {
	most := 0.0
	for _, p := range of {
		least := math.Inf(1)
		for i := 1; i < len(from); i++ {
			least = min(least, geometry.SegmentDistance(p, from[i-1], from[i]))
		}
		most = max(most, least)
	}
	return most
}
