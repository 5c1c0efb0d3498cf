package marker

import (
	"io"
	"math"

	"ellwand/fabric/lay"
	"ellwand/fabric/purchase"
	"ellwand/pieces/drawing"
	"ellwand/pieces/paper"
)

// Picture is the whole lay on one page with its title and facts, for the
// screen or a message. It refuses a lay that is not possible.
func Picture(plan lay.Plan, options Options) (drawing.Page, error) {
	if err := check(plan); err != nil {
		return drawing.Page{}, err
	}
	s := newSheets(plan, options)
	s.onScreen = true
	low, high := Edges(plan)
	s.denominator = screenScale(high-low, purchase.OnTable(plan))
	of := paper.Paper{Width: math.Max(leastPicture, purchase.OnTable(plan)/s.denominator+2*margin+roomLeft+roomRight)}
	s.Add(of)
	s.drawTitle() // to see how tall it is
	of.Height = s.Y + roomAbove + (high-low)/s.denominator + roomBelow + footHeight + margin
	s.Keep(0)
	s.Add(of)
	s.drawPage(view{from: 0, to: purchase.OnTable(plan), scale: 1 / s.denominator, low: low, high: high, page: 1,
		pages: 1})
	return s.Done()[0], nil
}

// Size of a picture, mm: the least width has room for the title and the
// facts; across the cloth it is as large as a screen shows well.
const (
	leastPicture  = 250.0
	pictureAcross = 190.0
	pictureAlong  = 900.0
)

// screenScale is the largest scale at which the lay is no larger than a
// picture.
func screenScale(across, along float64) float64 {
	for _, scale := range scales {
		if across/scale <= pictureAcross && along/scale <= pictureAlong {
			return scale
		}
	}
	return math.Max(across/pictureAcross, along/pictureAlong)
}

// WriteSVG draws the picture of the lay as an SVG document.
func WriteSVG(w io.Writer, plan lay.Plan, options Options) error {
	page, err := Picture(plan, options)
	if err != nil {
		return err
	}
	return drawing.WriteSVG(w, titleOf(plan, options)+", "+subtitle(plan), page)
}

// mostPixels along a picture, so that it can be sent in a message.
const mostPixels = 4000.0

// WritePNG draws the picture of the lay as a PNG, at 6 pixels a mm or, of a
// long lay, less.
func WritePNG(w io.Writer, plan lay.Plan, options Options) error {
	page, err := Picture(plan, options)
	if err != nil {
		return err
	}
	return drawing.WritePNG(w, page, math.Min(6, mostPixels/page.Width))
}
