package search

import (
	"cmp"
	"maps"
	"math"
	"slices"

	"ellwand/nest/portable"
)

// addToPool keeps the state in the pool of layouts that nearly fit.
func (r *Searcher) addToPool() {
	r.pool = append(r.pool, poolMember{r.s.spots(), r.s.total()})
	slices.SortStableFunc(r.pool, func(a, b poolMember) int { return cmp.Compare(a.loss, b.loss) })
}

// restart loads a pool member, the better the likelier, and kicks it (the kick move of iterated local search).
func (r *Searcher) restart(target float64) {
	at := min(int(math.Abs(portable.Normal(r.rng))*0.25*float64(len(r.pool))), len(r.pool)-1)
	r.s.resetWeights()
	r.s.load(r.pool[at].spots, target)
	r.s.kick()
}

// kick turns a group or exchanges two pieces. It returns whether it did.
func (s *state) kick() bool { return s.turnGroup() || s.swapTwo() }

// turnGroup turns all pieces of a random group to another direction, one time
// in three. It returns whether it did.
func (s *state) turnGroup() bool {
	groups := slices.Sorted(maps.Keys(s.direction))
	if len(groups) == 0 || s.rng.IntN(3) > 0 {
		return false
	}
	group := groups[s.rng.IntN(len(groups))]
	other, ok := s.otherWay(group)
	for i, shape := range other {
		s.place(i, s.clampInto(i, shape))
	}
	return ok
}

// otherWay finds for every piece of a group a shape of another direction, the
// same for all, that has a place on the strip. It reports false when there is
// none.
func (s *state) otherWay(group int) (map[int]int, bool) {
	tried := map[int]bool{s.direction[group]: true}
	for {
		way, found := 0, false
		shapes := map[int]int{}
		for i, piece := range s.m.Pieces {
			if piece.Group != group {
				continue
			}
			at := slices.IndexFunc(piece.Shapes, func(k int) bool {
				d := s.m.Shapes[k].Direction
				return !tried[d] && (!found || d == way)
			})
			if at < 0 {
				return nil, false
			}
			if !found {
				way, found = s.m.Shapes[piece.Shapes[at]].Direction, true
			}
			fit := slices.IndexFunc(piece.Shapes, func(k int) bool {
				return s.m.Shapes[k].Direction == way && s.fits(i, k)
			})
			if fit >= 0 {
				shapes[i] = piece.Shapes[fit]
			}
		}
		if len(shapes) == s.groupSize(group) {
			return shapes, true
		}
		tried[way] = true
	}
}

func (s *state) groupSize(group int) int {
	n := 0
	for _, piece := range s.m.Pieces {
		if piece.Group == group {
			n++
		}
	}
	return n
}

// clampInto returns the spot of piece i, in another shape.
func (s *state) clampInto(i, shape int) Spot {
	x, y := s.spans(i, shape)
	return Spot{Shape: shape, X: x.snap(s.bodies[i].x), Y: y.snap(s.bodies[i].y)}
}

// swapTwo exchanges two large pieces of different outline. It returns whether
// it found such.
func (s *state) swapTwo() bool {
	order := s.largestFirst()
	var total float64
	for i := range order {
		total += s.m.HullArea(i)
	}
	large := 0
	for sum := 0.0; large < len(order) && sum < 0.75*total; large++ {
		sum += s.m.HullArea(order[large])
	}
	large = max(large, min(2, len(order)))
	if large < 2 {
		return false
	}
	for tries := 0; tries < 50; tries++ {
		i, j := order[s.rng.IntN(large)], order[s.rng.IntN(large)]
		if i == j || s.base(i) == s.base(j) {
			continue
		}
		a, b := s.spot(i), s.spot(j)
		s.place(i, s.clamp(i, Spot{Shape: a.Shape, X: b.X, Y: b.Y}))
		s.place(j, s.clamp(j, Spot{Shape: b.Shape, X: a.X, Y: a.Y}))
		return true
	}
	return false
}

func (s *state) base(i int) int { return s.m.Shapes[s.m.Pieces[i].Shapes[0]].Base }
