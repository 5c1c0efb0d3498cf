package proof

import (
	"cmp"
	"math"
	"slices"

	"github.com/paulmach/orb"
)

// This file bounds the length by pieces too wide to lie beside each other. Two pieces
// whose left ends lie d apart need at every x no more than the width together, by their
// sections there; the least d at which they do is their step, in that order. In any
// layout the left ends of such pieces have an order, and each is at least its step behind
// the one before it. So the strip is at least as long as the best order: the steps added
// up, and the extent of the last piece. The best order is found exactly, over all turns,
// by dynamic programming (Held and Karp, "A dynamic programming approach to sequencing
// problems", J. SIAM 10, 1962, doi 10.1137/0110015).
//
// Sections are those of whole cells of x at the least, so that every step is one that no
// layout can beat. A piece between two others might part them: only pieces each of which
// is wide are put in order, so many of the widest as do best.

// The work that goes into an order.
const (
	mostCells  = 500 // of the longest piece
	mostOrders = 1 << 8
)

// profile of a turned piece: what of the width it takes at the least in each cell of x
// from its left end, the same of each cell and the one before it together, and its
// extent. Two cells together that are sure of nothing take less than nothing.
type profile struct {
	cells, pairs []float64
	extent       float64
}

// ordered is a piece in all its turns.
type ordered struct {
	copies int
	turns  []profile
	widest float64
}

// byOrder is the bound described above. It may stop at one that is more than enough.
func byOrder(strip Strip, pieces []Piece, enough float64) float64 {
	width, longest, highest := strip.Width+strip.Gap, 0.0, 0.0
	for _, p := range pieces {
		for _, way := range p.Ways {
			longest = max(longest, extent(way))
		}
		if p.isOrdered() {
			highest = max(highest, p.height(strip.Gap))
		}
	}
	cell := longest / mostCells
	var all []ordered
	for _, p := range pieces {
		// What is so low lies beside any other.
		if !p.isOrdered() || cell == 0 || p.height(strip.Gap)+highest <= width {
			continue
		}
		o := ordered{copies: p.Copies, widest: math.Inf(1)}
		for _, way := range p.Ways {
			turn := profileOf(way, strip.sections(way), cell)
			if !slices.ContainsFunc(o.turns, func(other profile) bool { return slices.Equal(other.cells, turn.cells) }) {
				o.turns = append(o.turns, turn)
			}
			o.widest = min(o.widest, slices.Max(turn.cells))
		}
		all = append(all, o)
	}
	slices.SortStableFunc(all, func(a, b ordered) int { return cmp.Compare(b.widest, a.widest) })
	best, states := 0.0, 1
	var placings steps
	for n := range all {
		if states *= all[n].copies + 1; states > mostOrders || all[n].widest+all[0].widest <= width {
			break
		}
		placings = placings.with(n, all[n], cell, width)
		if best = max(best, placings.shortestOrder(all[:n+1], states, strip.Reach)); best > enough {
			break
		}
	}
	return best
}

// isOrdered reports that a piece can be put in an order: all its turns are known.
func (p Piece) isOrdered() bool { return !p.Tilts && len(p.Ways) > 0 }

// height across the strip that a piece has at the least, with a gap.
func (p Piece) height(gap float64) float64 {
	least := math.Inf(1)
	for _, way := range p.Ways {
		box := way.Bound()
		least = min(least, box.Max[1]-box.Min[1]+gap)
	}
	return least
}

func extent(ring orb.Ring) float64 {
	box := ring.Bound()
	return box.Max[0] - box.Min[0]
}

