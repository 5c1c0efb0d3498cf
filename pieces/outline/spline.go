package outline

import (
	"github.com/paulmach/orb"
	"gonum.org/v1/gonum/interp"

	"ellwand/pieces"
	"ellwand/pieces/geometry"
)

// spline is a cubic spline of one coordinate.
type spline interface {
	interp.FittablePredictor
	interp.DerivativePredictor
}

// Through is the smooth line through points, no two alike in a row: the cubic spline
// over the lengths of the chords, one Bezier curve a chord. Its ends bend on as the
// line beside them does ("not a knot"), or, of three points, are straight (de Boor, A
// Practical Guide to Splines, 1978, chapter IV). Two points give a straight line.
func Through(points []orb.Point) pieces.Path {
	if len(points) == 2 {
		return pieces.Path{pieces.Line{From: points[0], To: points[1]}}
	}
	at := make([]float64, len(points))
	for i := 1; i < len(points); i++ {
		at[i] = at[i-1] + geometry.Distance(points[i-1], points[i])
	}
	var speeds [2][]float64
	for k := range speeds {
		values := make([]float64, len(points))
		for i, p := range points {
			values[i] = p[k]
		}
		speeds[k] = speedsOf(at, values)
	}
	var out pieces.Path
	for i := 1; i < len(points); i++ {
		third := (at[i] - at[i-1]) / 3
		a, b := points[i-1], points[i]
		out = append(out, pieces.Bezier{
			P0: a, P1: geometry.Add(a, geometry.Times(orb.Point{speeds[0][i-1], speeds[1][i-1]}, third)),
			P2: geometry.Sub(b, geometry.Times(orb.Point{speeds[0][i], speeds[1][i]}, third)), P3: b,
		})
	}
	return out
}

// speedsOf a spline at its knots.
func speedsOf(at, values []float64) []float64 {
	var s spline = &interp.NotAKnotCubic{}
	if len(at) < 4 {
		s = &interp.NaturalCubic{}
	}
	out := make([]float64, len(at))
	if err := s.Fit(at, values); err != nil { // knots that cannot be told apart: the chords themselves
		for i := 1; i < len(at); i++ {
			out[i] = (values[i] - values[i-1]) / max(at[i]-at[i-1], joined)
		}
		out[0] = out[1]
		return out
	}
	for i, t := range at {
		out[i] = s.PredictDerivative(t)
	}
	return out
}

// joined, mm, is how near two points are one [source.OwnChoice].
const joined = 0.001
