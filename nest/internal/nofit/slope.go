package nofit

import "math"

// Slope returns Depth and its gradient: the direction in which the overlap
// grows, of length 1 near the boundary.
func (t *Table) Slope(x, y float64) (depth, gx, gy float64) {
	if x <= -t.HalfX || x >= t.HalfX || y <= -t.HalfY || y >= t.HalfY {
		return 0, 0, 0
	}
	fx, fy := (x+t.startX)*t.scale, (y+t.startY)*t.scale
	ix, iy := int(fx), int(fy)
	c := &t.cells[iy*t.nx+ix]
	if c.class == clear {
		return 0, 0, 0
	}
	depth = 2 * t.limit
	if c.class >= firstList {
		if depth, gx, gy = t.exactSlope(c.class-firstList, x, y); depth <= t.limit {
			return 0, 0, 0
		}
	}
	u, v := fx-float64(ix), fy-float64(iy)
	c0, c1, c2, c3 := float64(c.corners[0]), float64(c.corners[1]), float64(c.corners[2]), float64(c.corners[3])
	low, high := c0+u*(c1-c0), c2+u*(c3-c2)
	between := (low + v*(high-low)) * t.unit
	if between <= depth {
		return depth, gx, gy
	}
	per := t.unit * t.scale
	return between, (c1 - c0 + v*(c3-c2-c1+c0)) * per, (high - low) * per
}

func (t *Table) exactSlope(list int32, x, y float64) (depth, gx, gy float64) {
	s := t.lists[list]
	least := math.MaxFloat64
	planes := t.planes[s.planes:s.planesEnd]
	var nearest *plane
	for k := range planes {
		p := &planes[k]
		if away := p.c - p.nx*x - p.ny*y; away < least {
			least, nearest = away, p
		}
		if !p.last {
			continue
		}
		if least > depth {
			depth, gx, gy = least, -nearest.nx, -nearest.ny
		}
		least = math.MaxFloat64
	}
	return depth, gx, gy
}
