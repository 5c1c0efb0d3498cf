package search

import "math"

// Tuning of a move. The page nest/MEASURED.md says what was tried.
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
	for range nearSamples { // first, so that the limit is low for those afar
		if f := s.look(i, s.nearby(i), &few); f.cost == 0 {
			return f
		}
	}
	for _, p := range s.afar(i) {
		if f := s.look(i, p.at, &few); f.cost == 0 {
			return f
		}
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

// look offers a spot with its cost, which may be cut short where it is no
// longer among the best.
func (s *state) look(i int, at Spot, few *bestFew) found {
	f := found{at, s.cost(i, at, few.limit())}
	few.offer(f)
	return f
}

// afar returns places all over the strip: those of a survey, or random ones
// while it is not possible.
func (s *state) afar(i int) []place {
	if places, ok := s.survey(i); ok {
		return places
	}
	places := s.scratch.places[:0]
	for range uniformSamples {
		places = append(places, place{at: s.anywhere(i)})
	}
	s.scratch.places = places
	return places
}
