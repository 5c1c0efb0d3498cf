package marker

import (
	"github.com/paulmach/orb"

	"ellwand/pieces/drawing"
)

// brush draws with what was set last: the pen, the fill, the letters.
type brush struct {
	on      *drawing.Picture
	current drawing.Pen
	filled  int // grey of the fill
	inked   int // grey of the letters
	isBold  bool
	points  float64 // size of the letters
	// upright, when set, is the point about which everything is turned so
	// that it reads upwards.
	upright *orb.Point
}

// place turns a point, where everything is to read upwards.
func (b *brush) place(p orb.Point) orb.Point {
	if b.upright == nil {
		return p
	}
	c := *b.upright
	return orb.Point{c[0] + p[1] - c[1], c[1] - p[0] + c[0]}
}

// within draws what the function draws, as far as the box shows it.
func (b *brush) within(box orb.Bound, draw func()) {
	whole := b.on
	b.on = &drawing.Picture{}
	draw()
	whole.Window(box, b.on, orb.Point{})
	b.on = whole
}

func (b *brush) pen(width float64, grey int, dashes ...float64) {
	b.current = drawing.Pen{Width: width, Grey: grey, Dashes: dashes}
}

func (b *brush) fill(grey int) { b.filled = grey }

func (b *brush) ink(grey int) { b.inked = grey }

func (b *brush) font(style string, points float64) { b.isBold, b.points = style == "B", points }

func (b *brush) line(x1, y1, x2, y2 float64) {
	b.on.Line(b.current, b.place(orb.Point{x1, y1}), b.place(orb.Point{x2, y2}))
}

// polygon draws a chain of lines ("D"), fills it ("F") or both ("FD"); what is
// filled is closed.
func (b *brush) polygon(line []orb.Point, style string) {
	placed := make([]orb.Point, 0, len(line)+1)
	for _, p := range line {
		placed = append(placed, b.place(p))
	}
	if style != "D" {
		b.on.Area(b.filled, placed...)
		placed = append(placed, placed[0])
	}
	if style != "F" {
		b.on.Line(b.current, placed...)
	}
}

func (b *brush) rect(x, y, width, height float64, style string) {
	b.polygon([]orb.Point{{x, y}, {x + width, y}, {x + width, y + height}, {x, y + height}, {x, y}}, style)
}

func (b *brush) disc(x, y, radius float64) {
	b.on.Disc(b.filled, b.place(orb.Point{x, y}), radius)
}

func (b *brush) write(x, y float64, text string, align drawing.Align, angle float64) {
	if b.upright != nil {
		angle += 90
	}
	b.on.Write(drawing.Text{Words: text, At: b.place(orb.Point{x, y}), Points: b.points, Bold: b.isBold, Grey: b.inked, Align: align, Angle: angle})
}

func (b *brush) text(x, y float64, text string) { b.write(x, y, text, drawing.Left, 0) }

func (b *brush) textCentred(x, y float64, text string) { b.write(x, y, text, drawing.Centre, 0) }

func (b *brush) textRight(x, y float64, text string) { b.write(x, y, text, drawing.Right, 0) }

// textUp writes a line that reads upwards, centred at a point.
func (b *brush) textUp(x, y float64, text string) { b.write(x, y, text, drawing.Centre, 90) }

func (b *brush) textWidth(text string) float64 { return drawing.Width(text, b.points, b.isBold) }

// textCut shortens a line with an ellipsis until it is no wider than given.
func (b *brush) textCut(text string, width float64) string {
	return drawing.Shortened(text, b.points, b.isBold, width)
}

// wrapped breaks a text at blanks into lines no wider than given.
func (b *brush) wrapped(text string, width float64) []string {
	return drawing.Wrapped(text, b.points, b.isBold, width)
}

// hatch fills a ring with slanting lines.
func (b *brush) hatch(ring []orb.Point, apart float64) { b.on.Hatch(b.current, ring, apart) }

// crossHatch fills a ring with lines that slant both ways.
func (b *brush) crossHatch(ring []orb.Point, apart float64) {
	b.on.CrossHatch(b.current, ring, apart)
}
