package nofit

import "math"

// lineInBox cuts the border line of a half-plane to a box.
func lineInBox(p plane, x0, y0, x1, y1 float64) (Segment, bool) {
	// A point on the line near the box, and its direction.
	cx, cy := (x0+x1)/2, (y0+y1)/2
	away := float64(p.nx*cx) + float64(p.ny*cy) - p.c
	px, py := cx-float64(away*p.nx), cy-float64(away*p.ny)
	dx, dy := -p.ny, p.nx
	low, high := math.Inf(-1), math.Inf(1)
	low, high = slab(px, dx, x0, x1, low, high)
	low, high = slab(py, dy, y0, y1, low, high)
	if low >= high {
		return Segment{}, false
	}
	return Segment{px + float64(low*dx), py + float64(low*dy), px + float64(high*dx), py + float64(high*dy)}, true
}

// slab narrows the range of t in which a <= p + t*d <= b.
func slab(p, d, a, b, low, high float64) (float64, float64) {
	if math.Abs(d) < 1e-14 {
		if p < a || p > b {
			return 1, 0
		}
		return low, high
	}
	t0, t1 := (a-p)/d, (b-p)/d
	if t0 > t1 {
		t0, t1 = t1, t0
	}
	return max(low, t0), min(high, t1)
}

// keepInside cuts a segment to a half-plane widened by the inset.
func (s Segment) keepInside(p plane, inset float64) (Segment, bool) {
	d1 := float64(p.nx*s.X1) + float64(p.ny*s.Y1) - p.c - inset
	d2 := float64(p.nx*s.X2) + float64(p.ny*s.Y2) - p.c - inset
	if d1 >= 0 && d2 >= 0 {
		return s, false
	}
	if d1 < 0 && d2 < 0 {
		return s, true
	}
	m := d1 / (d1 - d2)
	x, y := s.X1+float64(m*(s.X2-s.X1)), s.Y1+float64(m*(s.Y2-s.Y1))
	if d1 > 0 {
		return Segment{x, y, s.X2, s.Y2}, true
	}
	return Segment{s.X1, s.Y1, x, y}, true
}

// minus appends what is left of a segment outside the meeting of half-planes
// that are drawn in by the inset.
func (s Segment) minus(planes []plane, inset float64, to []Segment) []Segment {
	low, high := 0.0, 1.0
	for i := range planes {
		p := &planes[i]
		d1 := float64(p.nx*s.X1) + float64(p.ny*s.Y1) - p.c + inset
		d2 := float64(p.nx*s.X2) + float64(p.ny*s.Y2) - p.c + inset
		switch {
		case d1 >= 0 && d2 >= 0:
			return append(to, s)
		case d1 >= 0:
			low = max(low, d1/(d1-d2))
		case d2 >= 0:
			high = min(high, d1/(d1-d2))
		}
	}
	if low >= high {
		return append(to, s)
	}
	if low > 0 {
		to = append(to, s.part(0, low))
	}
	if high < 1 {
		to = append(to, s.part(high, 1))
	}
	return to
}

func (s Segment) part(a, b float64) Segment {
	dx, dy := s.X2-s.X1, s.Y2-s.Y1
	return Segment{s.X1 + float64(a*dx), s.Y1 + float64(a*dy), s.X1 + float64(b*dx), s.Y1 + float64(b*dy)}
}

// squared distance from a point to the segment.
func (s Segment) squared(x, y float64) float64 {
	dx, dy := s.X2-s.X1, s.Y2-s.Y1
	px, py := x-s.X1, y-s.Y1
	length := float64(dx*dx) + float64(dy*dy)
	t := 0.0
	if length > 0 {
		t = max(0, min(1, (float64(px*dx)+float64(py*dy))/length))
	}
	px, py = px-float64(t*dx), py-float64(t*dy)
	return float64(px*px) + float64(py*py)
}
