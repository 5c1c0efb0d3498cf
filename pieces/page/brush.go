// Package page fills pages one after the other: a brush that draws with what
// was set last, lines of words, paragraphs, rules, and the next page.
//
// Lengths are mm of paper, sizes of type points, greys run from 0, black, to
// 255, white.
package page

import (
	"github.com/paulmach/orb"

	"ellwand/pieces/drawing"
)

// Brush draws with what was set last: the pen, the fill, the letters.
type Brush struct {
	On     *drawing.Picture
	Pen    drawing.Pen
	Points float64 // size of the letters
	// TurnedAbout, when set, is the point about which everything is turned so that
	// it reads upwards.
	TurnedAbout *orb.Point
	filled      int // grey of the fill
	inked       int // grey of the letters
	isBold      bool
}

// Shown says what of a shape is drawn.
type Shown int

const (
	// Rim draws the line about it.
	Rim Shown = iota
	// Inside fills it.
	Inside
	// Whole fills it and draws the line about it.
	Whole
)

// Place turns a point, where everything is to read upwards.
func (b *Brush) Place(p orb.Point) orb.Point {
	if b.TurnedAbout == nil {
		return p
	}
	c := *b.TurnedAbout
	return orb.Point{c[0] + p[1] - c[1], c[1] - p[0] + c[0]}
}

// Within draws what the function draws, as far as the box shows it.
func (b *Brush) Within(box orb.Bound, draw func()) {
	whole := b.On
	b.On = &drawing.Picture{}
	draw()
	whole.Window(box, b.On, orb.Point{})
	b.On = whole
}

// SetPen sets the width, the grey and the dashes of lines.
func (b *Brush) SetPen(width float64, grey int, dashes ...float64) {
	b.Pen = drawing.Pen{Width: width, Grey: grey, Dashes: dashes}
}

// Fill sets the grey of areas.
func (b *Brush) Fill(grey int) { b.filled = grey }

// Ink sets the grey of words.
func (b *Brush) Ink(grey int) { b.inked = grey }

// Plain sets the size of words.
func (b *Brush) Plain(points float64) { b.isBold, b.Points = false, points }

// Bold does the same, and has them bold.
func (b *Brush) Bold(points float64) { b.isBold, b.Points = true, points }

// Line draws a straight line.
func (b *Brush) Line(x1, y1, x2, y2 float64) {
	b.On.Line(b.Pen, b.Place(orb.Point{x1, y1}), b.Place(orb.Point{x2, y2}))
}

// Polygon draws a chain of lines, fills it, or both; what is filled is closed.
func (b *Brush) Polygon(line []orb.Point, shown Shown) {
	placed := make([]orb.Point, 0, len(line)+1)
	for _, p := range line {
		placed = append(placed, b.Place(p))
	}
	if shown != Rim {
		b.On.Area(b.filled, placed...)
		placed = append(placed, placed[0])
	}
	if shown != Inside {
		b.On.Line(b.Pen, placed...)
	}
}

// Rect is the same of a rectangle, from its upper left corner.
func (b *Brush) Rect(x, y, width, height float64, shown Shown) {
	b.Polygon([]orb.Point{{x, y}, {x + width, y}, {x + width, y + height}, {x, y + height}, {x, y}}, shown)
}

// Disc fills a circle.
func (b *Brush) Disc(x, y, radius float64) {
	b.On.Disc(b.filled, b.Place(orb.Point{x, y}), radius)
}

// Write puts words at a place of the line that they stand on, turned
// counter-clockwise by an angle, degrees.
func (b *Brush) Write(x, y float64, text string, align drawing.Align, angle float64) {
	if b.TurnedAbout != nil {
		angle += 90
	}
	b.On.Write(drawing.Text{Words: text, At: b.Place(orb.Point{x, y}), Points: b.Points, Bold: b.isBold,
		Grey: b.inked, Align: align, Angle: angle})
}

// Text has words begin at a place.
func (b *Brush) Text(x, y float64, text string) { b.Write(x, y, text, drawing.Left, 0) }

// TextCentred has their middle there.
func (b *Brush) TextCentred(x, y float64, text string) { b.Write(x, y, text, drawing.Centre, 0) }

// TextRight has them end there.
func (b *Brush) TextRight(x, y float64, text string) { b.Write(x, y, text, drawing.Right, 0) }

// TextUp writes a line that reads upwards, centred at a point.
func (b *Brush) TextUp(x, y float64, text string) { b.Write(x, y, text, drawing.Centre, 90) }

// TextWidth of words, mm.
func (b *Brush) TextWidth(text string) float64 { return drawing.Width(text, b.Points, b.isBold) }

// TextCut shortens a line with an ellipsis until it is no wider than given.
func (b *Brush) TextCut(text string, width float64) string {
	return drawing.Shortened(text, b.Points, b.isBold, width)
}

// Wrapped breaks a text at blanks into lines no wider than given.
func (b *Brush) Wrapped(text string, width float64) []string {
	return drawing.Wrapped(text, b.Points, b.isBold, width)
}

// Hatch fills a ring with slanting lines.
func (b *Brush) Hatch(ring []orb.Point, apart float64) { b.On.Hatch(b.Pen, ring, apart) }

// CrossHatch fills a ring with lines that slant both ways.
func (b *Brush) CrossHatch(ring []orb.Point, apart float64) {
	b.On.CrossHatch(b.Pen, ring, apart)
}
