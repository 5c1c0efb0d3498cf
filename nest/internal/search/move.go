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

// better looks at spots nearby and all over the strip, descends from the best
// few, where it lies among them, and stops at the first without overlap.
func (s *state) better(i int, best found, size float64) found {
	var few bestFew
	few.offer(best)
	if f, free := s.sample(i, nearSamples, s.nearby, &few); free {
		return f
	}
	if f, free := s.sampleAfar(i, &few); free {
		return f
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

// sampleAfar offers spots all over the strip: those of a survey, or random ones
// while it is not possible.
func (s *state) sampleAfar(i int, few *bestFew) (found, bool) {
	places, ok := s.survey(i)
	if !ok {
		return s.sample(i, uniformSamples, s.anywhere, few)
	}
	k := 0
	return s.sample(i, len(places), func(int) Spot { k++; return places[k-1].at }, few)
}

// sample offers so many spots, and stops at one without overlap.
func (s *state) sample(i, count int, next func(i int) Spot, few *bestFew) (free found, ok bool) {
	for range count {
		f := found{at: next(i)}
		if f.cost = s.cost(i, f.at, few.limit()); f.cost == 0 {
			return f, true
		}
		few.offer(f)
	}
	return found{}, false
}
