package proof

import (
	"math"
	"slices"

	"github.com/paulmach/orb"
)

// byQueue bounds the length by the pieces that all meet one line along the
// strip, where they lie one behind the other: each stretch of the line that is
// inside a piece is its own. A piece meets the line, wherever it lies, where
// its upright section is longer than the wider of the two parts into which the
// line divides the strip; a pinned piece meets it at a known height. On a
// lattice the next piece may not begin where the one before ends but only at
// the next place of its own, so that the order counts: the least end is found
// over all orders and turns.
//
// It is exact for such pieces (dynamic programming over subsets: Held and
// Karp, J. SIAM 10, 1962), and of use only on a lattice: without one the
// sections prove as much.
func byQueue(strip Strip, pieces []Piece) float64 {
	if !slices.ContainsFunc(pieces, Piece.isOnLattice) {
		return 0
	}
	heights := []float64{strip.Width / 2}
	for _, p := range pieces {
		if q, where := pin(p); where == onlyLow {
			heights = append(heights, q.heights()...)
		}
	}
	lines := append([]float64{strip.Width / 2}, spread(between(heights, strip.Width), mostLines)...)
	best := 0.0
	for _, y := range lines {
		best = max(best, queueOn(strip, pieces, y).end())
	}
	return best
}

// mostLines are tried of one strip.
const mostLines = 12

// spread keeps so many values, evenly.
func spread(list []float64, most int) []float64 {
	if len(list) <= most {
		return list
	}
	out := make([]float64, most)
	for i := range out {
		out[i] = list[i*len(list)/most]
	}
	return out
}

// queue of pieces on one line.
type queue struct {
	pieces []queued
	gap    float64
	reach  float64 // how far one may reach into the next
}

type queued struct {
	copies int
	turns  []stretch
}

// stretch of the line inside a piece, in one of its turns, from its reference
// point; low and high are its ends.
type stretch struct {
	from, to, low, high, period, offset float64
}

// queueOn a line are the pieces that meet it in every turn that they may have.
func queueOn(strip Strip, pieces []Piece, y float64) queue {
	out := queue{gap: strip.Gap, reach: 4 * strip.Reach}
	// Shorter sections may pass below the line or above it.
	wider := max(y, strip.Width-y) + out.reach
	for _, p := range pieces {
		if p.Tilts || len(p.Turns) == 0 {
			continue
		}
		q := queued{copies: p.Copies}
		for _, t := range p.Turns {
			if s, ok := t.on(y, wider, strip); ok {
				q.turns = append(q.turns, s)
			}
		}
		if len(q.turns) == len(p.Turns) {
			out.add(q)
		}
	}
	return out
}

// on is the longest stretch of a line in which the turned piece is sure to be.
func (t Turned) on(y, wider float64, strip Strip) (stretch, bool) {
	box := t.Outline.Bound()
	s := stretch{low: box.Min[0], high: box.Max[0], period: t.Period[0], offset: t.Offset[0]}
	switch t.Pin {
	case Low:
		y += box.Min[1]
	case High:
		y += box.Max[1] - strip.Width
	default:
		s.from, s.to = longerThan(sections(t.Outline, 0), wider)
		return s, s.to > s.from
	}
	// It may lie off its edge by as much as it may reach over it.
	below, above := inside(t.Outline, y-strip.Reach), inside(t.Outline, y+strip.Reach)
	s.from, s.to = max(below[0], above[0]), min(below[1], above[1])
	return s, s.to > s.from
}

// inside is the longest stretch of a level line inside an outline.
func inside(ring orb.Ring, y float64) (longest [2]float64) {
	var xs []float64
	for i, a := range ring {
		b := ring[(i+1)%len(ring)]
		if (a[1] <= y) != (b[1] <= y) {
			xs = append(xs, a[0]+float64((y-a[1])/(b[1]-a[1])*(b[0]-a[0])))
		}
	}
	slices.Sort(xs)
	for i := 0; i+1 < len(xs); i += 2 {
		if xs[i+1]-xs[i] > longest[1]-longest[0] {
			longest = [2]float64{xs[i], xs[i+1]}
		}
	}
	return longest
}

// longerThan is the longest stretch along which the upright section of an
// outline is in one part and longer than that.
func longerThan(slabs []slab, least float64) (from, to float64) {
	begin, end := math.Inf(1), math.Inf(-1)
	for i, s := range slabs {
		parted := i > 0 && slabs[i-1].x0 == s.x0 || i+1 < len(slabs) && slabs[i+1].x0 == s.x0
		if parted || max(s.first, s.last) < least {
			continue
		}
		x0, x1 := s.x0, s.x1
		if s.first < least {
			x0 += (s.x1 - s.x0) * (least - s.first) / (s.last - s.first)
		}
		if s.last < least {
			x1 -= (s.x1 - s.x0) * (least - s.last) / (s.first - s.last)
		}
		if x0 > end {
			begin = x0
		}
		if end = x1; end-begin > to-from {
			from, to = begin, end
		}
	}
	return from, to
}

// mostStates of the search for the least end: with more, the pieces that come
// last are left out.
const mostStates = 1 << 13

// add counts like pieces together, and leaves out what would take too long.
func (q *queue) add(more queued) {
	for i, p := range q.pieces {
		if slices.Equal(p.turns, more.turns) {
			more.copies, q.pieces[i].copies = more.copies+p.copies, 0
		}
	}
	q.pieces = slices.DeleteFunc(append(q.pieces, more), func(p queued) bool { return p.copies == 0 })
	for states := q.states(); states > mostStates; states = q.states() {
		last := len(q.pieces) - 1
		if q.pieces[last].copies--; q.pieces[last].copies == 0 {
			q.pieces = q.pieces[:last]
		}
	}
}

func (q queue) states() int {
	n := 1
	for _, p := range q.pieces {
		n *= p.copies + 1
	}
	return n
}

// end is the least x at which the queue can end. Of every set of pieces laid,
// the least x up to which they take the line is kept: whatever follows can then
// begin no earlier.
func (q queue) end() float64 {
	if len(q.pieces) == 0 {
		return 0
	}
	all := q.states()
	taken := make([]float64, all) // by set
	for set := range taken[1:] {
		taken[set+1] = math.Inf(1)
	}
	end := math.Inf(1)
	for set, free := range taken[:all-1] {
		stride := 1
		for _, p := range q.pieces {
			if into := set + stride; set/stride%(p.copies+1) < p.copies {
				for _, s := range p.turns {
					at := s.place(free+q.gap-q.reach, set == 0, q.reach)
					taken[into] = min(taken[into], at+s.to)
					if into == all-1 {
						end = min(end, at+s.high)
					}
				}
			}
			stride *= p.copies + 1
		}
	}
	return end
}

// place is the least of the reference point, on its lattice, where the piece
// begins no earlier than the strip and its stretch not before the line is free.
func (s stretch) place(free float64, isFirst bool, reach float64) float64 {
	at := -s.low - reach
	if !isFirst {
		at = max(at, free-s.from)
	}
	if s.period == 0 {
		return at
	}
	return s.offset + float64(s.period*math.Ceil((at-s.offset)/s.period))
}
