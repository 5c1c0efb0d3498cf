package svg

import (
	"math"
	"strconv"
	"strings"

	"github.com/paulmach/orb"

	"ellwand/pieces"
	"ellwand/pieces/drawing"
)

// tenThousandths of a millimetre are what a pattern is written to: it is read back, and
// is no further off than it was.
const tenThousandths drawing.Rounding = 1e4

func number(x float64) string { return tenThousandths.Number(x) }

func pair(p orb.Point) string { return tenThousandths.Pair(p) }

// chain of straight lines, closed where its last point is the first.
func chain(points []orb.Point) string {
	last := len(points) - 1
	return tenThousandths.Chain(points, last > 1 && points[0] == points[last])
}

// curves of a path, each drawn exactly.
func curves(path pieces.Path) string {
	var out strings.Builder
	out.WriteString("M" + pair(path.Start()))
	for _, c := range path {
		switch c := c.(type) {
		case pieces.Arc:
			writeArc(&out, c)
		case pieces.Bezier:
			out.WriteString("C" + pair(c.P1) + " " + pair(c.P2) + " " + pair(c.P3))
		default:
			out.WriteString("L" + pair(c.End()))
		}
	}
	return out.String()
}

// writeArc in halves, where it is more than half a circle. The radius is written in
// full: near half a circle the least of it moves the arc.
func writeArc(out *strings.Builder, a pieces.Arc) {
	if math.Abs(a.Sweep) > math.Pi+1e-9 {
		before, after := a.Split(0.5)
		for _, half := range []pieces.Curve{before, after} {
			if half, ok := half.(pieces.Arc); ok {
				writeArc(out, half)
			}
		}
		return
	}
	sweep := "0"
	if a.Sweep > 0 {
		sweep = "1"
	}
	radius := strconv.FormatFloat(a.Radius, 'g', 12, 64)
	out.WriteString("A" + radius + " " + radius + " 0 0 " + sweep + " " + pair(a.End()))
}
