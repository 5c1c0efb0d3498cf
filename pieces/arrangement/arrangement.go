// Package arrangement lays pieces beside each other at true size, in rows on one page.
//
// Lengths are millimetres; x runs to the right, y down from the upper left corner.
package arrangement

import (
	"errors"
	"math"

	"github.com/paulmach/orb"

	"ellwand/pieces"
	"ellwand/pieces/drawing"
	"ellwand/pieces/sheet"
)

// Figures [source.OwnChoice].
const (
	// Margin round the page and between pieces.
	Margin = 12.0
	// rowWidth is where a new row begins; a single wider piece widens the page.
	rowWidth = 1500.0
	// rulerHeight is the room below the pieces for the scale line.
	rulerHeight = 30.0
	// leastWidth has room for the scale line and its words.
	leastWidth = 150.0
)

// Arrangement is pieces in their places.
type Arrangement struct {
	// Drawn as they stand on the page.
	Drawn []sheet.DrawnPiece
	// Shifts bring a point (x, y) of the piece of each to (x + shift x, shift y - y).
	Shifts []orb.Point
	// Width and Height of the page, with room for the scale line below.
	Width, Height float64
}

// Of pieces, each as it is drawn: one cut on the fold as its half. The error is that of a
// piece that is not sound (see pieces.Piece.Check), or that there is none.
func Of(all ...pieces.Piece) (Arrangement, error) {
	drawn := make([]sheet.DrawnPiece, len(all))
	for i, p := range all {
		f, err := sheet.NewDrawnPiece(p)
		if err != nil {
			return Arrangement{}, err
		}
		drawn[i] = f
	}
	return OfDrawn(drawn)
}

// OfDrawn is the same of drawn pieces that stand as they were drafted, y up. The error is
// that there is none.
func OfDrawn(drawn []sheet.DrawnPiece) (Arrangement, error) {
	if len(drawn) == 0 {
		return Arrangement{}, errors.New("there is no piece to draw")
	}
	limit := rowWidth
	for _, f := range drawn {
		across, _ := sizeOf(f)
		limit = math.Max(limit, across+2*Margin)
	}
	out := Arrangement{}
	x, y, tallest := Margin, Margin, 0.0
	for _, f := range drawn {
		across, down := sizeOf(f)
		if x > Margin && x+across+Margin > limit {
			x, y, tallest = Margin, y+tallest+Margin, 0
		}
		box := f.Around().Bound()
		shift := orb.Point{round(x - box.Min[0]), round(y + box.Max[1])}
		out.Shifts = append(out.Shifts, shift)
		out.Drawn = append(out.Drawn, f.Map(pieces.MirrorY().Then(pieces.Move(shift[0], shift[1]))))
		x += across + Margin
		tallest = math.Max(tallest, down)
		out.Width = math.Max(out.Width, x)
	}
	out.Width = math.Max(math.Ceil(out.Width), leastWidth)
	out.Height = math.Ceil(y + tallest + rulerHeight)
	return out, nil
}

// round to a ten-thousandth.
func round(x float64) float64 { return math.Round(x*1e4) / 1e4 }

func sizeOf(f sheet.DrawnPiece) (width, height float64) {
	box := f.Around().Bound()
	return box.Max[0] - box.Min[0], box.Max[1] - box.Min[1]
}

// Page draws the pieces and the scale line.
func (s Arrangement) Page() drawing.Page {
	page := drawing.Page{Width: s.Width, Height: s.Height}
	for _, f := range s.Drawn {
		f.Draw(&page.Picture)
	}
	page.Add(s.Ruler())
	return page
}

// Ruler is the line of 100 mm at the foot of the page, by which the print is checked.
func (s Arrangement) Ruler() *drawing.Picture {
	out := &drawing.Picture{}
	out.Layer(drawing.WordsLayer, func() {
		pen := drawing.Pen{Width: 0.35, Blunt: true}
		y := s.Height - 10
		out.Line(pen, orb.Point{Margin, y}, orb.Point{Margin + 100, y})
		for _, tick := range []struct{ at, reach float64 }{{0, 2.5}, {50, 1.5}, {100, 2.5}} {
			out.Line(pen, orb.Point{Margin + tick.at, y - tick.reach}, orb.Point{Margin + tick.at, y + tick.reach})
		}
		out.Write(drawing.Text{Words: "100 mm: measure this line before you cut", At: orb.Point{Margin, y - 4.5},
			Points: 4 / drawing.Point})
	})
	return out
}
