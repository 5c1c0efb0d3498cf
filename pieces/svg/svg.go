// Package svg draws pieces full size as SVG, and reads such drawings back: one unit is
// one millimetre, and the width and height of the document say so, so that a printer or
// plotter that keeps the scale gives the true pattern. Everything is black on white, in
// layers by what they hold. What of a piece is no line stands beside it, in attributes
// that begin with data-.
package svg

import (
	"bufio"
	"fmt"
	"io"

	"ellwand/pieces"
	"ellwand/pieces/arrangement"
	"ellwand/pieces/drawing"
	"ellwand/pieces/sheet"
)

// Version of the drawings that Read understands.
const Version = "1"

// Write draws the pieces beside each other in rows, none over another, into one SVG
// document, each as it is drawn: a piece cut on the fold as its half. Below them is a
// line of 100 mm by which to check the print. Read gives the same pieces; written again
// they give the same document, to the last byte, once their points are rounded to a
// ten-thousandth of a mm.
//
// It returns an error, and writes nothing, when there is no piece or one of
// them is not sound (see pieces.Piece.Check).
func Write(w io.Writer, title string, all ...pieces.Piece) error {
	places, err := arrangement.Of(all...)
	if err != nil {
		return err
	}
	out := &writer{Writer: bufio.NewWriter(w)}
	fmt.Fprintf(out, `<?xml version="1.0" encoding="UTF-8"?>
<svg xmlns="http://www.w3.org/2000/svg"%s version="1.1" width="%[2]smm" height="%[3]smm" viewBox="0 0 %[2]s %[3]s" `+
		`data-pieces="%[4]s" font-family="'DejaVu Sans Condensed', 'DejaVu Sans', Arial, Helvetica, sans-serif" fill="none" `+
		`stroke-linejoin="round" stroke-linecap="round">
<title>%[5]s</title>
<rect width="%[2]s" height="%[3]s" fill="white"/>
`, drawing.LayerSpace, number(places.Width), number(places.Height), Version, drawing.Escaped(title))
	figures := make([]sheet.DrawnPiece, len(all)) // in the frame of the pieces
	for i, p := range all {
		if figures[i], err = sheet.NewDrawnPiece(p); err != nil {
			return err
		}
	}
	for _, layer := range []struct {
		name string
		draw func(int)
	}{
		{drawing.CutLayer, func(i int) { out.cut(all[i], figures[i]) }},
		{drawing.SewLayer, func(i int) { out.sew(all[i], figures[i]) }},
		{drawing.MarksLayer, func(i int) { out.marks(all[i], figures[i]) }},
	} {
		fmt.Fprintf(out, "<g id=\"%[1]s\" inkscape:groupmode=\"layer\" inkscape:label=\"%[1]s\" stroke=\"black\">\n",
			layer.name)
		for i, p := range all {
			out.open(i, p, places.Shifts[i], layer.name == drawing.CutLayer)
			layer.draw(i)
			out.WriteString("</g>\n")
		}
		out.WriteString("</g>\n")
	}
	if err := out.words(places); err != nil {
		return err
	}
	out.WriteString("</svg>\n")
	return out.Flush()
}
