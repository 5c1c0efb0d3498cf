package steps

import (
	"github.com/paulmach/orb"

	"ellwand/pieces"
	"ellwand/pieces/drawing"
)

// pieceDrawing draws one piece on a page: y up on the piece is y down on paper.
type pieceDrawing struct {
	content
	to    *drawing.Picture
	scale float64 // denominator
	shift orb.Point
	// lines that numbers keep off, and boxes that are taken, on paper.
	lines [][2]orb.Point
	taken []orb.Bound
}

func (f *pieceDrawing) at(p orb.Point) orb.Point {
	return orb.Point{f.shift[0] + p[0]/f.scale, f.shift[1] - p[1]/f.scale}
}

func (f *pieceDrawing) path(pen drawing.Pen, path pieces.Path) {
	line := path.Flatten(0.05 * f.scale)
	points := make([]orb.Point, len(line))
	for i, p := range line {
		points[i] = f.at(p)
	}
	f.line(pen, points...)
}

// line draws a line that numbers keep off.
func (f *pieceDrawing) line(pen drawing.Pen, points ...orb.Point) {
	f.to.Line(pen, points...)
	for i := 1; i < len(points); i++ {
		f.lines = append(f.lines, [2]orb.Point{points[i-1], points[i]})
	}
}
