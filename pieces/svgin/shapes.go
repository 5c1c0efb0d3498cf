package svgin

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/pieces"
	"ellwand/pieces/linework"
)

// shapes draw the basic shapes [source.SVG].
var shapes = map[string]func(n *node, v view, chain *linework.Chain) error{
	"path": func(n *node, _ view, chain *linework.Chain) error {
		if err := pathData(n.attr["d"], chain); err != nil {
			return n.fault("d", err)
		}
		return nil
	},
	"line":     drawLine,
	"polyline": func(n *node, _ view, chain *linework.Chain) error { return drawPoints(n, chain, false) },
	"polygon":  func(n *node, _ view, chain *linework.Chain) error { return drawPoints(n, chain, true) },
	"rect":     drawRectangle,
	"circle":   drawCircle,
	"ellipse":  drawEllipse,
}

// measure is a length of an element, and which whole a percentage is of.
type measure struct {
	into  *float64
	key   string
	whole float64
}

func (n *node) measures(all ...measure) error {
	for _, m := range all {
		x, err := n.length(m.key, m.whole)
		if err != nil {
			return err
		}
		*m.into = x
	}
	return nil
}

func drawLine(n *node, v view, chain *linework.Chain) error {
	var a, b orb.Point
	err := n.measures(measure{&a[0], "x1", v.width}, measure{&a[1], "y1", v.height}, measure{&b[0], "x2", v.width},
		measure{&b[1], "y2", v.height})
	chain.MoveTo(a)
	chain.LineTo(b)
	return err
}

func drawPoints(n *node, chain *linework.Chain, closed bool) error {
	list, err := numbers(n.attr["points"])
	if err != nil {
		return n.fault("points", err)
	}
	if len(list)%2 != 0 {
		return n.fault("points", &linework.Fault{Of: linework.PointHalf})
	}
	for i := 0; i < len(list); i += 2 {
		p := orb.Point{list[i], list[i+1]}
		if i == 0 {
			chain.MoveTo(p)
		} else {
			chain.LineTo(p)
		}
	}
	if closed {
		chain.Close()
	}
	return nil
}

func drawRectangle(n *node, v view, chain *linework.Chain) error {
	var x, y, width, height, rx, ry float64
	err := n.measures(measure{&x, "x", v.width}, measure{&y, "y", v.height}, measure{&width, "width", v.width},
		measure{&height, "height", v.height}, measure{&rx, "rx", v.width}, measure{&ry, "ry", v.height})
	if err != nil || width <= 0 || height <= 0 {
		return err
	}
	if rx <= 0 {
		rx = ry
	}
	if ry <= 0 {
		ry = rx
	}
	rx, ry = min(max(rx, 0), width/2), min(max(ry, 0), height/2)
	turn := func(px, py float64) { ellipticArc(chain, rx, ry, 0, false, true, orb.Point{px, py}) }
	chain.MoveTo(orb.Point{x + rx, y})
	chain.LineTo(orb.Point{x + width - rx, y})
	turn(x+width, y+ry)
	chain.LineTo(orb.Point{x + width, y + height - ry})
	turn(x+width-rx, y+height)
	chain.LineTo(orb.Point{x + rx, y + height})
	turn(x, y+height-ry)
	chain.LineTo(orb.Point{x, y + ry})
	turn(x+rx, y)
	chain.Close()
	return nil
}

func drawCircle(n *node, v view, chain *linework.Chain) error {
	var x, y, r float64
	err := n.measures(measure{&x, "cx", v.width}, measure{&y, "cy", v.height}, measure{&r, "r", v.diagonal()})
	drawRound(chain, x, y, r, r)
	return err
}

func drawEllipse(n *node, v view, chain *linework.Chain) error {
	var x, y, rx, ry float64
	err := n.measures(measure{&x, "cx", v.width}, measure{&y, "cy", v.height}, measure{&rx, "rx", v.width},
		measure{&ry, "ry", v.height})
	drawRound(chain, x, y, rx, ry)
	return err
}

// drawRound draws a whole ellipse in two halves.
func drawRound(chain *linework.Chain, x, y, rx, ry float64) {
	if !(rx > 0 && ry > 0) {
		return
	}
	chain.MoveTo(orb.Point{x + rx, y})
	for _, begin := range []float64{0, math.Pi} {
		if rx == ry {
			chain.ArcTo(pieces.Arc{Centre: orb.Point{x, y}, Radius: rx, Begin: begin, Sweep: math.Pi})
			continue
		}
		chain.EllipseTo(pieces.Motion{A: rx, D: ry, E: x, F: y}, begin, math.Pi)
	}
	chain.Close()
}
