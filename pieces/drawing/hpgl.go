package drawing

import (
	"bufio"
	"fmt"
	"io"
	"math"

	"github.com/paulmach/orb"
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
			for _, line := range dashed(moved(it.line, shift), it.pen.Dashes) {
				w.clipped(line, box)
			}
		case area:
			if it.grey == 0 {
				w.clipped(append(moved(it.ring, shift), moved(it.ring[:1], shift)...), box)
			}
		case Text:
			if it.Grey == 255 {
				continue
			}
			it.At = orb.Point{it.At[0] + shift[0], it.At[1] + shift[1]}
			for _, ring := range it.outlines() {
				w.clipped(ring, box)
			}
		case window:
			w.draw(it.picture, orb.Point{shift[0] + it.shift[0], shift[1] + it.shift[1]}, common(box, movedBox(it.box, shift)))
		}
	}
}

func common(a, b orb.Bound) orb.Bound {
	return orb.Bound{
		Min: orb.Point{math.Max(a.Min[0], b.Min[0]), math.Max(a.Min[1], b.Min[1])},
		Max: orb.Point{math.Min(a.Max[0], b.Max[0]), math.Min(a.Max[1], b.Max[1])},
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
