package drawing

import (
	"math"
	"strconv"
	"strings"

	"github.com/paulmach/orb"

	"ellwand/pieces"
)

// curvesOf is the SVG path of a chain of curves, each drawn exactly.
func curvesOf(path pieces.Path) string {
	var b strings.Builder
	b.WriteString("M" + pair(path.Start()))
	for _, c := range path {
		writeCurve(&b, c)
	}
	return b.String()
}

func pair(p orb.Point) string { return thousandths.Pair(p) }

func writeCurve(b *strings.Builder, c pieces.Curve) {
	switch c := c.(type) {
	case pieces.Arc:
		writeArc(b, c)
	case pieces.Bezier:
		b.WriteString("C" + pair(c.P1) + " " + pair(c.P2) + " " + pair(c.P3))
	default:
		for _, p := range c.Flatten(curveTolerance)[1:] {
			b.WriteString("L" + pair(p))
		}
	}
}

// writeArc writes arcs of at most half a circle, as SVG cannot tell a whole
// circle from a point.
func writeArc(b *strings.Builder, a pieces.Arc) {
	n := int(math.Ceil(math.Abs(a.Sweep) / (math.Pi * 0.99)))
	sweep := "0"
	if a.Sweep > 0 {
		sweep = "1"
	}
	for i := 1; i <= n; i++ {
		end := a.At(float64(i) / float64(n))
		b.WriteString("A" + number(a.Radius) + " " + number(a.Radius) + " 0 0 " + sweep + " " + pair(end))
	}
}

// Rounding of figures in a path of SVG: to so many parts of a millimetre.
type Rounding float64

// thousandths of a millimetre: what a picture is written to.
const thousandths Rounding = 1000

// Number is a figure without idle zeros.
func (r Rounding) Number(x float64) string {
	return strconv.FormatFloat(math.Round(x*float64(r))/float64(r)+0, 'f', -1, 64)
}

// Pair is a point.
func (r Rounding) Pair(p orb.Point) string { return r.Number(p[0]) + " " + r.Number(p[1]) }

// Chain of straight lines; of a closed one the last point is the first.
func (r Rounding) Chain(line []orb.Point, closed bool) string {
	var b strings.Builder
	last := len(line)
	if closed {
		last--
	}
	for i, p := range line[:last] {
		b.WriteByte("ML"[min(i, 1)])
		b.WriteString(r.Pair(p))
	}
	if closed {
		b.WriteByte('Z')
	}
	return b.String()
}

func number(x float64) string { return thousandths.Number(x) }
