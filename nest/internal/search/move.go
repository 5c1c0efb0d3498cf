package search

import "math"

// Tuning of a move. The page nest/README.md says what was tried.
const (
	uniformSamples = 25
	nearSamples    = 12
	refined        = 3
	// Radius of the descents, as a share of the smaller side of the piece.
	radiusFirst = 0.1
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
	size := min(s.bodies[i].hx, s.bodies[i].hy) * 2
	best := s.better(i, found{now, current}, size)
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
	for k := range nearSamples + uniformSamples {
		at := s.nearby // first, so that the limit is low for the many elsewhere
		if k >= nearSamples {
			at = s.anywhere
		}
		f := found{at: at(i)}
		if f.cost = s.cost(i, f.at, few.limit()); f.cost == 0 {
			return f
		}
		few.offer(f)
	}
	for k := range few.n {
		f := s.descend(i, few.list[k], radiusFirst*size)
		if f.cost < best.cost {
			best = f
		}
		if best.cost == 0 {
			break
		}
	}
	return best
}
