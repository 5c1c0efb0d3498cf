package search

import (
	"math"
)

// Tuning of a move. The page nest/README.md says what was tried.
const (
	uniformSamples = 25
	nearSamples    = 12
	refined        = 3
	// Steps of the descents, as shares of the smaller side of the piece.
	coarseFrom = 0.1
	coarseTo   = 0.02
	fineTo     = 5e-4
)

// found is a spot with its cost.
type found struct {
	at   Spot
	cost float64
}

// bestFew keeps the cheapest spots, cheapest first.
type bestFew struct {
	list [refined]found
	n    int
}

func (b *bestFew) limit() float64 {
	if b.n < refined {
		return math.Inf(1)
	}
	return b.list[refined-1].cost
}

func (b *bestFew) offer(f found) {
	if b.n == refined && f.cost >= b.list[refined-1].cost {
		return
	}
	if b.n < refined {
		b.n++
	}
	k := b.n - 1
	for ; k > 0 && b.list[k-1].cost > f.cost; k-- {
		b.list[k] = b.list[k-1]
	}
	b.list[k] = f
}

// improve looks for a better spot for piece i and moves it there. It returns
// whether it moved.
func (s *state) improve(i int) bool {
	now := s.spot(i)
	current := s.cost(i, now, math.Inf(1))
	if current == 0 {
		return false
	}
	size := math.Min(s.bodies[i].hx, s.bodies[i].hy) * 2
	best := s.better(i, found{now, current}, size)
	if best.cost > 0 {
		best = s.descend(i, best, coarseTo*size, fineTo*size)
	}
	if best.cost >= current {
		return false
	}
	s.place(i, best.at)
	return true
}

// better looks at sampled spots, descends from the best few, where it lies
// among them, and stops at the first without overlap.
func (s *state) better(i int, best found, size float64) found {
	var few bestFew
	few.offer(best)
	for k := range uniformSamples + nearSamples {
		at := s.anywhere
		if k >= uniformSamples {
			at = s.nearby
		}
		f := found{at: at(i)}
		if f.cost = s.cost(i, f.at, few.limit()); f.cost == 0 {
			return f
		}
		few.offer(f)
	}
	for k := range few.n {
		f := s.descend(i, few.list[k], coarseFrom*size, coarseTo*size)
		if f.cost < best.cost {
			best = f
		}
		if best.cost == 0 {
			break
		}
	}
	return best
}

// descend lowers the cost of piece i from a spot by steps along random axes
// and diagonals, growing after gains and halved after failures.
func (s *state) descend(i int, from found, step, smallest float64) found {
	reach := 2 * step
	home := from.at
	s.scratch.moved = s.gather(i, home.Shape, home.X, home.Y, reach, s.scratch.moved[:0])
	rangeX, rangeY := s.spans(i, home.Shape)
	best := s.escape(from, rangeX, rangeY, home, reach)
	stepX, stepY := step, step
	for best.cost > 0 && math.Max(stepX, stepY) > smallest {
		var dx, dy float64
		axis := s.rng.IntN(4)
		switch axis {
		case 0:
			dx = stepX
		case 1:
			dy = stepY
		case 2:
			dx, dy = stepX, stepY
		case 3:
			dx, dy = stepX, -stepY
		}
		gained := false
		for _, sign := range [2]float64{1, -1} {
			x, y := rangeX.snap(best.at.X+sign*dx), rangeY.snap(best.at.Y+sign*dy)
			if x == best.at.X && y == best.at.Y {
				continue
			}
			if math.Abs(x-home.X) > reach || math.Abs(y-home.Y) > reach {
				home = best.at
				s.scratch.moved = s.gather(i, home.Shape, home.X, home.Y, reach, s.scratch.moved[:0])
			}
			if cost := costAmong(s.scratch.moved, x, y, best.cost); cost < best.cost {
				best = found{Spot{Shape: best.at.Shape, X: x, Y: y}, cost}
				gained = true
				break
			}
		}
		rate := 0.5
		if gained {
			rate = 1.1
		}
		switch axis {
		case 0:
			stepX *= rate
		case 1:
			stepY *= rate
		default:
			stepX *= math.Sqrt(rate)
			stepY *= math.Sqrt(rate)
		}
	}
	return best
}

// escapeSteps bounds the steps of escape; most moves that end free need two
// or three.
const escapeSteps = 6

// escape steps against the gradient by cost / slope, the step that would end
// all overlap if the cost were a plane (Polyak 1969, doi
// 10.1016/0041-5553(69)90061-5). Out of one overlap it lands in exact contact.
func (s *state) escape(from found, rangeX, rangeY span, home Spot, reach float64) found {
	best := from
	for range escapeSteps {
		cost, gx, gy := slopeAmong(s.scratch.moved, best.at.X, best.at.Y)
		steep := gx*gx + gy*gy
		if cost == 0 || steep == 0 {
			break
		}
		gained := false
		for _, share := range [2]float64{1, 0.5} {
			step := share * cost / steep
			x, y := rangeX.snap(best.at.X-step*gx), rangeY.snap(best.at.Y-step*gy)
			if math.Abs(x-home.X) > reach || math.Abs(y-home.Y) > reach {
				continue
			}
			if c := costAmong(s.scratch.moved, x, y, best.cost); c < best.cost {
				best = found{Spot{Shape: best.at.Shape, X: x, Y: y}, c}
				gained = true
				break
			}
		}
		if !gained {
			break
		}
	}
	return best
}
