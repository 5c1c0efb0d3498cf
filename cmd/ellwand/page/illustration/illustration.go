// Package illustration draws the pictures of the page: garments for a gallery, where the
// tape goes for each measurement of the body, and the pieces of a job small.
//
// Figures are drawn in centimetres of a standing body, x from its middle to the
// reader's right and y down from the crown of the head. The body is our own
// drawing [source.OwnChoice]; nothing is reckoned from it.
package illustration

import (
	"errors"
	"io"

	"github.com/paulmach/orb"

	"ellwand/pieces"
	"ellwand/pieces/drawing"
)

// ErrUnknown is returned for a picture that there is none of.
var ErrUnknown = errors.New("there is no picture of that name")

// Pens of the figures, in mm of a picture that is about 100 mm high
// [source.OwnChoice].
var (
	bodyPen  = drawing.Pen{Width: 0.45, Grey: 150}
	linePen  = drawing.Pen{Width: 0.6, Grey: 40}
	seamPen  = drawing.Pen{Width: 0.35, Grey: 70}
	foldPen  = drawing.Pen{Width: 0.35, Grey: 110, Dashes: []float64{1.6, 1.2}}
	tapePen  = drawing.Pen{Width: 1.5}
	hiddenIn = drawing.Pen{Width: 0.9, Grey: 60, Dashes: []float64{1.6, 1.8}, Blunt: true}
)

// Greys of areas [source.OwnChoice].
const (
	clothGrey = 226
	shadeGrey = 205
	bodyGrey  = 245
)

// view is the part of the body that a picture shows, and its scale.
type view struct {
	page drawing.Page
	box  orb.Bound
	mm   float64 // of the picture for a centimetre of the body
}

// newView shows the box, high as so many millimetres.
func newView(box orb.Bound, high float64) *view {
	mm := high / (box.Max[1] - box.Min[1])
	return &view{drawing.Page{Width: (box.Max[0] - box.Min[0]) * mm, Height: high}, box, mm}
}

func (v *view) to(p orb.Point) orb.Point {
	return orb.Point{(p[0] - v.box.Min[0]) * v.mm, (p[1] - v.box.Min[1]) * v.mm}
}

func (v *view) all(points []orb.Point) []orb.Point {
	out := make([]orb.Point, len(points))
	for i, p := range points {
		out[i] = v.to(p)
	}
	return out
}

// straight draws a line of straight parts.
func (v *view) straight(pen drawing.Pen, points ...orb.Point) { v.page.Line(pen, v.all(points)...) }

// smooth draws a curve through the points.
func (v *view) smooth(pen drawing.Pen, points ...orb.Point) {
	v.page.Curve(pen, through(v.all(points)))
}

// shape fills a ring of smooth parts, each of which begins where the one before
// it ends, and draws its rim.
func (v *view) shape(grey int, pen drawing.Pen, parts ...[]orb.Point) {
	var ring []orb.Point
	var path pieces.Path
	for _, part := range parts {
		curve := through(v.all(part))
		ring = append(ring, curve.Flatten(flatness)...)
		path = append(path, curve...)
	}
	v.page.Area(grey, ring...)
	v.page.Curve(pen, path)
}

// both draws the same on the right and, mirrored, on the left.
func both(draw func(side func(...orb.Point) []orb.Point)) {
	draw(func(points ...orb.Point) []orb.Point { return points })
	draw(mirrored)
}

func (v *view) write(w io.Writer, title string) error { return drawing.WriteSVG(w, title, v.page) }
