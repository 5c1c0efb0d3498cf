// Package camera leads from the pixels of a photo to the plane that was photographed:
// a perspective and the bow of the lens, fitted by least squares, with what is not sure
// about them.
//
// Places on the plane are millimetres, x to the right and y up; places of the photo
// are pixels, y down.
package camera

import (
	"math"

	"github.com/paulmach/orb"
)

// Count of the parameters of a camera [source.Geometry].
const Count = 13

// Camera is a perspective after the lens was straightened. Its parameters are the eight
// of the homography (its last entry is 1), then three of the lens along the radius and
// two across it: the correction that Brown (1971: Close-range camera calibration) adds
// to what was measured,
//
//	x' = x (1 + a r^2 + b r^4 + c r^6) + p (r^2 + 2 x^2) + 2 q x y
//	y' = y (1 + a r^2 + b r^4 + c r^6) + q (r^2 + 2 y^2) + 2 p x y
//
// about the middle of the photo, half of whose diagonal is 1.
type Camera struct {
	Middle orb.Point // of the photo, pixels
	Half   float64   // of its diagonal, pixels
	P      [Count]float64
}

// Of a photo so wide and high, in pixels: one that changes nothing but the unit.
func Of(width, height int) Camera {
	w, h := float64(width), float64(height)
	c := Camera{Middle: orb.Point{(w - 1) / 2, (h - 1) / 2}, Half: math.Hypot(w, h) / 2}
	c.P[0], c.P[4] = c.Half, -c.Half
	return c
}

// straight is a pixel as a lens without bow would show it, half a diagonal being 1.
func (c *Camera) straight(pixel orb.Point) orb.Point {
	x, y := (pixel[0]-c.Middle[0])/c.Half, (pixel[1]-c.Middle[1])/c.Half
	r := x*x + y*y
	radial := 1 + r*(c.P[8]+r*(c.P[9]+r*c.P[10]))
	p, q := c.P[11], c.P[12]
	return orb.Point{x*radial + p*(r+2*x*x) + 2*q*x*y, y*radial + q*(r+2*y*y) + 2*p*x*y}
}

// ToPlane is the place of a pixel on the plane, mm.
func (c *Camera) ToPlane(pixel orb.Point) orb.Point {
	s := c.straight(pixel)
	h := &c.P
	w := h[6]*s[0] + h[7]*s[1] + 1
	return orb.Point{(h[0]*s[0] + h[1]*s[1] + h[2]) / w, (h[3]*s[0] + h[4]*s[1] + h[5]) / w}
}

// Jacobian is how the place on the plane moves, mm a pixel, as the pixel moves along x
// and along y.
func (c *Camera) Jacobian(pixel orb.Point) (alongX, alongY orb.Point) {
	const step = 0.5 // [source.Geometry]
	at := func(dx, dy float64) orb.Point { return c.ToPlane(orb.Point{pixel[0] + dx, pixel[1] + dy}) }
	left, right, above, below := at(-step, 0), at(step, 0), at(0, -step), at(0, step)
	return orb.Point{right[0] - left[0], right[1] - left[1]}, orb.Point{below[0] - above[0], below[1] - above[1]}
}

// Scale is how many mm of the plane a pixel is wide, the mean of all directions.
func (c *Camera) Scale(pixel orb.Point) float64 {
	u, v := c.Jacobian(pixel)
	return math.Sqrt(math.Abs(u[0]*v[1] - u[1]*v[0]))
}

// ToPicture is the pixel that shows a place on the plane, searched from a guess by
// Newton's method. It reports false where none is found within the lens that was fitted.
func (c *Camera) ToPicture(plane, guess orb.Point) (orb.Point, bool) {
	at := guess
	for range 30 {
		now := c.ToPlane(at)
		u, v := c.Jacobian(at)
		dx, dy := plane[0]-now[0], plane[1]-now[1]
		det := u[0]*v[1] - u[1]*v[0]
		mx, my := (dx*v[1]-dy*v[0])/det, (u[0]*dy-u[1]*dx)/det
		size := math.Hypot(mx, my)
		if !(size < 1e9) {
			return at, false
		}
		if most := c.Half / 4; size > most {
			mx, my = mx*most/size, my*most/size
		}
		at = orb.Point{at[0] + mx, at[1] + my}
		if size < 1e-6 {
			return at, true
		}
	}
	return at, false
}

// StraightInverse is a pixel near the one that shows a place, from the perspective
// alone: a guess for ToPicture.
func (c *Camera) StraightInverse(plane orb.Point) orb.Point {
	h := &c.P
	// (h0 - X h6) x + (h1 - X h7) y = X - h2, and so for Y.
	a, b, e := h[0]-plane[0]*h[6], h[1]-plane[0]*h[7], plane[0]-h[2]
	d, f, g := h[3]-plane[1]*h[6], h[4]-plane[1]*h[7], plane[1]-h[5]
	det := a*f - b*d
	x, y := (e*f-b*g)/det, (a*g-e*d)/det
	if !(math.Hypot(x, y) < 2) {
		x, y = 0, 0
	}
	return orb.Point{c.Middle[0] + x*c.Half, c.Middle[1] + y*c.Half}
}
