package tracing

import (
	"image"
	"image/color"
	"image/draw"
	"image/png"
	"io"
	"math"
	"strconv"

	"github.com/paulmach/orb"
	"golang.org/x/image/vector"

	"ellwand/pieces/drawing"
	"ellwand/pieces/geometry"
)

// How the picture looks [source.OwnChoice].
const (
	overlayWide = 1600 // pixels of its longer side at most
	pen         = 1.6  // pixels
)

var (
	outlineColour   = color.NRGBA{230, 0, 80, 255}  // [source.OwnChoice]
	cornerColour    = color.NRGBA{0, 90, 255, 255}  // [source.OwnChoice]
	referenceColour = color.NRGBA{0, 190, 60, 255}  // [source.OwnChoice]
	leftOutColour   = color.NRGBA{255, 150, 0, 255} // [source.OwnChoice]
)

// WriteOverlay writes the photo with what was found drawn over it, as a PNG to judge
// by: outlines, corners as dots, numbers, the reference, and shapes that were left out
// as crosses.
func (t Tracing) WriteOverlay(w io.Writer) error {
	return png.Encode(w, t.overlay())
}

func (t Tracing) overlay() *image.RGBA {
	shrink := max(1, int(math.Ceil(float64(max(t.Width, t.Height))/overlayWide)))
	c := canvas{photo(t, shrink), float64(t.Step) / float64(shrink)}
	marks := t.Reference.Marks
	for i := 0; i < len(marks); i += max(1, len(marks)/3000) {
		c.disc(referenceColour, c.to(marks[i]), 1.3)
	}
	for i, o := range t.Outlines {
		c.line(outlineColour, o.Seen)
		for _, p := range o.Corners {
			c.disc(cornerColour, c.to(p), 3)
		}
		c.number(i+1, orb.MultiPoint(o.Seen).Bound().Center())
	}
	for _, fault := range t.Left {
		if fault.At != nowhere {
			c.cross(orb.Point{fault.At[0] * float64(c.Rect.Dx()), fault.At[1] * float64(c.Rect.Dy())})
		}
	}
	return c.RGBA
}

// photo shrunk, a little faded so that lines stand out.
func photo(t Tracing, shrink int) *image.RGBA {
	out := image.NewRGBA(image.Rect(0, 0, max(1, t.Width/shrink), max(1, t.Height/shrink)))
	for y := range out.Rect.Dy() {
		for x := range out.Rect.Dx() {
			p := t.photo.Mean(x*shrink, y*shrink, shrink)
			const faded = 40 // [source.OwnChoice]
			fade := func(v float32) uint8 { return uint8(faded + v*(255-faded)/255) }
			out.SetRGBA(x, y, color.RGBA{fade(p[0]), fade(p[1]), fade(p[2]), 255})
		}
	}
	return out
}

// canvas is a picture, and how large one place of the tracing is on it.
type canvas struct {
	*image.RGBA
	scale float64
}

func (c canvas) to(p orb.Point) orb.Point {
	return orb.Point{(p[0] + 0.5) * c.scale, (p[1] + 0.5) * c.scale}
}

func (c canvas) line(colour color.Color, places []orb.Point) {
	for i, p := range places {
		a, b := c.to(p), c.to(places[(i+1)%len(places)])
		side := geometry.Times(geometry.Left(geometry.Unit(geometry.Sub(b, a))), pen/2)
		c.fill(colour, geometry.Add(a, side), geometry.Add(b, side), geometry.Sub(b, side), geometry.Sub(a, side))
	}
}

func (c canvas) disc(colour color.Color, at orb.Point, radius float64) {
	ring := make([]orb.Point, 12)
	for i := range ring {
		sin, cos := math.Sincos(2 * math.Pi * float64(i) / float64(len(ring)))
		ring[i] = orb.Point{at[0] + radius*cos, at[1] + radius*sin}
	}
	c.fill(colour, ring...)
}

func (c canvas) cross(at orb.Point) {
	const arm, half = 10.0, 1.5 // [source.OwnChoice]
	for _, u := range [2]orb.Point{{1, 1}, {1, -1}} {
		along, across := geometry.Times(u, arm), geometry.Times(geometry.Left(u), half)
		a, b := geometry.Sub(at, along), geometry.Add(at, along)
		c.fill(leftOutColour, geometry.Add(a, across), geometry.Add(b, across), geometry.Sub(b, across),
			geometry.Sub(a, across))
	}
}

// fill a ring of places of the picture.
func (c canvas) fill(colour color.Color, ring ...orb.Point) {
	box := orb.MultiPoint(ring).Bound()
	area := image.Rect(int(math.Floor(box.Min[0])), int(math.Floor(box.Min[1])),
		int(math.Ceil(box.Max[0])), int(math.Ceil(box.Max[1]))).Intersect(c.Rect)
	if area.Empty() {
		return
	}
	raster := vector.NewRasterizer(area.Dx(), area.Dy())
	for i, p := range ring {
		x, y := float32(p[0]-float64(area.Min.X)), float32(p[1]-float64(area.Min.Y))
		if i == 0 {
			raster.MoveTo(x, y)
		} else {
			raster.LineTo(x, y)
		}
	}
	raster.ClosePath()
	raster.Draw(c, area, image.NewUniform(colour), image.Point{})
}

// number in the typeface of drawings, in a white disc.
func (c canvas) number(n int, at orb.Point) {
	const size, mm = 18.0, 1.0 // [source.OwnChoice]
	middle := c.to(at)
	c.disc(color.White, middle, size*0.75)
	page := drawing.Page{Width: 2 * size, Height: 2 * size}
	words := strconv.Itoa(n)
	const points = size / drawing.Point
	page.Write(drawing.Text{
		Words: words, At: orb.Point{size - drawing.Width(words, points, true)/2, size * 1.36}, Points: points, Bold: true,
	})
	grey := drawing.Paint(page, mm)
	mask := image.NewAlpha(grey.Rect)
	for i, v := range grey.Pix {
		mask.Pix[i] = 255 - v
	}
	corner := image.Pt(int(middle[0]-size), int(middle[1]-size))
	draw.DrawMask(c, mask.Rect.Add(corner), image.NewUniform(outlineColour), image.Point{}, mask, image.Point{}, draw.Over)
}
