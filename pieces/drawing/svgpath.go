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

func pair(p orb.Point) string { return number(p[0]) + " " + number(p[1]) }

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

// number prints to a thousandth of a millimetre, without idle zeros.
func number(x float64) string {
	return strconv.FormatFloat(math.Round(x*1000)/1000+0, 'f', -1, 64)
}
