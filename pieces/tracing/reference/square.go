package reference

import (
	"math"

	"ellwand/pieces/tracing/camera"
)

// mostUnsquare tells squares and sheets from other oblongs, and from lattices that slant
// [source.OwnChoice].
const mostUnsquare = 0.2

// unsquare is how far pixels are from square if the camera looks through the middle of
// the photo: the axes of the plane must be square to each other and of one length
// through a lens of any one focal length (Zhang 2000, equations 3 and 4).
func unsquare(c camera.Camera) float64 {
	a, b := c.Axes()
	best := math.Inf(1)
	for k := range 60 {
		focal := 0.4 * math.Pow(1.1, float64(k)) // of half a diagonal
		u, v := [3]float64{a[0], a[1], a[2] * focal}, [3]float64{b[0], b[1], b[2] * focal}
		dot := u[0]*v[0] + u[1]*v[1] + u[2]*v[2]
		uu, vv := u[0]*u[0]+u[1]*u[1]+u[2]*u[2], v[0]*v[0]+v[1]*v[1]+v[2]*v[2]
		best = math.Min(best, math.Abs(dot)/math.Sqrt(uu*vv)+math.Abs(math.Log(uu/vv)))
	}
	return best
}
