package search

import (
	"math"
	"slices"
)

// span is the range of a coordinate of a piece's centre, with the lattice it
// is bound to, if any.
type span struct{ low, high, period, offset float64 }

// snap returns the nearest allowed value.
func (r span) snap(v float64) float64 {
	if r.period > 0 {
		v = r.offset + float64(math.Round((v-r.offset)/r.period)*r.period)
		if v < r.low-float64(1e-9*r.period) {
			v = r.offset + float64(math.Ceil((r.low-r.offset)/r.period-1e-9)*r.period)
		}
		if v > r.high+float64(1e-9*r.period) {
			v = r.offset + float64(math.Floor((r.high-r.offset)/r.period+1e-9)*r.period)
		}
		return v
	}
	return max(r.low, min(r.high, v))
}

// empty reports whether no value is allowed.
func (r span) empty() bool {
	slack := float64(1e-9 * (math.Abs(r.low) + math.Abs(r.high)))
	if r.high < r.low-slack {
		return true
	}
	if r.period <= 0 {
		return false
	}
	first := r.offset + float64(math.Ceil((r.low-r.offset)/r.period-1e-9)*r.period)
	return first > r.high+slack
}

// spans returns the ranges of the centre of piece i in a shape.
func (s *state) spans(i, shape int) (x, y span) {
	p, sh := &s.m.Pieces[i], &s.m.Shapes[shape]
	x.low, x.high = s.m.RangeX(shape, s.length)
	y.low, y.high = s.m.RangeY(shape)
	x.period, x.offset = p.PeriodX, sh.OffsetX
	y.period, y.offset = p.PeriodY, sh.OffsetY
	return x, y
}

// fits reports whether a shape of piece i has any place on the strip.
func (s *state) fits(i, shape int) bool {
	x, y := s.spans(i, shape)
	return !x.empty() && !y.empty()
}

// possible reports whether every piece has a place on a strip of the length.
func (s *state) possible(length float64) bool {
	kept := s.length
	defer func() { s.length = kept }()
	s.length = length
	for i := range s.pieces {
		if !slices.ContainsFunc(s.m.Pieces[i].Shapes, func(shape int) bool { return s.fits(i, shape) }) {
			return false
		}
	}
	return true
}

// clamp returns the nearest spot on the strip, in another shape where this
// one has none.
func (s *state) clamp(i int, at Spot) Spot {
	if !s.fits(i, at.Shape) {
		at.Shape = s.pick(i)
	}
	x, y := s.spans(i, at.Shape)
	return Spot{Shape: at.Shape, X: x.snap(at.X), Y: y.snap(at.Y)}
}

// allowed reports whether piece i may take the shape now: pieces of a group
// share its direction.
func (s *state) allowed(i, shape int) bool {
	group := s.m.Pieces[i].Group
	if group == 0 {
		return true
	}
	direction, set := s.direction[group]
	return !set || s.m.Shapes[shape].Direction == direction
}

// pick returns a random shape that piece i may take and that fits; where none
// fits, one that it may take.
func (s *state) pick(i int) int {
	shapes := s.m.Pieces[i].Shapes
	start := s.rng.IntN(len(shapes))
	may := shapes[start]
	for k := range shapes {
		shape := shapes[(start+k)%len(shapes)]
		if !s.allowed(i, shape) {
			continue
		}
		if s.fits(i, shape) {
			return shape
		}
		may = shape
	}
	return may
}

// sampleUniform returns a random spot on the strip.
func (s *state) sampleUniform(i int) Spot {
	shape := s.pick(i)
	x, y := s.spans(i, shape)
	return Spot{
		Shape: shape,
		X:     x.snap(x.low + float64(s.rng.Float64()*(x.high-x.low))),
		Y:     y.snap(y.low + float64(s.rng.Float64()*(y.high-y.low))),
	}
}

// sampleNear returns a random spot within half the piece's box of where it lies.
func (s *state) sampleNear(i int) Spot {
	b := &s.bodies[i]
	shape := int(b.shape)
	if s.rng.IntN(3) == 0 {
		shape = s.pick(i)
	}
	return s.clamp(i, Spot{
		Shape: shape,
		X:     b.x + float64((s.rng.Float64()-0.5)*2*b.hx),
		Y:     b.y + float64((s.rng.Float64()-0.5)*2*b.hy),
	})
}
