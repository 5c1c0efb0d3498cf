// Package drawing holds lines, areas and words on paper, apart from the file
// they go into, and writes them as PDF, SVG, PNG and HP-GL/2.
//
// Lengths are millimetres of paper; x runs to the right and y down from the
// upper left corner. Sizes of type are points. Greys run from 0, black, to
// 255, white.
package drawing

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/pieces"
	"ellwand/pieces/geometry"
)

// Picture is what is drawn, in the order of drawing. The zero value is empty.
type Picture struct{ items []item }

// item is a stroke, an area, a Text, a window, a heading or an ending.
type item interface{ bound() orb.Bound }

// Pen draws lines. The zero value draws the finest line that there is.
type Pen struct {
	Width float64 // mm
	Grey  int
	// Dashes are the lengths of strokes and gaps in turn, mm; none draws a
	// solid line.
	Dashes []float64
	// Blunt ends lines exactly at their ends; otherwise they end round, half
	// the width further.
	Blunt bool
}

type stroke struct {
	pen  Pen
	line []orb.Point
	path pieces.Path // which the line follows, or nil
}

// heading and ending stand about what belongs together.
type heading struct {
	title string
	box   orb.Bound
}

type ending struct{ box orb.Bound }

type area struct {
	grey int
	ring []orb.Point
}

// window shows a part of another picture.
type window struct {
	box     orb.Bound
	picture *Picture
	shift   orb.Point
}

// Line draws a line through the points; it is closed when the last point is
// the first. Fewer than two points draw nothing.
func (p *Picture) Line(pen Pen, points ...orb.Point) {
	if len(points) > 1 {
		p.items = append(p.items, stroke{pen: pen, line: points})
	}
}

// curveTolerance is how far a curve may lie off its chords, mm.
const curveTolerance = 0.05

// Curve draws a chain of curves: exactly in SVG, elsewhere as chords.
func (p *Picture) Curve(pen Pen, path pieces.Path) {
	if len(path) > 0 {
		p.items = append(p.items, stroke{pen, path.Flatten(curveTolerance), path})
	}
}

// Area fills the inside of a ring, closed or not.
func (p *Picture) Area(grey int, ring ...orb.Point) {
	if len(ring) > 2 {
		p.items = append(p.items, area{grey, ring})
	}
}

// Box fills a rectangle.
func (p *Picture) Box(grey int, box orb.Bound) { p.Area(grey, geometry.Corners(box)...) }

// Frame draws the rim of a rectangle.
func (p *Picture) Frame(pen Pen, box orb.Bound) { p.Line(pen, geometry.Corners(box)...) }

// Disc fills a circle.
func (p *Picture) Disc(grey int, centre orb.Point, radius float64) {
	p.Area(grey, circle(centre, radius)...)
}

// Circle draws a circle.
func (p *Picture) Circle(pen Pen, centre orb.Point, radius float64) {
	p.Line(pen, circle(centre, radius)...)
}

// Write puts words on the paper.
func (p *Picture) Write(t Text) {
	if t.Words != "" {
		p.items = append(p.items, t)
	}
}

// Add draws everything that another picture has by now.
func (p *Picture) Add(other *Picture) { p.items = append(p.items, other.items...) }

// Group does the same, and says in SVG what it is.
func (p *Picture) Group(title string, other *Picture) {
	if len(other.items) == 0 {
		return
	}
	box := other.Bound()
	p.items = append(p.items, heading{title, box})
	p.Add(other)
	p.items = append(p.items, ending{box})
}

// Window shows what lies within the box of another picture that is moved by
// shift first. The other picture may still be added to.
func (p *Picture) Window(box orb.Bound, other *Picture, shift orb.Point) {
	p.items = append(p.items, window{box, other, shift})
}

// Hatch draws slanting lines, so far apart, within a closed ring.
func (p *Picture) Hatch(pen Pen, ring []orb.Point, apart float64) {
	for _, line := range hatching(ring, apart) {
		p.Line(pen, line[0], line[1])
	}
}

// CrossHatch draws such lines in both directions.
func (p *Picture) CrossHatch(pen Pen, ring []orb.Point, apart float64) {
	p.Hatch(pen, ring, apart)
	mirrored := make([]orb.Point, len(ring))
	for i, q := range ring {
		mirrored[i] = orb.Point{-q[0], q[1]}
	}
	for _, line := range hatching(mirrored, apart) {
		p.Line(pen, orb.Point{-line[0][0], line[0][1]}, orb.Point{-line[1][0], line[1][1]})
	}
}

// Bound is the least rectangle about everything drawn, without the width of
// the lines.
func (p *Picture) Bound() orb.Bound {
	out := orb.Bound{Min: orb.Point{math.Inf(1), math.Inf(1)}, Max: orb.Point{math.Inf(-1), math.Inf(-1)}}
	for _, it := range p.items {
		out = out.Union(it.bound())
	}
	return out
}

func (s stroke) bound() orb.Bound { return orb.LineString(s.line).Bound() }

func (h heading) bound() orb.Bound { return h.box }

func (e ending) bound() orb.Bound { return e.box }

func (a area) bound() orb.Bound { return orb.LineString(a.ring).Bound() }

func (w window) bound() orb.Bound { return w.box }

// bound of words is generous: no letter is wider or taller than the size.
func (t Text) bound() orb.Bound {
	reach := (Width(t.Words, t.Points, t.Bold) + t.Points*Point) * 1.1
	return geometry.Box(t.At, orb.Point{reach, reach})
}

// circle is a ring of chords that stay within 0.01 mm of the circle.
func circle(centre orb.Point, radius float64) []orb.Point {
	n := 8
	if radius > 0.02 {
		n = max(n, int(math.Ceil(math.Pi/math.Acos(1-0.01/radius))))
	}
	out := make([]orb.Point, n+1)
	for i := range out {
		sin, cos := math.Sincos(2 * math.Pi * float64(i%n) / float64(n))
		out[i] = orb.Point{centre[0] + radius*cos, centre[1] + radius*sin}
	}
	return out
}

// Page is one sheet of paper.
type Page struct {
	Width, Height float64
	Picture
}
