// Package svg draws a piece as an SVG document at true scale: one unit of the
// drawing is a millimetre.
package svg

import (
	"errors"
	"fmt"
	"io"
	"strings"

	"github.com/paulmach/orb"

	"ellwand/pieces"
)

const (
	// tolerance of flattened curves, mm: finer than a pencil line.
	tolerance = 0.05
	// margin around the piece, mm.
	margin = 10
	// footer below the piece, with the ruler, mm.
	footer = 20
	// ruler that lets the maker check the scale of a print, mm.
	ruler = 100
)

// style of the drawing: line kinds tell the lines apart without colour.
const style = `
path, line { fill: none; stroke: black; stroke-width: 0.4; }
.cutting { stroke-width: 0.7; }
.seam { stroke-dasharray: 4 2; }
.fold { stroke-width: 0.9; stroke-dasharray: 10 2 2 2; }
.mark { stroke-width: 0.25; stroke-dasharray: 1 1; }
text { font-family: sans-serif; fill: black; paint-order: stroke; stroke: white; stroke-width: 1; }
`

// Write draws the piece: cutting line, seam line, fold, grain with "this end
// up" at the arrow, notches, darts and marks, what to cut, and a ruler of
// 100 mm. A piece on the fold is drawn as its half. It fails when the piece
// has no sound cutting outline.
func Write(w io.Writer, piece pieces.Piece) error {
	outline, err := piece.CuttingOutline(tolerance)
	if err != nil {
		return err
	}
	if len(outline) == 0 {
		return errors.New("the piece has no outline to draw")
	}
	d := newDrawing(outline.Bound())
	d.path("cutting", outline)
	d.path("seam", orb.LineString(piece.SeamOutline(tolerance)))
	d.fold(piece)
	d.grain(piece.Grain)
	for _, notch := range piece.Notches {
		d.notch(piece, notch)
	}
	for _, dart := range piece.Darts {
		d.dart(dart)
	}
	for _, mark := range piece.Marks {
		d.mark(mark)
	}
	d.label(piece, outline)
	d.ruler()
	return d.writeTo(w, piece.Name)
}

// drawing collects elements. Its y runs down, that of pieces up.
type drawing struct {
	box  orb.Bound
	body strings.Builder
}

func newDrawing(box orb.Bound) *drawing { return &drawing{box: box} }

func (d *drawing) width() float64 {
	return max(d.box.Max[0]-d.box.Min[0], ruler) + 2*margin
}

func (d *drawing) height() float64 {
	return d.box.Max[1] - d.box.Min[1] + 2*margin + footer
}

// at moves a point of the piece to its place on the drawing.
func (d *drawing) at(p orb.Point) orb.Point {
	return orb.Point{p[0] - d.box.Min[0] + margin, d.box.Max[1] - p[1] + margin}
}

func (d *drawing) writeTo(w io.Writer, title string) error {
	_, err := fmt.Fprintf(w, `<?xml version="1.0" encoding="UTF-8"?>
<svg xmlns="http://www.w3.org/2000/svg" version="1.1" width="%[1]smm" height="%[2]smm" viewBox="0 0 %[1]s %[2]s">
<title>%[3]s</title>
<style>%[4]s</style>
%[5]s</svg>
`, number(d.width()), number(d.height()), escaped(title), style, d.body.String())
	return err
}

// path draws a line; one that ends where it begins is closed.
func (d *drawing) path(class string, line []orb.Point) {
	if len(line) < 2 {
		return
	}
	closed := line[0] == line[len(line)-1]
	if closed {
		line = line[:len(line)-1]
	}
	var data strings.Builder
	for i, p := range line {
		q := d.at(p)
		fmt.Fprintf(&data, "%c%s %s", "ML"[min(i, 1)], number(q[0]), number(q[1]))
	}
	if closed {
		data.WriteByte('Z')
	}
	fmt.Fprintf(&d.body, "<path class=\"%s\" d=\"%s\"/>\n", class, data.String())
}

// text writes centred on a point of the drawing, turned counter-clockwise.
func (d *drawing) text(at orb.Point, size, degrees float64, words string) {
	fmt.Fprintf(&d.body, "<text x=\"%s\" y=\"%s\" font-size=\"%s\" text-anchor=\"middle\"", number(at[0]), number(at[1]), number(size))
	if degrees != 0 {
		fmt.Fprintf(&d.body, " transform=\"rotate(%s %s %s)\"", number(-degrees), number(at[0]), number(at[1]))
	}
	fmt.Fprintf(&d.body, ">%s</text>\n", escaped(words))
}

func (d *drawing) ruler() {
	y := d.height() - margin
	fmt.Fprintf(&d.body, "<path class=\"ruler\" d=\"M%d %sV%sH%dV%s\"/>\n",
		margin, number(y-4), number(y), margin+ruler, number(y-4))
	d.text(orb.Point{margin + ruler/2, y - 2}, 5, 0, "check the print: 100 mm")
}

// number prints a coordinate to 0.001 mm.
func number(x float64) string {
	text := strings.TrimRight(fmt.Sprintf("%.3f", x), "0")
	text = strings.TrimSuffix(text, ".")
	if text == "-0" {
		return "0"
	}
	return text
}
