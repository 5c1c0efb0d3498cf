package drawing

import (
	"bufio"
	"fmt"
	"io"
	"math"

	"github.com/paulmach/orb"

	"ellwand/pieces/geometry"
)

// PlotterUnit is the step of an HP-GL/2 plotter in mm: 1/1016 in
// [source.HPGL2].
const PlotterUnit = 25.4 / 1016

// WriteHPGL writes the lines of a page for a plotter, with the commands IN,
// SP, PU, PD and PA of HP-GL/2 alone, so that any plotter follows. x runs to
// the right, y up from the lower left corner of the page. Places are rounded
// to a plotter unit. A pen fills no areas and has one width: areas are left
// out, unless they are black, which are drawn as their outline, and so are
// letters. Dashes are drawn as strokes.
func WriteHPGL(w io.Writer, page Page) error {
	buffer := bufio.NewWriter(w)
	out := &plotWriter{Writer: buffer, height: page.Height}
	buffer.WriteString("IN;SP1;PA;\n")
	out.draw(&page.Picture, orb.Point{}, orb.Bound{Max: orb.Point{page.Width, page.Height}})
	buffer.WriteString("PU;PU0,0;SP0;\n")
	return buffer.Flush()
}

type plotWriter struct {
	*bufio.Writer
	height float64
}

func (w *plotWriter) draw(picture *Picture, shift orb.Point, box orb.Bound) {
	for _, it := range picture.items {
		if !seen(it, shift, box) {
			continue
		}
		switch it := it.(type) {
		case stroke:
			for _, line := range dashed(geometry.Moved(it.line, shift), it.pen.Dashes) {
				w.clipped(line, box)
			}
		case area:
			if it.grey == 0 {
				w.clipped(append(geometry.Moved(it.ring, shift), geometry.Moved(it.ring[:1], shift)...), box)
			}
		case Text:
			if it.Grey == 255 {
				continue
			}
			it.At = geometry.Add(it.At, shift)
			for _, ring := range it.outlines() {
				w.clipped(ring, box)
			}
		case window:
			w.draw(it.picture, geometry.Add(shift, it.shift), geometry.Common(box, movedBox(it.box, shift)))
		}
	}
}

func (w *plotWriter) clipped(line []orb.Point, box orb.Bound) {
	for _, part := range clippedLine(line, box) {
		w.plot(part)
	}
}

// pointsPerCommand keeps commands short: old plotters read a line at a time.
const pointsPerCommand = 50

func (w *plotWriter) plot(line []orb.Point) {
	x, y := w.units(line[0])
	fmt.Fprintf(w, "PU%d,%d;", x, y)
	written := 0
	for i, p := range line[1:] {
		nextX, nextY := w.units(p)
		if nextX == x && nextY == y && i < len(line)-2 {
			continue
		}
		x, y = nextX, nextY
		switch {
		case written == 0:
			w.WriteString("PD")
		case written%pointsPerCommand == 0:
			w.WriteString(";\nPD")
		default:
			w.WriteByte(',')
		}
		fmt.Fprintf(w, "%d,%d", x, y)
		written++
	}
	w.WriteString(";\n")
}

func (w *plotWriter) units(p orb.Point) (x, y int) {
	return int(math.Round(p[0] / PlotterUnit)), int(math.Round((w.height - p[1]) / PlotterUnit))
}
