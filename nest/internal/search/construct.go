package search

import (
	"math"
	"sort"
)

// constructSamples is the number of spots tried for each piece of a first
// layout: fewer in large sets, where it must come soon and is improved anyway.
func (s *state) constructSamples() int { return min(max(60_000/(s.pieces+1), 60), 300) }

// construct puts the pieces that have a start on it, then lays the others one
// by one, the largest hulls first, each at the sampled spot that ends farthest
// left. It returns the spots and the length used. On a sheet of fixed length,
// pieces that find no free spot are left overlapping. When it is to stop, those that are
// left come to stand in columns behind the others, which takes no time.
func (s *state) construct(start []*Spot, isStopped func() bool) ([]Spot, float64) {
	samples := s.constructSamples()
	s.prepareGrid()
	used := 0.0
	put := func(i int, at Spot) {
		s.bodies[i] = s.bodyAt(at)
		s.grid.add(i, &s.bodies[i])
		if group := s.m.Pieces[i].Group; group != 0 {
			s.direction[group] = s.m.Shapes[at.Shape].Direction
		}
		used = max(used, at.X+s.m.Shapes[at.Shape].HalfX)
	}
	for i, at := range start {
		if at != nil {
			put(i, s.clamp(i, *at))
		}
	}
	last := column{}
	for _, i := range s.largestFirst() {
		switch {
		case i < len(start) && start[i] != nil:
		case isStopped():
			put(i, s.inColumn(&last, i, used))
		default:
			put(i, s.leftmost(i, used, samples))
		}
	}
	return s.spots(), used
}

// prepareGrid empties the grid of all but the fixed shapes, on a strip long
// enough for any first layout.
func (s *state) prepareGrid() {
	s.length = s.m.Length
	if s.length == 0 {
		s.length = s.singleFile()
	}
	s.grid.empty(len(s.bodies), s.cellSize, s.length, s.m.Width)
	for i := s.pieces; i < len(s.bodies); i++ {
		s.grid.add(i, &s.bodies[i])
	}
}

// largestFirst orders the pieces by the area of their hulls.
func (s *state) largestFirst() []int {
	order := make([]int, s.pieces)
	for i := range order {
		order[i] = i
	}
	sort.SliceStable(order, func(a, b int) bool { return s.m.HullArea(order[a]) > s.m.HullArea(order[b]) })
	return order
}

// singleFile is a length that holds all pieces one behind the other, past
// everything fixed: pinned pieces may need it, however wide the strip.
func (s *state) singleFile() float64 {
	sum := 0.0
	for i := range s.pieces {
		sum += s.longest(i) + s.m.Gap + s.m.Pieces[i].PeriodX
	}
	past := 0.0
	for _, b := range s.bodies[s.pieces:] {
		past = max(past, b.x+b.hx)
	}
	return sum + past
}

func (s *state) longest(i int) float64 {
	most := 0.0
	for _, k := range s.m.Pieces[i].Shapes {
		most = max(most, 2*s.m.Shapes[k].HalfX)
	}
	return most
}

// leftmost samples spots for piece i within the length in use and one piece
// beyond, keeps the free one that ends farthest left, and slides it home.
func (s *state) leftmost(i int, used float64, samples int) Spot {
	best := evaluated{cost: math.Inf(1)}
	for k := 0; k < samples; k++ {
		shape := s.pick(i)
		x, y := s.spans(i, shape)
		sh := &s.m.Shapes[shape]
		high := min(x.high, used+sh.HalfX+x.period)
		if best.cost < math.Inf(1) {
			high = min(high, best.cost-sh.HalfX)
		}
		if high < x.low {
			continue
		}
		at := Spot{
			Shape: shape,
			X:     x.snap(x.low + float64(s.rng.Float64()*(high-x.low))),
			Y:     y.snap(y.low + float64(s.rng.Float64()*(y.high-y.low))),
		}
		end := at.X + sh.HalfX
		if end < best.cost && s.free(i, at) {
			best = evaluated{s.slide(i, at), 0}
			best.cost = best.at.X + sh.HalfX
		}
	}
	if math.IsInf(best.cost, 1) {
		return s.atEnd(i, used)
	}
	return best.at
}

// free reports whether piece i overlaps nothing on a spot.
func (s *state) free(i int, at Spot) bool {
	sh := &s.m.Shapes[at.Shape]
	hx, hy := sh.HalfX+s.m.Gap, sh.HalfY+s.m.Gap
	c := s.grid.box(at.X, at.Y, hx, hy)
	for cy := c.y0; cy <= c.y1; cy++ {
		for cx := c.x0; cx <= c.x1; cx++ {
			for _, j := range s.grid.cells[int(cy)*s.grid.nx+int(cx)] {
				b := &s.bodies[j]
				if int(j) == i || !b.near(at.X, at.Y, hx, hy) {
					continue
				}
				if s.pairs.of(int(b.shape), at.Shape).overlaps(at.X-b.x, at.Y-b.y) {
					return false
				}
			}
		}
	}
	return true
}

// slide moves a free piece left, then down, by halving steps.
func (s *state) slide(i int, at Spot) Spot {
	x, y := s.spans(i, at.Shape)
	for step := s.m.Shapes[at.Shape].HalfX; step > s.m.Width*1e-3; {
		next := Spot{Shape: at.Shape, X: x.snap(at.X - step), Y: at.Y}
		if next.X < at.X && s.free(i, next) {
			at = next
			continue
		}
		next = Spot{Shape: at.Shape, X: at.X, Y: y.snap(at.Y - step)}
		if next.Y < at.Y && s.free(i, next) {
			at = next
			continue
		}
		step /= 2
	}
	return at
}

// atEnd puts a piece past everything laid so far, or, on a sheet, anywhere.
func (s *state) atEnd(i int, used float64) Spot {
	shape := s.pick(i)
	x, y := s.spans(i, shape)
	at := Spot{Shape: shape, X: x.snap(used + s.m.Shapes[shape].HalfX + s.m.Gap + x.period), Y: y.snap(y.low)}
	for tries := 0; tries < 50 && !s.free(i, at); tries++ {
		at.X = x.snap(at.X + s.m.Shapes[shape].HalfX)
		at.Y = y.snap(y.low + float64(s.rng.Float64()*(y.high-y.low)))
	}
	return at
}

// column of pieces one over the other: from x on, free above y.
type column struct{ x, y float64 }

// inColumn puts a piece over those of the last column, or, where it does not fit there,
// into a new one behind all that is used.
func (s *state) inColumn(last *column, i int, used float64) Spot {
	shape := s.pick(i)
	x, y := s.spans(i, shape)
	sh := &s.m.Shapes[shape]
	at := Spot{Shape: shape, X: x.snap(last.x + sh.HalfX + x.period), Y: y.snap(max(y.low, last.y+sh.HalfY+y.period))}
	if last.y == 0 || at.Y > y.high || at.X > x.high || !s.free(i, at) {
		last.x = used + s.m.Gap
		at = s.atEnd(i, used)
	}
	last.y = at.Y + sh.HalfY + s.m.Gap
	return at
}
