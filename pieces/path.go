package pieces

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/pieces/geometry"
)

// Start of the path. An empty path starts and ends at (0, 0).
func (p Path) Start() orb.Point {
	if len(p) == 0 {
		return orb.Point{}
	}
	return p[0].Start()
}

// End of the path.
func (p Path) End() orb.Point {
	if len(p) == 0 {
		return orb.Point{}
	}
	return p[len(p)-1].End()
}

// Length of the whole path in mm, within 1e-6 a curve.
func (p Path) Length() float64 {
	sum := 0.0
	for _, c := range p {
		sum += c.Length()
	}
	return sum
}

// At returns the point that lies the distance (mm) along the path from its
// start. A distance outside the path gives the nearer end.
func (p Path) At(distance float64) orb.Point {
	c, t, ok := p.locate(distance)
	if !ok {
		return orb.Point{}
	}
	return c.At(t)
}

// Tangent is the unit direction of travel at the distance (mm) along the
// path. Where two curves meet it is that of the second.
func (p Path) Tangent(distance float64) orb.Point {
	c, t, ok := p.locate(distance)
	if !ok {
		return orb.Point{}
	}
	return c.Tangent(t)
}

// locate finds the curve and its parameter at a distance along the path.
func (p Path) locate(distance float64) (Curve, float64, bool) {
	if len(p) == 0 {
		return nil, 0, false
	}
	for i, c := range p {
		length := c.Length()
		if distance < length || i == len(p)-1 {
			return c, parameterAt(c, math.Min(math.Max(distance, 0), length), length), true
		}
		distance -= length
	}
	return nil, 0, false
}

// parameterAt finds the parameter at which a curve is so long. Lines and arcs
// run evenly; a Bezier is searched by Newton's method, kept between bounds.
func parameterAt(c Curve, distance, length float64) float64 {
	if length <= 0 || distance <= 0 {
		return 0
	}
	if distance >= length {
		return 1
	}
	t := distance / length
	b, ok := c.(Bezier)
	if !ok {
		return t
	}
	low, high := 0.0, 1.0
	for range 60 {
		excess := b.lengthTo(t) - distance
		if math.Abs(excess) < 1e-9 {
			return t
		}
		if excess > 0 {
			high = t
		} else {
			low = t
		}
		next := t - excess/b.speed(t)
		if !(next > low && next < high) {
			next = (low + high) / 2
		}
		t = next
	}
	return t
}

// Flatten returns points from start to end whose chords stay within the
// tolerance (mm) of the path. A tolerance below 1e-4 mm counts as 1e-4.
func (p Path) Flatten(tolerance float64) orb.LineString {
	var out orb.LineString
	for i, c := range p {
		points := c.Flatten(tolerance)
		if i > 0 {
			points = points[1:]
		}
		out = append(out, points...)
	}
	return out
}

// Reverse runs the other way.
func (p Path) Reverse() Path {
	out := make(Path, len(p))
	for i, c := range p {
		out[len(p)-1-i] = c.Reverse()
	}
	return out
}

// Map moves every curve.
func (p Path) Map(m Motion) Path {
	if p == nil {
		return nil
	}
	out := make(Path, len(p))
	for i, c := range p {
		out[i] = c.Map(m)
	}
	return out
}

// isStraight reports whether the path runs in one straight line, within 0.001
// mm and never backwards.
func (p Path) isStraight() bool {
	from, to := p.Start(), p.End()
	last := 0.0
	for _, q := range p.Flatten(joinTolerance) {
		along := geometry.Dot(geometry.Sub(q, from), geometry.Unit(geometry.Sub(to, from)))
		if geometry.SegmentDistance(q, from, to) > joinTolerance || along < last-joinTolerance {
			return false
		}
		last = along
	}
	return len(p) > 0 && from != to
}

// apart drops points that repeat the one before, within 1e-9 mm.
func apart(points []orb.Point) []orb.Point {
	var out []orb.Point
	for _, q := range points {
		if len(out) == 0 || geometry.Distance(out[len(out)-1], q) > 1e-9 {
			out = append(out, q)
		}
	}
	return out
}

func isValid(path Path) bool {
	for _, c := range path {
		if c == nil {
			return false
		}
		if a, ok := c.(Arc); ok && (!(a.Radius > 0) || math.Abs(a.Sweep) > 2*math.Pi+1e-9) {
			return false
		}
		for _, t := range []float64{0, 0.3, 0.7, 1} {
			if q := c.At(t); !finite(q[0], q[1]) {
				return false
			}
		}
	}
	length := path.Length()
	return length > joinTolerance && finite(length)
}
