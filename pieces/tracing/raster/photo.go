package raster

import (
	"bytes"
	"errors"
	"fmt"
	"image"
	"image/color"
	_ "image/jpeg" // the two formats that are read
	_ "image/png"

	"github.com/paulmach/orb"
)

// MostPixels is how large a photo may be: a progressive JPEG of that size takes 400 MB
// to decode (16 bytes a pixel), and phones usually take half of it [source.OwnChoice].
const MostPixels = 25_000_000

// most pixels that are worked on; a larger photo is halved [source.OwnChoice].
const mostWorked = 13_000_000

// leastSide of a photo in which anything can be traced [source.OwnChoice].
const leastSide = 100

// The ways in which a file cannot be used.
var (
	ErrUnreadable = errors.New("the picture cannot be read")
	ErrTooSmall   = errors.New("the picture has too few pixels")
)

// TooLarge is a photo with too many pixels.
type TooLarge struct{ Width, Height int }

// Error says so.
func (t *TooLarge) Error() string {
	return fmt.Sprintf("the picture has %d x %d pixels", t.Width, t.Height)
}

// Is reports whether a file begins as a JPEG or a PNG does.
func Is(data []byte) bool {
	return bytes.HasPrefix(data, beginsJPEG) || bytes.HasPrefix(data, beginsPNG)
}

// Photo is a decoded picture, upright.
type Photo struct {
	Width, Height int
	stored        image.Image
	turn          Orientation
}

// Decode reads a JPEG or a PNG. Its size is checked before its pixels are read. The
// errors are ErrUnreadable, ErrTooSmall and *TooLarge.
func Decode(data []byte) (*Photo, error) {
	header, _, err := image.DecodeConfig(bytes.NewReader(data))
	if err != nil {
		return nil, ErrUnreadable
	}
	most := MostPixels
	switch header.ColorModel {
	case color.RGBA64Model, color.NRGBA64Model, color.Gray16Model: // twice the bytes
		most /= 2
	}
	if header.Width <= 0 || header.Height <= 0 || header.Width > most/header.Height {
		return nil, &TooLarge{header.Width, header.Height}
	}
	if min(header.Width, header.Height) < leastSide {
		return nil, ErrTooSmall
	}
	stored, _, err := image.Decode(bytes.NewReader(data))
	if err != nil {
		return nil, ErrUnreadable
	}
	size := stored.Bounds().Size()
	p := &Photo{Width: size.X, Height: size.Y, stored: stored, turn: orientationOf(data)}
	if p.turn.sidesSwap() {
		p.Width, p.Height = p.Height, p.Width
	}
	return p, nil
}

// pixel of the upright picture: red, green and blue.
func (p *Photo) pixel(x, y int) [3]float32 {
	bounds := p.stored.Bounds()
	i, j := p.turn.source(x, y, bounds.Dx(), bounds.Dy())
	i, j = bounds.Min.X+i, bounds.Min.Y+j
	if s, ok := p.stored.(*image.YCbCr); ok { // a third of the time that At takes
		at := s.COffset(i, j)
		r, g, b := color.YCbCrToRGB(s.Y[s.YOffset(i, j)], s.Cb[at], s.Cr[at])
		return [3]float32{float32(r), float32(g), float32(b)}
	}
	r, g, b, _ := p.stored.At(i, j).RGBA()
	const shade = 257 // [source.Geometry]
	return [3]float32{float32(r) / shade, float32(g) / shade, float32(b) / shade}
}

// Mix is how much of red, green and blue makes a channel.
type Mix [3]float32

// Blueness is no mix but the square of the share of blue in a pixel, which shadow changes
// little; squared, so that shares differ as brightnesses do.
var Blueness = Mix{}

// Mixes to choose from: brightness as Rec. 601 weighs it, as does JPEG, and each colour
// alone [source.OwnChoice].
var Mixes = []Mix{{0.299, 0.587, 0.114}, {1, 0, 0}, {0, 1, 0}, {0, 0, 1}}

func (m Mix) of(pixel [3]float32) float32 {
	if m == Blueness {
		const most, dark = 510, 6 // of half a share; levels that are added against the noise of black [source.OwnChoice]
		share := (pixel[2] + dark) / (pixel[0] + pixel[1] + pixel[2] + 3*dark)
		return most * share * share
	}
	return m[0]*pixel[0] + m[1]*pixel[1] + m[2]*pixel[2]
}

// Step is how many pixels of the photo, each way, are one of its channels.
func (p *Photo) Step() int {
	step := 1
	for p.Width/step*(p.Height/step) > mostWorked {
		step++
	}
	return step
}

// Channel is the photo in one mix, shrunk by Step.
func (p *Photo) Channel(mix Mix) *Grey {
	step := p.Step()
	out := New(p.Width/step, p.Height/step)
	for y := range out.Height {
		for x := range out.Width {
			sum := float32(0)
			for j := range step {
				for i := range step {
					sum += mix.of(p.pixel(x*step+i, y*step+j))
				}
			}
			out.Values[y*out.Width+x] = sum / float32(step*step)
		}
	}
	return out
}

// Sparse is the photo in one mix, about so many pixels wide, taken here and there, as one
// row of what lies within a part of it; nil for all of it.
func (p *Photo) Sparse(mix Mix, wide int, within func(orb.Point) bool) []float32 {
	step := max(1, p.Width/wide)
	var out []float32
	for y := step / 2; y < p.Height; y += step {
		for x := step / 2; x < p.Width; x += step {
			if within == nil || within(orb.Point{float64(x), float64(y)}) {
				out = append(out, mix.of(p.pixel(x, y)))
			}
		}
	}
	return out
}

// Mean of a square of pixels: red, green and blue.
func (p *Photo) Mean(x, y, side int) [3]float32 {
	var sum [3]float32
	for j := range side {
		for i := range side {
			one := p.pixel(min(x+i, p.Width-1), min(y+j, p.Height-1))
			for k := range sum {
				sum[k] += one[k] / float32(side*side)
			}
		}
	}
	return sum
}
