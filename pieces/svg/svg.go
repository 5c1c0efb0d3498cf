// Package svg draws pieces full size as SVG: one unit is one millimetre, and
// the width and height of the document say so, so that a printer or plotter
// that keeps the scale gives the true pattern. Everything is black on white.
package svg

import (
	"errors"
	"io"
	"math"

	"github.com/paulmach/orb"

	"ellwand/pieces"
	"ellwand/pieces/drawing"
	"ellwand/pieces/sheet"
)

const (
	// margin round the document and between pieces, mm.
	margin = 12.0
	// rowWidth is where a new row of pieces begins, mm; a single wider piece
	// widens the document.
	rowWidth = 1500.0
	// rulerHeight is the room below the pieces for the scale line, mm.
	rulerHeight = 30.0
	// leastWidth has room for the scale line and its words.
	leastWidth = 150.0
)

// Write draws the pieces beside each other in rows, none over another, into
// one SVG document, each as it is drawn: a piece cut on the fold as its half.
// Below them is a line of 100 mm by which to check the print.
//
// It returns an error, and writes nothing, when there is no piece or one of
// them is not sound (see pieces.Piece.Check).
func Write(w io.Writer, all ...pieces.Piece) error {
	if len(all) == 0 {
		return errors.New("there is no piece to draw")
	}
	figures := make([]sheet.Figure, len(all))
	for i, p := range all {
		f, err := sheet.NewFigure(p)
		if err != nil {
			return err
		}
		figures[i] = f.Map(pieces.MirrorY()) // y runs down in the document
	}
	page := drawing.Page{}
	page.Width, page.Height = arrange(figures)
	for _, f := range figures {
		f.Draw(&page.Picture)
	}
	drawRuler(&page)
	return drawing.WriteSVG(w, all[0].Name, page)
}

// arrange gives every figure its place, in rows from the top left, and
// returns the size of the document.
func arrange(figures []sheet.Figure) (width, height float64) {
	limit := rowWidth
	for _, f := range figures {
		across, _ := sizeOf(f)
		limit = math.Max(limit, across+2*margin)
	}
	x, y, tallest := margin, margin, 0.0
	for i, f := range figures {
		across, down := sizeOf(f)
		if x > margin && x+across+margin > limit {
			x, y, tallest = margin, y+tallest+margin, 0
		}
		corner := f.Around().Bound().Min
		figures[i] = f.Map(pieces.Move(x-corner[0], y-corner[1]))
		x += across + margin
		tallest = math.Max(tallest, down)
		width = math.Max(width, x)
	}
	return math.Max(math.Ceil(width), leastWidth), math.Ceil(y + tallest + rulerHeight)
}

func sizeOf(f sheet.Figure) (width, height float64) {
	box := f.Around().Bound()
	return box.Max[0] - box.Min[0], box.Max[1] - box.Min[1]
}

// drawRuler draws the line of 100 mm at the foot of the page.
func drawRuler(page *drawing.Page) {
	pen := drawing.Pen{Width: 0.35, Blunt: true}
	y := page.Height - 10
	page.Line(pen, orb.Point{margin, y}, orb.Point{margin + 100, y})
	for _, tick := range []struct{ at, reach float64 }{{0, 2.5}, {50, 1.5}, {100, 2.5}} {
		page.Line(pen, orb.Point{margin + tick.at, y - tick.reach}, orb.Point{margin + tick.at, y + tick.reach})
	}
	page.Write(drawing.Text{Words: "100 mm: measure this line before you cut", At: orb.Point{margin, y - 4.5},
		Points: 4 / drawing.Point})
}
