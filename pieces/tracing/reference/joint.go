package reference

import (
	"math"
	"slices"

	"gonum.org/v1/gonum/mat"

	"ellwand/pieces/tracing/camera"
)

// This file fits the camera and the places of all sheets at once. The parameters are
// those of the camera; of every sheet but the first, which lies at 0, its place and its
// angle; and of every side how far it lies off as a whole.

const (
	ofPlace = 3 // parameters of where a sheet lies [source.Geometry]
	ofSides = 4 // of its sides [source.Geometry]
)

// sideOff is how far a whole side is likely to lie off, by its shadow and by JPEG, pixels
// [source.OwnChoice].
const sideOff = 0.06

// oneSheetPrior is how likely a lens is to bow so much where one sheet is all that is
// known: a lens of a phone, which its software has straightened mostly
// [source.OwnChoice].
var oneSheetPrior = [5]float64{0.04, 0.01, 0.002, 0.0005, 0.0005}

// solve fits all; it reports false where that cannot be done.
func (g *group) solve() bool {
	start, steps, prior := g.parameters()
	perSheet := 4 * pointsOf
	scales := make([]float64, 0, perSheet*len(g.sheets))
	for _, s := range g.sheets {
		for _, side := range s.sides {
			for _, p := range side {
				scales = append(scales, g.camera.Scale(p))
			}
		}
	}
	problem := camera.Problem{
		Count: len(scales), Steps: steps, Prior: prior,
		Residuals: func(parameters, into []float64) { g.residuals(parameters, scales, into) },
	}
	fit, err := problem.Solve(start)
	if err != nil {
		return false
	}
	g.fit = fit
	copy(g.camera.P[:], fit.Parameters)
	g.sheets = slices.Clone(g.sheets)
	for k := range g.sheets[1:] {
		at := fit.Parameters[camera.Count+ofPlace*k:]
		g.sheets[k+1].at[0], g.sheets[k+1].at[1], g.sheets[k+1].angle = at[0], at[1], at[2]
	}
	return true
}

func (g *group) parameters() (start, move, prior []float64) {
	n := camera.Count + ofPlace*(len(g.sheets)-1) + ofSides*len(g.sheets)
	start, move, prior = make([]float64, n), make([]float64, n), make([]float64, n)
	copy(start, g.camera.P[:])
	copy(move, steps[:])
	copy(prior[8:], lensPrior[:])
	if len(g.sheets) == 1 {
		copy(prior[8:], oneSheetPrior[:])
	}
	at := camera.Count
	for _, s := range g.sheets[1:] {
		start[at], start[at+1], start[at+2] = s.at[0], s.at[1], s.angle
		move[at], move[at+1], move[at+2] = 1e-3, 1e-3, 1e-6
		at += ofPlace
	}
	for ; at < n; at++ {
		move[at], prior[at] = 1e-3, sideOff
	}
	return start, move, prior
}

// residuals are how far the points of the sides lie off them, in pixels.
func (g *group) residuals(parameters, scales, into []float64) {
	c := g.camera
	copy(c.P[:], parameters)
	sides := parameters[camera.Count+ofPlace*(len(g.sheets)-1):]
	i := 0
	for k, s := range g.sheets {
		x, y, sin, cos := 0.0, 0.0, 0.0, 1.0
		if k > 0 {
			at := parameters[camera.Count+ofPlace*(k-1):]
			x, y = at[0], at[1]
			sin, cos = math.Sincos(at[2])
		}
		for side := range 4 {
			for _, p := range s.sides[side] {
				q := c.ToPlane(p)
				dx, dy := q[0]-x, q[1]-y
				into[i] = g.known.outside(side, cos*dx+sin*dy, cos*dy-sin*dx)/scales[i] - sides[ofSides*k+side]
				i++
			}
		}
	}
}

// outside is how far a place on the sheet lies outside one of its sides.
func (k Known) outside(side int, x, y float64) float64 {
	switch side {
	case 0:
		return -y
	case 1:
		return x - k.Width
	case 2:
		return y - k.Height
	}
	return -x
}

// cameraOf is the part of a covariance that is that of the camera.
func cameraOf(all *mat.SymDense) *mat.SymDense {
	out := mat.NewSymDense(camera.Count, nil)
	for i := range camera.Count {
		for k := i; k < camera.Count; k++ {
			out.SetSym(i, k, all.At(i, k))
		}
	}
	return out
}
