package search

import (
	"cmp"
	"slices"
)

// Starts race: first layouts differ by more than a long search gains, and most
// of what a start gains comes early. One that does not gain even when it is
// perturbed waits for others as far as it is; the shortest of three goes on with
// three times the patience, the others are dropped (successive halving: Li and
// others 2020, arXiv 1810.05934; random restarts: Luby, Sinclair, Zuckerman 1993,
// doi 10.1016/0020-0190(93)90029-9). nest/MEASURED.md holds what was measured.
const (
	// rungPatience is the number of passes without gain after which a start
	// waits, in the first rung: some eight times perturbed.
	rungPatience = 36000
	// reductionFactor is the number of starts of a rung, of which one goes on, and
	// the growth of patience from rung to rung.
	reductionFactor = 3
)

// isStagnant reports that the start which is followed has gone without gain for
// as long as its rung allows.
func (r *Searcher) isStagnant() bool {
	patience := rungPatience
	for range r.rung {
		patience *= reductionFactor
	}
	return r.s.passes-r.advanced > patience
}

// nextStart leaves the start that is followed, which has been reported, for
// the best of the latest rung that is full, or for another first layout. It
// returns false, and changes nothing, when that one overlaps.
func (r *Searcher) nextStart() bool {
	for len(r.waiting) <= r.rung {
		r.waiting = append(r.waiting, nil)
	}
	r.waiting[r.rung] = append(r.waiting[r.rung], r.shortest)
	if r.promoteBest() || r.beginAgain() {
		return true
	}
	last := len(r.waiting[r.rung]) - 1
	r.waiting[r.rung] = r.waiting[r.rung][:last]
	return false
}

// promoteBest goes on from the shortest of the latest rung that is full. It
// returns false when none is.
func (r *Searcher) promoteBest() bool {
	for rung, starts := range slices.Backward(r.waiting) {
		if len(starts) < reductionFactor {
			continue
		}
		best := slices.MinFunc(starts, func(a, b start) int { return cmp.Compare(a.length, b.length) })
		r.waiting[rung] = nil
		r.follow(best, rung+1)
		return true
	}
	return false
}

// beginAgain makes another first layout. It returns false, and changes nothing,
// when that one overlaps.
func (r *Searcher) beginAgain() bool {
	before, length := r.s.spots(), r.s.length
	clear(r.s.direction)
	spots, used := r.s.construct(nil, r.budget.Stopped)
	r.s.load(spots, used)
	if r.s.total() > 0 {
		r.s.load(before, length)
		return false
	}
	r.follow(start{spots, used}, 0)
	return true
}

// follow goes on from a layout in the given rung.
func (r *Searcher) follow(from start, rung int) {
	r.shortest, r.best, r.length = from, from.spots, from.length
	r.returning, r.perturbed, r.pool = false, false, r.pool[:0]
	r.rung, r.gained, r.advanced = rung, r.s.passes, r.s.passes
}
