package svg

import (
	"math"
	"strconv"
	"strings"

	"github.com/paulmach/orb"

	"ellwand/pieces"
)

// number prints to a thousandth of a millimetre, without idle zeros.
func number(x float64) string {
	return strconv.FormatFloat(math.Round(x*1000)/1000+0, 'f', -1, 64)
}

func pair(p orb.Point) string { return number(p[0]) + " " + number(p[1]) }

// chain is the SVG path of straight lines from point to point.
func chain(points []orb.Point) string {
	var b strings.Builder
	for i, p := range points {
		b.WriteByte("ML"[min(i, 1)])
		b.WriteString(pair(p))
	}
	return b.String()
}

// segments is the SVG path of separate straight lines, each from one point of
// a couple to the other.
func segments(ends ...orb.Point) string {
	var b strings.Builder
	for i, p := range ends {
		b.WriteByte("ML"[i%2])
		b.WriteString(pair(p))
	}
	return b.String()
}

// curves is the SVG path of a chain of curves, each drawn exactly.
func curves(path pieces.Path) string {
	var b strings.Builder
	b.WriteString("M" + pair(path.Start()))
	for _, c := range path {
		writeCurve(&b, c)
	}
	return b.String()
}

func writeCurve(b *strings.Builder, c pieces.Curve) {
	switch c := c.(type) {
	case pieces.Arc:
		writeArc(b, c)
	case pieces.Bezier:
		b.WriteString("C" + pair(c.P1) + " " + pair(c.P2) + " " + pair(c.P3))
	default:
		for _, p := range c.Flatten(tolerance)[1:] {
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
