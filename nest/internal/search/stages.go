package search

import (
	"math"
	"slices"
)

// Begin makes the first layout, from the start where it is given.
func (r *Searcher) Begin(start []*Spot) {
	spots, length := r.s.construct(start)
	if r.m.Length > 0 {
		r.s.load(spots, r.m.Length)
		return
	}
	r.begin(spots, length)
}

// Search goes on until the share of the budget is spent: towards a shorter
// strip, or, on a sheet, towards a layout that fits.
func (r *Searcher) Search(until float64) {
	switch {
	case r.m.Length > 0:
		r.fit(until)
	case until <= exploreShare:
		r.explore(until)
	default:
		r.compress(until)
	}
}

// Adopt goes on from a layout that another search found.
func (r *Searcher) Adopt(found Outcome) {
	if r.m.Length > 0 || found.Loss > 0 || r.best == nil || found.Length >= r.length {
		return
	}
	r.follow(start{slices.Clone(found.Spots), found.Length}, 0)
}

// begin makes the constructed layout the first to beat. One that overlaps, as
// a given start may, is separated on a strip that grows until it succeeds.
func (r *Searcher) begin(spots []Spot, length float64) {
	r.s.load(spots, length)
	for r.s.total() > 0 {
		if r.separate(exploreEffort, math.Inf(1)) {
			break
		}
		if r.budget.Stopped() {
			r.report(Outcome{Spots: r.s.spots(), Length: r.s.used(), Loss: r.s.total(), Depths: r.s.depths()})
			return
		}
		r.s.load(r.s.spots(), 1.02*r.s.length)
	}
	r.accept(r.s.spots(), r.s.used())
}
