package search

import "math"

// Weights of guided local search: after each pass a colliding pair grows by
// 1.2 to 2.0 with its severity against the worst, the others decay.
const (
	growLeast = 1.2
	growMost  = 2.0
	decay     = 0.95
)

// effort bounds one separation.
type effort struct {
	patience int // passes without gain before a strike
	strikes  int
}

// repairAfter is the number of passes without gain after which repair is tried, once
// for each least overlap.
const repairAfter = 50

// separate moves pieces until nothing overlaps, or until repair parts what is
// left. It returns true on success; otherwise the state is left at the least
// overlap it found.
func (s *state) separate(e effort, stop, repair func() bool) bool {
	best := s.spots()
	least, tried := s.total(), math.Inf(1)
	for strike := 0; strike < e.strikes && least > 0; strike++ {
		before := least
		for idle := 0; idle < e.patience && least > 0; idle++ {
			if stop() {
				s.load(best, s.length)
				return least == 0
			}
			s.pass(stop)
			total := s.total()
			if total < least {
				if total < 0.98*least || total == 0 {
					idle = 0
				}
				least = total
				best = s.copySpots(best)
			}
			s.updateWeights()
			if idle+1 == repairAfter && least < tried {
				if s.repaired(best, repair) {
					return true
				}
				tried = least
			}
		}
		if least == 0 {
			break
		}
		if least < 0.98*before {
			strike = -1
		}
		s.load(best, s.length)
	}
	if least == 0 {
		s.load(best, s.length)
	}
	return least == 0
}

// repaired tries repair on the best spots, and goes on where it was if it fails.
func (s *state) repaired(best []Spot, repair func() bool) bool {
	now := s.spots()
	s.load(best, s.length)
	if repair() {
		return true
	}
	s.load(now, s.length)
	return false
}

func (s *state) copySpots(into []Spot) []Spot {
	for i := range into {
		into[i] = s.spot(i)
	}
	return into
}

// pass gives every colliding piece, in random order, a move.
func (s *state) pass(stop func() bool) {
	s.passes++
	order := s.scratch.order[:0]
	for i := 0; i < s.pieces; i++ {
		if s.collides(i) {
			order = append(order, i)
		}
	}
	s.rng.Shuffle(len(order), func(a, b int) { order[a], order[b] = order[b], order[a] })
	s.scratch.order = order
	for _, i := range order {
		if stop() {
			return
		}
		if s.collides(i) {
			s.improve(i)
		}
	}
}

// collides reports whether piece i overlaps anything. loss is kept by
// differences, so only an exact look at the row decides when it is tiny.
func (s *state) collides(i int) bool {
	if s.loss[i] <= 0 {
		return false
	}
	for _, c := range s.overlaps.rows[i] {
		if s.overlaps.pairs[c.at].severity > 0 {
			return true
		}
	}
	s.loss[i] = 0
	return false
}

// updateWeights raises the weights of the pairs that overlap and lowers those of
// the others.
func (s *state) updateWeights() {
	o := &s.overlaps
	o.forgetRow()
	worst := s.worst()
	for i := 0; i < s.pieces; i++ {
		for _, c := range o.rows[i] {
			if int(c.other) < i {
				continue
			}
			m := &o.pairs[c.at]
			switch {
			case m.severity <= 0:
				m.weight = max(m.weight*decay, 1)
			case s.loss[i] > 0:
				w := m.weight * (growLeast + (growMost-growLeast)*m.severity/worst)
				m.weight = min(w, math.MaxFloat32/1e10)
			}
		}
	}
	o.sweep()
}

// worst is the largest severity of a pair.
func (s *state) worst() float32 {
	var worst float32
	for i := 0; i < s.pieces; i++ {
		if s.loss[i] <= 0 {
			continue
		}
		for _, c := range s.overlaps.rows[i] {
			worst = max(worst, s.overlaps.pairs[c.at].severity)
		}
	}
	return worst
}

// resetWeights sets all weights back to 1.
func (s *state) resetWeights() {
	s.overlaps.forgetRow()
	for k := range s.overlaps.pairs {
		s.overlaps.pairs[k].weight = 1
	}
}
