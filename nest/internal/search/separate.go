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
	n := len(s.bodies)
	for _, v := range s.severity[i*n : (i+1)*n] {
		if v > 0 {
			return true
		}
	}
	s.loss[i] = 0
	return false
}

func (s *state) updateWeights() {
	n := len(s.bodies)
	var worst float32
	for i := 0; i < s.pieces; i++ {
		if s.loss[i] <= 0 {
			continue
		}
		for _, v := range s.severity[i*n : (i+1)*n] {
			worst = max(worst, v)
		}
	}
	kept := s.heavy[:0]
	for _, p := range s.heavy {
		k, l := int(p.i)*n+int(p.j), int(p.j)*n+int(p.i)
		if s.severity[k] > 0 {
			kept = append(kept, p)
			continue
		}
		w := s.weight[k] * decay
		if w <= 1 {
			w = 1
		} else {
			kept = append(kept, p)
		}
		s.weight[k], s.weight[l] = w, w
	}
	s.heavy = kept
	if worst == 0 {
		return
	}
	for i := 0; i < s.pieces; i++ {
		if s.loss[i] <= 0 {
			continue
		}
		for j, v := range s.severity[i*n : (i+1)*n] {
			if v <= 0 || j < i {
				continue
			}
			k, l := i*n+j, j*n+i
			if s.weight[k] == 1 {
				s.heavy = append(s.heavy, pair{int32(i), int32(j)})
			}
			w := s.weight[k] * (growLeast + (growMost-growLeast)*v/worst)
			s.weight[k], s.weight[l] = min(w, math.MaxFloat32/1e10), min(w, math.MaxFloat32/1e10)
		}
	}
}

// resetWeights sets all weights back to 1.
func (s *state) resetWeights() {
	n := len(s.bodies)
	for _, p := range s.heavy {
		s.weight[int(p.i)*n+int(p.j)], s.weight[int(p.j)*n+int(p.i)] = 1, 1
	}
	s.heavy = s.heavy[:0]
}
