package search

import (
	"math"
	"slices"
)

const (
	// beginGrowth is by how much a strip is made longer on which a given start could not
	// be separated; twice as much the next time.
	beginGrowth = 0.02
	// beginShare of the budget is spent on separating a given start.
	beginShare = 0.3
)

// Begin makes the first layout, from the start where it is given.
func (r *Searcher) Begin(start []*Spot) {
	spots, length := r.s.construct(start, r.budget.Stopped)
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
// a given start may, is separated on a strip that grows until it succeeds, or is given
// up for one from nothing.
func (r *Searcher) begin(spots []Spot, length float64) {
	r.s.load(spots, length)
	until := beginShare
	for by := beginGrowth; r.s.total() > 0; by *= 2 {
		if r.part() || r.separate(exploreEffort, until) {
			break
		}
		if r.budget.Stopped() {
			r.report(Outcome{Spots: r.s.spots(), Length: r.s.used(), Loss: r.s.total(), Depths: r.s.depths()})
			return
		}
		if r.spent() >= until {
			until = math.Inf(1)
			r.s.load(r.s.construct(nil, r.budget.Stopped))
			continue
		}
		r.s.load(r.s.spots(), (1+by)*r.s.length)
	}
	r.accept(r.s.spots(), r.s.used())
}
