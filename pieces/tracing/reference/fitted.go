package reference

import (
	"github.com/paulmach/orb"

	"ellwand/pieces/tracing/camera"
)

// How likely a lens is to bow so much, one standard deviation of each of its
// parameters: a weak hold for those that a photo says nothing of [source.OwnChoice].
var lensPrior = [5]float64{0.15, 0.08, 0.04, 0.01, 0.01}

// steps by which the parameters of a camera are moved to see what they do: a little of
// what they usually are, in mm for the six of the homography that lead to mm [source.OwnChoice].
var steps = [camera.Count]float64{1e-2, 1e-2, 1e-2, 1e-2, 1e-2, 1e-2, 1e-6, 1e-6, 1e-6, 1e-6, 1e-6, 1e-6, 1e-6}

// mostFitted crossings are enough for a fit: more do not make it surer than the lens
// is smooth [source.OwnChoice].
const mostFitted = 800

// fitted fits the camera to places of the plane and the pixels that show them.
func fitted(c *camera.Camera, pixels, plane []orb.Point) (camera.Fit, error) {
	if n := len(pixels); n > mostFitted {
		var some, there []orb.Point
		for i := range mostFitted {
			some, there = append(some, pixels[i*n/mostFitted]), append(there, plane[i*n/mostFitted])
		}
		pixels, plane = some, there
	}
	scales := make([]float64, len(pixels))
	for i, p := range pixels {
		scales[i] = c.Scale(p)
	}
	prior := make([]float64, camera.Count)
	copy(prior[8:], lensPrior[:])
	problem := camera.Problem{
		Count: 2 * len(pixels), Steps: steps[:], Prior: prior,
		Residuals: func(parameters, into []float64) {
			now := *c
			copy(now.P[:], parameters)
			for i, p := range pixels {
				q := now.ToPlane(p)
				into[2*i], into[2*i+1] = (q[0]-plane[i][0])/scales[i], (q[1]-plane[i][1])/scales[i]
			}
		},
	}
	fit, err := problem.Solve(c.P[:])
	if err != nil {
		return fit, err
	}
	copy(c.P[:], fit.Parameters)
	return fit, nil
}
