package search

import (
	"cmp"
	"math"
	"slices"
)

// Starts race: first layouts differ by more than a long search gains, and most
// of what a start gains comes early. One that does not gain even when it is
// loosened waits for others as far as it is; the shortest of three goes on with
// three times the patience, the others are dropped (successive halving: Li and
// others 2020, arXiv 1810.05934; random restarts: Luby, Sinclair, Zuckerman 1993,
// doi 10.1016/0020-0190(93)90029-9). nest/MEASURED.md holds what was measured.
const (
	// heatPatience is the number of passes without gain after which a start
	// waits, in the first heat: some eight times loosened.
	heatPatience = 36000
	// heatSize is the number of starts of a heat, of which one goes on, and
	// the growth of patience from heat to heat.
	heatSize = 3
)

// start is a layout that waits for the others of its heat.
type start struct {
	spots  []Spot
	length float64
}

// isStuck reports that the start which is followed has gone without gain for
// as long as its heat allows.
func (r *Searcher) isStuck() bool {
	return r.s.passes-r.advanced > heatPatience*int(math.Pow(heatSize, float64(r.heat)))
}

// nextStart leaves the start that is followed, which has been reported, for
// the best of the latest heat that is full, or for another first layout. It
// returns false, and changes nothing, when that one overlaps.
func (r *Searcher) nextStart() bool {
	for len(r.waiting) <= r.heat {
		r.waiting = append(r.waiting, nil)
	}
	r.waiting[r.heat] = append(r.waiting[r.heat], r.shortest)
	if r.followBest() || r.beginAnew() {
		return true
	}
	last := len(r.waiting[r.heat]) - 1
	r.waiting[r.heat] = r.waiting[r.heat][:last]
	return false
}

// followBest goes on from the shortest of the latest heat that is full. It
// returns false when none is.
func (r *Searcher) followBest() bool {
	for heat, starts := range slices.Backward(r.waiting) {
		if len(starts) < heatSize {
			continue
		}
		best := slices.MinFunc(starts, func(a, b start) int { return cmp.Compare(a.length, b.length) })
		r.waiting[heat] = nil
		r.follow(best, heat+1)
		return true
	}
	return false
}

// beginAnew makes another first layout. It returns false, and changes nothing,
// when that one overlaps.
func (r *Searcher) beginAnew() bool {
	before, length := r.s.spots(), r.s.length
	clear(r.s.direction)
	spots, used := r.s.construct(nil)
	r.s.load(spots, used)
	if r.s.total() > 0 {
		r.s.load(before, length)
		return false
	}
	r.follow(start{spots, used}, 0)
	return true
}

// follow goes on from a layout in the given heat.
func (r *Searcher) follow(from start, heat int) {
	r.shortest, r.best, r.length = from, from.spots, from.length
	r.returning, r.loosened, r.pool = false, false, r.pool[:0]
	r.heat, r.gained, r.advanced = heat, r.s.passes, r.s.passes
}
