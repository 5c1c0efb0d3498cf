package illustration

import (
	"math"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/pieces"
	"ellwand/pieces/geometry"
)

// flatness is how far chords may lie off a curve, mm [source.OwnChoice].
const flatness = 0.05

// through is a curve through the points: a chain of Bezier curves whose tangents
// are parallel to the chord between the neighbours (Catmull and Rom, A class of
// local interpolating splines, 1974). Two points give a straight line.
func through(points []orb.Point) pieces.Path {
	if len(points) == 2 {
		return pieces.Path{pieces.Line{From: points[0], To: points[1]}}
	}
	var path pieces.Path
	for i := range len(points) - 1 {
		before, after := points[max(i-1, 0)], points[min(i+2, len(points)-1)]
		from, to := points[i], points[i+1]
		path = append(path, pieces.Bezier{
			P0: from, P1: handle(from, before, to), P2: handle(to, after, from), P3: to,
		})
	}
	return path
}

// handle is a control point beside at, on the way to the next point. It is a
// third of the way along, so that uneven steps make no loops.
func handle(at, before, next orb.Point) orb.Point {
	chord := geometry.Sub(next, before)
	length := math.Hypot(chord[0], chord[1])
	if length == 0 {
		return at
	}
	reach := geometry.Distance(at, next) / 3
	return orb.Point{at[0] + chord[0]/length*reach, at[1] + chord[1]/length*reach}
}

// symmetrical is the rim of which the parts run down the right side: then they run
// back up the left.
func symmetrical(right ...[]orb.Point) [][]orb.Point {
	out := slices.Clone(right)
	for _, part := range slices.Backward(right) {
		left := mirrored(part...)
		slices.Reverse(left)
		out = append(out, left)
	}
	return out
}

// oval is the lower or the upper half of an ellipse that is level.
func oval(centre orb.Point, across, deep float64, lower bool) []orb.Point {
	sign := 1.0
	if !lower {
		sign = -1
	}
	var out []orb.Point
	for i := 0; i <= 12; i++ {
		sin, cos := math.Sincos(math.Pi * float64(i) / 12)
		out = append(out, orb.Point{centre[0] - across*cos, centre[1] + sign*deep*sin})
	}
	return out
}

func mirrored(points ...orb.Point) []orb.Point {
	out := make([]orb.Point, len(points))
	for i, p := range points {
		out[i] = orb.Point{-p[0], p[1]}
	}
	return out
}
