package camera

import (
	"errors"

	"github.com/paulmach/orb"
	"gonum.org/v1/gonum/mat"
)

// ErrUnsolvable is said of places that fix no camera: too few, or all on a line.
var ErrUnsolvable = errors.New("the places do not fix a camera")

// Perspective replaces the homography by the one that leads best from pixels to places
// of the plane: the direct linear transformation, with the places of the plane brought
// near 1 first (Hartley 1997: In defense of the eight-point algorithm). It needs four
// or more, no three of them on a line. The lens stays.
func (c Camera) Perspective(pixels, plane []orb.Point) (Camera, error) {
	if len(pixels) < 4 || len(pixels) != len(plane) {
		return c, ErrUnsolvable
	}
	box := orb.MultiPoint(plane).Bound()
	middle, size := box.Center(), max(box.Max[0]-box.Min[0], box.Max[1]-box.Min[1])/2
	if !(size > 0) {
		return c, ErrUnsolvable
	}
	rows, right := mat.NewDense(2*len(pixels), 8, nil), mat.NewVecDense(2*len(pixels), nil)
	for i, p := range pixels {
		s := c.straight(p)
		x, y := (plane[i][0]-middle[0])/size, (plane[i][1]-middle[1])/size
		rows.SetRow(2*i, []float64{s[0], s[1], 1, 0, 0, 0, -x * s[0], -x * s[1]})
		rows.SetRow(2*i+1, []float64{0, 0, 0, s[0], s[1], 1, -y * s[0], -y * s[1]})
		right.SetVec(2*i, x)
		right.SetVec(2*i+1, y)
	}
	var h mat.VecDense
	if err := h.SolveVec(rows, right); err != nil {
		return c, ErrUnsolvable
	}
	g, k := h.AtVec(6), h.AtVec(7)
	for axis := range 2 {
		r := 3 * axis
		c.P[r] = h.AtVec(r)*size + middle[axis]*g
		c.P[r+1] = h.AtVec(r+1)*size + middle[axis]*k
		c.P[r+2] = h.AtVec(r+2)*size + middle[axis]
	}
	c.P[6], c.P[7] = g, k
	return c, nil
}

// Axes of the plane as the photo sees them: the first two columns of the homography
// from the plane to the photo, half of whose diagonal is 1.
func (c *Camera) Axes() (x, y [3]float64) {
	h := mat.NewDense(3, 3, []float64{
		c.P[0], c.P[1], c.P[2], c.P[3], c.P[4], c.P[5], c.P[6], c.P[7], 1,
	})
	var inverse mat.Dense
	if err := inverse.Inverse(h); err != nil {
		return x, y
	}
	for i := range 3 {
		x[i], y[i] = inverse.At(i, 0), inverse.At(i, 1)
	}
	return x, y
}
