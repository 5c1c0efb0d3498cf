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

// bestFew keeps the cheapest spots, cheapest first.
type bestFew struct {
	list [refined]evaluated
	n    int
}

func (b *bestFew) limit() float64 {
	if b.n < refined {
		return math.Inf(1)
	}
	return b.list[refined-1].cost
}

func (b *bestFew) offer(f evaluated) {
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
	best := s.better(i, evaluated{now, current}, size)
	if best.cost >= current {
		return false
	}
	s.place(i, best.at)
	return true
}

// better evaluates spots near the piece and all over the strip, descends from the
// best few (of which its present spot may be one), and stops at the first without
// overlap.
func (s *state) better(i int, best evaluated, size float64) evaluated {
	var few bestFew
	few.offer(best)
	for range nearSamples { // first, so that the limit is low for the rest
		if f := s.evaluate(i, s.sampleNear(i), &few); f.cost == 0 {
			return f
		}
	}
	for _, p := range s.globalCandidates(i) {
		if f := s.evaluate(i, p.at, &few); f.cost == 0 {
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

// evaluate offers a spot with its cost, which may be cut short where it is no
// longer among the best.
func (s *state) evaluate(i int, at Spot, few *bestFew) evaluated {
	f := evaluated{at, s.cost(i, at, few.limit())}
	few.offer(f)
	return f
}

// globalCandidates returns spots all over the strip: those of grid sampling, or
// uniform random ones while that is not possible.
func (s *state) globalCandidates(i int) []candidate {
	if sampled, ok := s.sampleGrid(i); ok {
		return sampled
	}
	sampled := s.scratch.candidates[:0]
	for range uniformSamples {
		sampled = append(sampled, candidate{at: s.sampleUniform(i)})
	}
	s.scratch.candidates = sampled
	return sampled
}
