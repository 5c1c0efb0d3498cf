package tracing

import (
	"math"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/pieces"
	"ellwand/pieces/geometry"
	"ellwand/pieces/tracing/camera"
	"ellwand/pieces/tracing/reference"
)

// What the error is made of: on pictures of 96 pieces whose outlines are known, the
// farthest place of most lay so far off [source.Measured].
const (
	ofCamera = 1.4  // standard deviations of what the camera may be off
	ofSpread = 2.6  // times how far nearly all points of the rim lie off the curves, at least
	ofSigma  = 3.0  // times how far crossings of lines lie off
	ofPlain  = 0.4  // pixels on a plain ground,
	ofLined  = 0.45 // on one with lines, of straight edges,
	ofCurved = 0.6  // and of curves there;
	ofHidden = 0.6  // and so many more where a line meets a curve's corner
)

// accuracy is how far the true outline may lie from one that was traced: what the rim
// may be off, and what the camera may be off there, once the piece is moved and turned
// as a whole, which changes no piece. It grows away from the reference.
func (t *tracer) accuracy(o Outline) float64 {
	places := thinned(o.Seen, 60)
	ofCameraThere := t.unsure(places)
	most, pixels := 0.0, math.Max(t.rimOff(o.Edges), ofSpread*t.spread)
	for i, p := range places {
		most = math.Max(most, math.Hypot(pixels*t.camera.Scale(p), ofCamera*ofCameraThere[i]))
	}
	return most
}

// rimOff is how far the rim of an outline may be off, pixels.
func (t *tracer) rimOff(edges []pieces.Path) float64 {
	if t.lines == nil {
		return ofPlain
	}
	return math.Max(t.linedOff(edges), ofSigma*t.reference.Sigma)
}

// linedOff is how far the rim may be off by the lines of a ground.
func (t *tracer) linedOff(edges []pieces.Path) float64 {
	switch {
	case !slices.ContainsFunc(edges, func(e pieces.Path) bool { return !isLine(e) }):
		return ofLined
	}
	most := 0.0
	for k, e := range edges {
		before := edges[(k+len(edges)-1)%len(edges)]
		if len(edges) > 1 && !(isLine(before) && isLine(e)) {
			most = math.Max(most, t.last.hidden(k))
		}
	}
	return ofCurved + ofHidden*most
}

func thinned(line []orb.Point, most int) []orb.Point {
	if len(line) <= most {
		return line
	}
	out := make([]orb.Point, most)
	for i := range out {
		out[i] = line[i*len(line)/most]
	}
	return out
}

// unsure is the standard deviation of every place of a piece by what is not sure of the
// camera, mm: the covariance of the camera carried over to the places by how they move
// with each parameter, without the motions of the piece as a whole.
func (t *tracer) unsure(places []orb.Point) []float64 {
	moves := make([][]orb.Point, camera.Count) // of each place with each parameter
	base := make([]orb.Point, len(places))
	for i, p := range places {
		base[i] = t.camera.ToPlane(p)
	}
	for k := range moves {
		moved := t.camera
		step := math.Max(1e-7, 1e-7*math.Abs(moved.P[k]))
		moved.P[k] += step
		moves[k] = make([]orb.Point, len(places))
		for i, p := range places {
			moves[k][i] = geometry.Times(geometry.Sub(moved.ToPlane(p), base[i]), 1/step)
		}
		withoutMotion(base, moves[k])
	}
	centre := orb.MultiPoint(base).Bound().Center()
	out := make([]float64, len(places))
	for i := range places {
		variance := 0.0
		for k := range moves {
			for l := range moves {
				variance += t.reference.Covariance.At(k, l) * geometry.Dot(moves[k][i], moves[l][i])
			}
		}
		out[i] = math.Sqrt(math.Max(variance, 0))
		if t.reference.Kind == reference.Distances {
			out[i] += t.reference.Relative * geometry.Distance(base[i], centre)
		}
	}
	return out
}

// withoutMotion takes from how places move the part that is a motion and a turn of all.
func withoutMotion(places, moves []orb.Point) {
	var centre, mean orb.Point
	n := float64(len(places))
	for i := range places {
		centre = geometry.Add(centre, geometry.Times(places[i], 1/n))
		mean = geometry.Add(mean, geometry.Times(moves[i], 1/n))
	}
	turn, size := 0.0, 0.0
	for i, p := range places {
		arm := geometry.Sub(p, centre)
		turn += geometry.Cross(arm, moves[i])
		size += geometry.Dot(arm, arm)
	}
	for i, p := range places {
		arm := geometry.Sub(p, centre)
		moves[i] = geometry.Sub(geometry.Sub(moves[i], mean), geometry.Times(geometry.Left(arm), turn/math.Max(size, 1e-12)))
	}
}
