package pdfin

import (
	"fmt"
	"math"

	"github.com/paulmach/orb"

	"ellwand/pieces"
	"ellwand/pieces/linework"
)

// state is what q keeps and Q brings back.
type state struct {
	by           pieces.Motion // to mm of the page
	width        float64
	dashes       []float64
	stroke, fill string
	clip         orb.Bound // mm of the page
	font         *font
	size         float64
}

func (s state) scale() float64 { return math.Sqrt(math.Abs(s.by.A*s.by.D - s.by.B*s.by.C)) }

// pen of lines that are drawn, filled, or both.
func (s state) pen(stroked, filled bool) linework.Pen {
	pen := linework.Pen{}
	if stroked {
		pen.Colour, pen.Width = s.stroke, s.width*s.scale()
		for _, d := range s.dashes {
			pen.Dashes = append(pen.Dashes, d*s.scale())
		}
	}
	if filled {
		pen.Fill = s.fill
	}
	return pen
}

// shower draws a page.
type shower struct {
	d      *document
	layers map[int]layer
	out    *linework.Drawing
	index  int // of the page
	state
	kept  []state
	marks []layer // of marked content that is open
	chain *linework.Chain
	// clipping says that the path is to become the clip once it is drawn.
	clipping bool
	lettering
	showing []int // forms that are being shown, by the numbers of their objects
}

func newShower(d *document, layers map[int]layer, out *linework.Drawing, index int) *shower {
	return &shower{d: d, layers: layers, out: out, index: index}
}

// lettering is where text has come to.
type lettering struct {
	line, at pieces.Motion // the beginning of the line, and of the next words
	leading  float64
	fonts    map[string]*font
}

func matrix(m []float64) pieces.Motion {
	return pieces.Motion{A: m[0], C: m[1], B: m[2], D: m[3], E: m[4], F: m[5]}
}

const black = "#000000"

// colour of one, three or four parts (grey, red-green-blue, cyan-magenta-yellow-black);
// black of any other.
func colour(parts []float64) string {
	part := func(x float64) int { return int(math.Round(255 * min(max(x, 0), 1))) }
	switch len(parts) {
	case 1:
		return fmt.Sprintf("#%02x%02[1]x%02[1]x", part(parts[0]))
	case 3:
		return fmt.Sprintf("#%02x%02x%02x", part(parts[0]), part(parts[1]), part(parts[2]))
	case 4:
		k := 1 - parts[3]
		return fmt.Sprintf("#%02x%02x%02x", part((1-parts[0])*k), part((1-parts[1])*k), part((1-parts[2])*k))
	}
	return black
}

func common(a, b orb.Bound) orb.Bound {
	return orb.Bound{
		Min: orb.Point{math.Max(a.Min[0], b.Min[0]), math.Max(a.Min[1], b.Min[1])},
		Max: orb.Point{math.Min(a.Max[0], b.Max[0]), math.Min(a.Max[1], b.Max[1])},
	}
}
