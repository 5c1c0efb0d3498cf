package nofit

import "math"

// Signed returns the depth at an offset and its gradient, which is the
// direction in which the overlap grows, of length 1 near the boundary. Where
// the outlines are apart it is about how far, as a negative depth.
func (t *Table) Signed(x, y float64) (depth, gx, gy float64) {
	outX, outY := math.Abs(x)-t.HalfX, math.Abs(y)-t.HalfY
	if outX >= 0 || outY >= 0 {
		if outX > outY {
			return -outX, -math.Copysign(1, x), 0
		}
		return -outY, 0, -math.Copysign(1, y)
	}
	fx, fy := (x+t.startX)*t.scale, (y+t.startY)*t.scale
	ix, iy := int(fx), int(fy)
	c := &t.cells[iy*t.nx+ix]
	// Inside, outlines overlap by more than touching, however little.
	depth = 2 * t.limit
	if c.class >= firstList {
		if depth, gx, gy = t.exactSigned(c.class-firstList, x, y); depth <= t.limit {
			return depth, gx, gy
		}
	}
	u, v := fx-float64(ix), fy-float64(iy)
	c0, c1, c2, c3 := float64(c.corners[0]), float64(c.corners[1]), float64(c.corners[2]), float64(c.corners[3])
	low, high := c0+u*(c1-c0), c2+u*(c3-c2)
	between := (low + v*(high-low)) * t.unit
	if c.class >= firstList && between <= depth {
		return depth, gx, gy
	}
	if c.class == clear {
		depth = min(between, 0)
	} else {
		depth = max(between, depth)
	}
	per := t.unit * t.scale
	return depth, (c1 - c0 + v*(c3-c2-c1+c0)) * per, (high - low) * per
}

// exactSigned is exactDepth with its gradient, and goes on outside: the part
// sum that is deepest, or least far away, decides.
func (t *Table) exactSigned(first int32, x, y float64) (depth, gx, gy float64) {
	least := math.MaxFloat64
	depth = -math.MaxFloat64
	planes := t.planes[first:]
	var nearest *plane
	for k := range planes {
		p := &planes[k]
		if away := p.c - p.nx*x - p.ny*y; away < least {
			least, nearest = away, p
		}
		if p.closes == 0 {
			continue
		}
		if least > depth {
			depth, gx, gy = least, -nearest.nx, -nearest.ny
		}
		if p.closes == closesList {
			break
		}
		least = math.MaxFloat64
	}
	return depth, gx, gy
}
