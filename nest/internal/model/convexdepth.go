package model

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/nest/internal/convex"
)

// DirectOverlap reports whether DirectDepth is positive. It is several times
// faster where the shapes overlap deeply or lie apart.
func (m *Model) DirectOverlap(a, b int, dx, dy float64) bool {
	plain, others := m.facing(a, b)
	for i := range plain {
		for j := range others {
			p, o := &plain[i], &others[j]
			x, y := o.centre[0]+dx-p.centre[0], o.centre[1]+dy-p.centre[1]
			reach := p.radius + o.radius - m.Touch
			if reach > 0 && float64(x*x)+float64(y*y) < reach*reach || partDepth(p, o, dx, dy, m.Touch) > m.Touch {
				return true
			}
		}
	}
	return false
}

// facing returns the parts of a, and those of b grown by the gap to be kept.
func (m *Model) facing(a, b int) (plain, others []part) {
	if m.Bases[m.Shapes[a].Base].Obstacle || m.Bases[m.Shapes[b].Base].Obstacle {
		return m.solids[a].plain, m.solids[b].plain
	}
	return m.solids[a].plain, m.solids[b].grown
}

// DirectDepth returns how deeply shape b at an offset from shape a overlaps
// it, without a table: for each two convex parts the least overlap along the
// normals of their sides (the separating axes), and of those the greatest. A
// look-up in a table is far faster, but a table takes a thousand look-ups to make.
func (m *Model) DirectDepth(a, b int, dx, dy float64) float64 {
	plain, others := m.facing(a, b)
	deepest := m.Touch
	for i := range plain {
		for j := range others {
			if d := partDepth(&plain[i], &others[j], dx, dy, deepest); d > deepest {
				deepest = d
			}
		}
	}
	if deepest <= m.Touch {
		return 0
	}
	return deepest
}

// partDepth returns the depth of b, moved by (dx, dy), in a, or anything up
// to enough when it is no deeper than that.
func partDepth(a, b *part, dx, dy, enough float64) float64 {
	least := min(a.hi[0]-b.lo[0]-dx, b.hi[0]+dx-a.lo[0], a.hi[1]-b.lo[1]-dy, b.hi[1]+dy-a.lo[1])
	if least <= enough {
		return least
	}
	least, done := leastAlong(a.sides, b, dx, dy, least, enough)
	if done {
		return least
	}
	least, _ = leastAlong(b.sides, a, -dx, -dy, least, enough)
	return least
}

// leastAlong returns the least of so much and of the depths of o, moved by (dx, dy), along
// the normals of sides, and whether that is enough. The corners are not looked at where
// the disc in o lies deeper: building a layout takes a fifth less time by that.
func leastAlong(sides []convex.Side, o *part, dx, dy, least, enough float64) (float64, bool) {
	x, y := o.centre[0]+dx, o.centre[1]+dy
	for k := range sides {
		e := &sides[k]
		if e.C-float64(e.NX*x)-float64(e.NY*y)+o.radius >= least {
			continue
		}
		if d := e.C - float64(e.NX*dx) - float64(e.NY*dy) - lowest(o.points, e.NX, e.NY); d < least {
			if least = d; least <= enough {
				return least, true
			}
		}
	}
	return least, false
}

// lowest returns the least n . p over the points.
func lowest(points []orb.Point, nx, ny float64) float64 {
	least := math.MaxFloat64
	for _, p := range points {
		if v := float64(nx*p[0]) + float64(ny*p[1]); v < least {
			least = v
		}
	}
	return least
}
