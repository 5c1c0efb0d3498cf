package search

import (
	"math"
)

// gather appends the bodies that piece i, as the given shape, can overlap
// with its centre within reach of (x, y).
func (s *state) gather(i, shape int, x, y, reach float64, out []neighbour) []neighbour {
	sh := &s.m.Shapes[shape]
	hx, hy := sh.HalfX+s.m.Gap+reach, sh.HalfY+s.m.Gap+reach
	c := s.grid.box(x, y, hx, hy)
	if s.grid.whole(c) { // as grid sampling of small sets asks: BenchmarkGather 0.9 us for 1.9 by cells
		for j := range s.bodies {
			if b := &s.bodies[j]; j != i && b.near(x, y, hx, hy) {
				out = append(out, s.neighbour(i, shape, j))
			}
		}
		return out
	}
	for cy := c.y0; cy <= c.y1; cy++ {
		for cx := c.x0; cx <= c.x1; cx++ {
			for _, j := range s.grid.cells[int(cy)*s.grid.nx+int(cx)] {
				b := &s.bodies[j]
				if int(j) != i && b.near(x, y, hx, hy) && s.grid.owns(cx, cy, c, j) {
					out = append(out, s.neighbour(i, shape, int(j)))
				}
			}
		}
	}
	return out
}

// neighbour is body j as piece i meets it in the given shape.
func (s *state) neighbour(i, shape, j int) neighbour {
	b, sh := &s.bodies[j], &s.m.Shapes[shape]
	return neighbour{
		b.x, b.y, b.hx + sh.HalfX + s.m.Gap, b.hy + sh.HalfY + s.m.Gap,
		float64(float64(s.overlaps.weightsOf(i)[j]) * s.factor[j]), s.pairs.of(int(b.shape), shape), int32(j),
	}
}

// costAmong sums weight x severity over the neighbours, less the piece's own
// factor, and stops early once it reaches the limit.
func costAmong(near []neighbour, x, y, limit float64) float64 {
	var cost float64
	for k := range near {
		v := &near[k]
		dx, dy := x-v.x, y-v.y
		if math.Abs(dx) >= v.hx || math.Abs(dy) >= v.hy {
			continue
		}
		if d := v.pair.depth(dx, dy); d > 0 {
			cost += float64(v.factor * d)
			if cost >= limit {
				return cost
			}
		}
	}
	return cost
}

// cost of piece i on a spot anywhere, in the units of costAmong.
func (s *state) cost(i int, at Spot, limit float64) float64 {
	sh := &s.m.Shapes[at.Shape]
	hx, hy := sh.HalfX+s.m.Gap, sh.HalfY+s.m.Gap
	c := s.grid.box(at.X, at.Y, hx, hy)
	weights := s.overlaps.weightsOf(i)
	var cost float64
	for cy := c.y0; cy <= c.y1; cy++ {
		for cx := c.x0; cx <= c.x1; cx++ {
			for _, j := range s.grid.cells[int(cy)*s.grid.nx+int(cx)] {
				b := &s.bodies[j]
				if int(j) == i || !b.near(at.X, at.Y, hx, hy) || !s.grid.owns(cx, cy, c, j) {
					continue
				}
				d := s.pairs.of(int(b.shape), at.Shape).depth(at.X-b.x, at.Y-b.y)
				if d <= 0 {
					continue
				}
				cost += float64(float64(weights[j]) * s.factor[j] * d)
				if cost >= limit {
					return cost
				}
			}
		}
	}
	return cost
}