// profileOf an outline with its slabs: the least of its sections in each cell, all its
// parts together.
func profileOf(ring orb.Ring, slabs []slab, cell float64) profile {
	out := profile{extent: extent(ring)}
	left := ring.Bound().Min[0]
	out.cells = make([]float64, max(1, int(math.Ceil(out.extent/cell))))
	for i := range out.cells {
		out.cells[i] = math.Inf(1)
	}
	for i := 0; i < len(slabs); {
		all := slabs[i]
		for i++; i < len(slabs) && slabs[i].x0 == all.x0; i++ {
			all.first, all.last = all.first+slabs[i].first, all.last+slabs[i].last
		}
		low, high := math.Floor((all.x0-left)/cell), math.Ceil((all.x1-left)/cell)
		for k := max(0, int(low)); k < min(len(out.cells), int(high)); k++ {
			from, to := max(all.x0, left+float64(float64(k)*cell)), min(all.x1, left+float64(float64(k+1)*cell))
			out.cells[k] = min(out.cells[k], all.at(from), all.at(to))
		}
	}
	out.cells[len(out.cells)-1] = 0 // the last cell may reach beyond the piece
	for i, s := range out.cells {
		if math.IsInf(s, 1) {
			out.cells[i] = 0
		}
	}
	out.pairs = []float64{math.Inf(-1)}
	for i, s := range out.cells[1:] {
		both := min(out.cells[i], s)
		if both <= 0 {
			both = math.Inf(-1)
		}
		out.pairs = append(out.pairs, both)
	}
	return out
}

// at is the section of a slab at a place within it.
func (s slab) at(x float64) float64 {
	share := min(1, max(0, (x-s.x0)/(s.x1-s.x0)))
	return float64((1-share)*s.first) + float64(share*s.last)
}

// step is how far behind the left end of one piece that of the next lies at the least.
// At a distance between n and n+1 cells the cell k of the one lies over the cells k-n-1
// and k-n of the other. Where they meet at one distance they mostly do at the next, too,
// so that the search of each begins there.
func step(one, next profile, cell, width float64) float64 {
	most, met := width*(1+4*slack), 0
	for n := range one.cells {
		shared := min(len(one.cells)-n, len(next.pairs))
		here, there := one.cells[n:n+shared], next.pairs[:shared]
		met = min(met, shared)
		if i := firstAbove(here[met:], there[met:], most); i >= 0 {
			met += i
		} else if met = firstAbove(here[:met], there[:met], most); met < 0 {
			return float64(float64(n) * cell)
		}
	}
	return float64(float64(len(one.cells)-1) * cell)
}

// firstAbove is the first place at which two lists, equally long, are together more than
// that; -1 where they are nowhere.
func firstAbove(a, b []float64, most float64) int {
	for i, x := range a {
		if x+b[i] > most {
			return i
		}
	}
	return -1
}

// placing is a piece of an order in one of its turns.
type placing struct {
	piece int
	profile
}

// steps between pieces in all their turns.
type steps struct {
	ways   []placing
	behind [][]float64 // by the one, then by the next
}

// with one piece more.
func (s steps) with(piece int, more ordered, cell, width float64) steps {
	for _, turn := range more.turns {
		s.ways = append(s.ways, placing{piece, turn})
	}
	s.behind = append(s.behind, make([][]float64, len(more.turns))...)
	for i, one := range s.ways {
		for _, next := range s.ways[len(s.behind[i]):] {
			s.behind[i] = append(s.behind[i], step(one.profile, next.profile, cell, width))
		}
	}
	return s
}

// shortestOrder of all copies, of which there are so many sets: for every set, and the
// last of it in its turn, the least left end of that one. A contact may be off by the
// reach.
func (s steps) shortestOrder(all []ordered, sets int, reach float64) float64 {
	ways, behind, copies := s.ways, s.behind, 0
	for _, o := range all {
		copies += o.copies
	}
	left := make([][]float64, sets)
	for set := range left {
		left[set] = make([]float64, len(ways))
		for i := range ways {
			left[set][i] = math.Inf(1)
		}
	}
	for set := range sets - 1 {
		for j, next := range ways {
			stride := 1
			for _, o := range all[:next.piece] {
				stride *= o.copies + 1
			}
			if count := all[next.piece].copies; set/stride%(count+1) == count {
				continue
			}
			at := math.Inf(1)
			if set == 0 {
				at = 0
			}
			for i := range ways {
				at = min(at, left[set][i]+behind[i][j])
			}
			left[set+stride][j] = min(left[set+stride][j], at)
		}
	}
	best := math.Inf(1)
	for i, last := range ways {
		best = min(best, left[sets-1][i]+last.extent)
	}
	return max(0, best-float64(float64(2*copies)*reach))
}
