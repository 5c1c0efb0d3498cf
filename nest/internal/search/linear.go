package search

import "math"

// linearize appends the planes of the neighbours that a piece at (x, y) overlaps,
// or may overlap within the reach.
func linearize(near []neighbour, x, y, reach float64, out []linear) []linear {
	for k := range near {
		v := &near[k]
		dx, dy := x-v.x, y-v.y
		if math.Abs(dx) >= v.hx+reach || math.Abs(dy) >= v.hy+reach {
			continue
		}
		depth, gx, gy := v.pair.signed(dx, dy)
		if depth > -reach*(math.Abs(gx)+math.Abs(gy)) {
			out = append(out, linear{depth, gx, gy, v.factor})
		}
	}
	return out
}

// window is the box of steps that may be taken. It holds the step (0, 0).
type window struct{ x0, y0, x1, y1 float64 }

// step is a move by (x, y) with its cost by the planes.
type step struct{ x, y, cost float64 }

// bestStep returns the step in the window that costs least by the planes. The
// sum of their positive parts is convex and piecewise plane: it is least where
// two of the lines on which a depth is zero cross, or on one that is left by
// the straight way out. The edges of the window are not looked at: that took a
// tenth of the time and gained nothing (nest/MEASURED.md). Straight out of one
// overlap comes first, and the first step that costs nothing is taken. A depth
// up to the slack is none.
func bestStep(all []linear, w window, slack float64) step {
	c := chooser{all, w, slack, step{cost: math.Inf(1)}}
	for k := range all {
		b := &all[k]
		if steep := float64(b.gx*b.gx) + float64(b.gy*b.gy); b.depth > 0 && steep > 0 {
			c.consider(-b.depth/steep*b.gx, -b.depth/steep*b.gy)
		}
	}
	for k := 0; k < len(all) && c.best.cost > 0; k++ {
		for j := range all[:k] {
			c.crossing(&all[k], &all[j])
		}
	}
	return c.best
}

// chooser keeps the best of the steps it is offered.
type chooser struct {
	all   []linear
	w     window
	slack float64
	best  step
}

// consider offers a step, drawn into the window.
func (c *chooser) consider(x, y float64) {
	x, y = max(c.w.x0, min(c.w.x1, x)), max(c.w.y0, min(c.w.y1, y))
	var cost float64
	for k := range c.all {
		b := &c.all[k]
		if d := b.depth + float64(b.gx*x) + float64(b.gy*y); d > c.slack {
			cost += float64(b.factor * d)
			if cost >= c.best.cost {
				return
			}
		}
	}
	c.best = step{x, y, cost}
}

// crossing offers the step that just ends two overlaps at once.
func (c *chooser) crossing(a, b *linear) {
	det := float64(a.gx*b.gy) - float64(a.gy*b.gx)
	if math.Abs(det) < 1e-9 {
		return
	}
	x, y := (float64(b.depth*a.gy)-float64(a.depth*b.gy))/det, (float64(a.depth*b.gx)-float64(b.depth*a.gx))/det
	if x >= c.w.x0 && x <= c.w.x1 && y >= c.w.y0 && y <= c.w.y1 {
		c.consider(x, y)
	}
}
