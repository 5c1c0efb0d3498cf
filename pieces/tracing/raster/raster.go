// Package raster holds the brightness of a photo as numbers: decoded within limits,
// turned as its camera says, shrunk, blurred and sampled between pixels.
//
// Places are pixels; the middle of the first pixel is (0, 0), x runs to the right and
// y down. Brightness runs from 0 to 255, as the file has it.
package raster

import (
	"math"
	"slices"
)

// Grey is a picture of one channel.
type Grey struct {
	Width, Height int
	Values        []float32 // row by row
}

// New is a black picture.
func New(width, height int) *Grey {
	return &Grey{Width: width, Height: height, Values: make([]float32, width*height)}
}

// At is the brightness of a pixel; one outside the picture counts as that at its rim.
func (g *Grey) At(x, y int) float32 {
	return g.Values[min(max(y, 0), g.Height-1)*g.Width+min(max(x, 0), g.Width-1)]
}

// Between is the brightness at a place between pixels, linear between them.
func (g *Grey) Between(x, y float64) float64 {
	left, top := math.Floor(x), math.Floor(y)
	i, j := int(left), int(top)
	dx, dy := x-left, y-top
	above := float64(g.At(i, j))*(1-dx) + float64(g.At(i+1, j))*dx
	below := float64(g.At(i, j+1))*(1-dx) + float64(g.At(i+1, j+1))*dx
	return above*(1-dy) + below*dy
}

// Holds says whether a place lies within the picture, so far from its rim.
func (g *Grey) Holds(x, y, margin float64) bool {
	return x >= margin && y >= margin && x <= float64(g.Width-1)-margin && y <= float64(g.Height-1)-margin
}

// Shrunk makes one pixel of each square of so many by so many, their mean. What does
// not fill a square at the right and below is left out. The pixel (x, y) of the small
// picture is at Grown of the large one.
func (g *Grey) Shrunk(by int) *Grey {
	if by <= 1 {
		return g
	}
	out := New(max(1, g.Width/by), max(1, g.Height/by))
	for y := range out.Height {
		for x := range out.Width {
			sum := float32(0)
			for j := range by {
				for i := range by {
					sum += g.At(x*by+i, y*by+j)
				}
			}
			out.Values[y*out.Width+x] = sum / float32(by*by)
		}
	}
	return out
}

// Grown is where a place of a picture that was shrunk lies on the large one.
func Grown(at float64, by int) float64 { return (at+0.5)*float64(by) - 0.5 }

// Filled is the picture in which every pixel that is no number is the mean of its
// neighbours, from the sides of such places inwards.
func (g *Grey) Filled() *Grey {
	out := &Grey{g.Width, g.Height, slices.Clone(g.Values)}
	for range fills {
		before := &Grey{g.Width, g.Height, slices.Clone(out.Values)}
		left := false
		for i, v := range before.Values {
			if v == v {
				continue
			}
			sum, n := float32(0), float32(0)
			for dy := -1; dy <= 1; dy++ {
				for dx := -1; dx <= 1; dx++ {
					if w := before.At(i%g.Width+dx, i/g.Width+dy); w == w {
						sum, n = sum+w, n+1
					}
				}
			}
			out.Values[i] = sum / n
			left = left || n == 0
		}
		if !left {
			break
		}
	}
	return out
}

// fills at most: half the width of what is filled, pixels [source.OwnChoice].
const fills = 60

// Blurred is the picture under a Gaussian of that standard deviation in pixels.
func (g *Grey) Blurred(sigma float64) *Grey {
	reach := int(math.Ceil(3 * sigma))
	weights := make([]float32, 2*reach+1)
	sum := float32(0)
	for i := range weights {
		d := float64(i-reach) / sigma
		weights[i] = float32(math.Exp(-d * d / 2))
		sum += weights[i]
	}
	for i := range weights {
		weights[i] /= sum
	}
	return g.along(weights, 1, 0).along(weights, 0, 1)
}

// along weighs the pixels of a row (1, 0) or a column (0, 1).
func (g *Grey) along(weights []float32, dx, dy int) *Grey {
	out := New(g.Width, g.Height)
	reach := len(weights) / 2
	step := dx + dy*g.Width
	for y := range g.Height {
		for x := range g.Width {
			at, room := y*g.Width+x, min(x, g.Width-1-x)
			if dy == 1 {
				room = min(y, g.Height-1-y)
			}
			sum := float32(0)
			if room >= reach {
				for i, w := range weights {
					sum += w * g.Values[at+(i-reach)*step]
				}
			} else {
				for i, w := range weights {
					sum += w * g.At(x+(i-reach)*dx, y+(i-reach)*dy)
				}
			}
			out.Values[at] = sum
		}
	}
	return out
}
