// Package svg draws pieces full size as SVG: one unit is one millimetre, and
// the width and height of the document say so, so that a printer or plotter
// that keeps the scale gives the true pattern. Everything is black on white.
package svg

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"math"

	"ellwand/pieces"
)

const (
	// margin round the document and between pieces, mm.
	margin = 12.0
	// rowWidth is where a new row of pieces begins, mm; a single wider piece
	// widens the document.
	rowWidth = 1500.0
	// rulerHeight is the room below the pieces for the scale line, mm.
	rulerHeight = 30.0
	// tolerance of the cutting line against the true one, mm.
	tolerance = 0.05
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
	drawings := make([]drawn, len(all))
	for i, p := range all {
		d, err := newDrawing(p)
		if err != nil {
			return err
		}
		drawings[i] = d
	}
	width, height := arrange(drawings)
	var out bytes.Buffer
	fmt.Fprintf(&out, `<?xml version="1.0" encoding="UTF-8"?>
<svg xmlns="http://www.w3.org/2000/svg" version="1.1" width="%[1]smm" height="%[2]smm" viewBox="0 0 %[1]s %[2]s" font-family="'DejaVu Sans Condensed', 'DejaVu Sans', sans-serif">
<rect width="%[1]s" height="%[2]s" fill="white"/>
`, number(width), number(height))
	for _, d := range drawings {
		d.write(&out)
	}
	writeRuler(&out, height)
	out.WriteString("</svg>\n")
	_, err := w.Write(out.Bytes())
	return err
}

// arrange gives every drawing its place, in rows from the top left, and
// returns the size of the document.
func arrange(drawings []drawn) (width, height float64) {
	limit := rowWidth
	for _, d := range drawings {
		limit = math.Max(limit, d.width+2*margin)
	}
	x, y, tallest := margin, margin, 0.0
	for i := range drawings {
		d := &drawings[i]
		if x > margin && x+d.width+margin > limit {
			x, y, tallest = margin, y+tallest+margin, 0
		}
		d.place(x, y)
		x += d.width + margin
		tallest = math.Max(tallest, d.height)
		width = math.Max(width, x)
	}
	return math.Max(math.Ceil(width), leastWidth), math.Ceil(y + tallest + rulerHeight)
}

// leastWidth has room for the scale line and its words.
const leastWidth = 150.0

// writeRuler draws the line of 100 mm.
func writeRuler(out *bytes.Buffer, height float64) {
	y := height - 10
	fmt.Fprintf(out, `<g stroke="black" stroke-width="0.35" fill="none">
<path class="ruler" d="M%[1]s %[2]sH%[3]sM%[1]s %[4]sV%[5]sM%[6]s %[7]sV%[8]sM%[3]s %[4]sV%[5]s"/>
</g>
<text x="%[1]s" y="%[9]s" font-size="4">100 mm: measure this line before you cut</text>
`, number(margin), number(y), number(margin+100), number(y-2.5), number(y+2.5), number(margin+50),
		number(y-1.5), number(y+1.5), number(y-4.5))
}
