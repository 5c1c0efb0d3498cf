// Package projector draws pieces to be projected onto the cloth from above: thick lines
// on a dark or a light ground, a grid by which the projector is set square, and a square
// to be measured on the cloth.
//
// Lengths are millimetres on the cloth; x runs to the right, y down.
package projector

import (
	"fmt"
	"math"
	"strconv"

	"github.com/paulmach/orb"

	"ellwand/pieces/arrangement"
	"ellwand/pieces/drawing"
	"ellwand/pieces/geometry"
	"ellwand/pieces/sheet"
)

// Options say how it is drawn.
type Options struct {
	// Light draws dark lines on a light ground, in place of light ones on a dark ground.
	Light bool
	// Grid is how far its lines are apart; 0 draws none.
	Grid float64
	// Square is the side of the square that is measured.
	Square float64
	// Inches words lengths so, in place of cm.
	Inches bool
	// Scale of the page to the cloth; 1 is true size.
	Scale float64
}

// Usual options: at true size on a dark ground, with a grid and a square of 10 cm, or of
// 4 in [source.OwnChoice].
func Usual(inches bool) Options {
	if inches {
		return Options{Inches: true, Grid: 101.6, Square: 101.6, Scale: 1}
	}
	return Options{Grid: 100, Square: 100, Scale: 1}
}

// What a projector shows is coarse: about a millimetre a dot on a table [source.OwnChoice].
const (
	thicker    = 4.0 // times as thick as on paper
	leastWidth = 1.2 // of a line
	longer     = 3.0 // times as long dashes as on paper
	leastWords = 6.0 // height of the letters
	gridWidth  = 0.8
	gridGrey   = 150 // on a light ground; on a dark one as far from it
	squareRoom = 40.0
)

// Layers beside those of the pieces.
const (
	GridLayer   = "grid"
	SquareLayer = "square to measure"
)

// Page of the figures, which stand as their pieces were drafted. The error is that there
// is none.
func Page(figures []sheet.DrawnPiece, o Options) (drawing.Page, error) {
	places, err := arrangement.OfDrawn(figures)
	if err != nil {
		return drawing.Page{}, err
	}
	width := math.Max(places.Width, o.Square+2*arrangement.Margin)
	height := places.Height + o.Square + squareRoom
	ground := 0
	if o.Light {
		ground = 255
	}
	page := drawing.Page{Width: width * o.Scale, Height: height * o.Scale}
	page.Box(ground, orb.Bound{Max: orb.Point{page.Width, page.Height}})
	drawn := &drawing.Picture{}
	if o.Grid > 0 {
		drawn.Layer(GridLayer, func() { grid(drawn, width, height, o) })
	}
	drawn.Layer(SquareLayer, func() { square(drawn, height, o) })
	page.Add(drawn.Changed(drawing.Change{Scale: o.Scale, Grey: o.grey}))
	lines := &drawing.Picture{}
	for _, f := range places.Drawn {
		f.Draw(lines)
	}
	page.Add(lines.Changed(drawing.Change{Scale: o.Scale, Pen: thick, Grey: o.grey,
		LeastText: leastWords / drawing.Point}))
	return page, nil
}

// grey of a line, seen from the ground.
func (o Options) grey(grey int) int {
	if o.Light {
		return grey
	}
	return 255 - grey
}

// thick pen, as a projector shows it.
func thick(pen drawing.Pen) drawing.Pen {
	pen.Width = math.Max(leastWidth, pen.Width*thicker)
	dashes := make([]float64, len(pen.Dashes))
	for i, d := range pen.Dashes {
		dashes[i] = d * longer
	}
	pen.Dashes = dashes
	return pen
}

// grid with the distances from the upper left corner beside it.
func grid(on *drawing.Picture, width, height float64, o Options) {
	pen := drawing.Pen{Width: gridWidth, Grey: gridGrey, Blunt: true}
	words := func(n int, at orb.Point) {
		on.Write(drawing.Text{Words: o.inWords(float64(n) * o.Grid), At: at, Points: leastWords / drawing.Point,
			Grey: gridGrey})
	}
	for n := 1; float64(n)*o.Grid < width; n++ {
		x := float64(n) * o.Grid
		on.Line(pen, orb.Point{x, 0}, orb.Point{x, height})
		words(n, orb.Point{x + 2, leastWords + 2})
	}
	for n := 1; float64(n)*o.Grid < height; n++ {
		y := float64(n) * o.Grid
		on.Line(pen, orb.Point{0, y}, orb.Point{width, y})
		words(n, orb.Point{2, y - 2})
	}
}

// square to be measured on the cloth.
func square(on *drawing.Picture, height float64, o Options) {
	low := height - squareRoom/2
	centre := orb.Point{arrangement.Margin + o.Square/2, low - o.Square/2}
	half := orb.Point{o.Square / 2, o.Square / 2}
	on.Frame(drawing.Pen{Width: 2}, geometry.Box(centre, half))
	for i, line := range []string{o.inWords(o.Square) + " each way:", "measure on", "the cloth"} {
		on.Write(drawing.Text{Words: line, At: orb.Point{centre[0], centre[1] + 10*(float64(i)-0.8)},
			Points: leastWords / drawing.Point, Align: drawing.Centre})
	}
}

// inWords says a length of the grid.
func (o Options) inWords(mm float64) string {
	if o.Inches {
		return strconv.FormatFloat(math.Round(mm/25.4*100)/100, 'f', -1, 64) + " in"
	}
	return fmt.Sprintf("%s cm", strconv.FormatFloat(math.Round(mm*10)/100, 'f', -1, 64))
}
