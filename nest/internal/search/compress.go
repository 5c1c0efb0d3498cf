package search

import (
	"math"

	"ellwand/nest/portable"
)

const (
	compressFirst = 0.005
	compressLast  = 0.001
)

var compressEffort = effort{patience: 100, strikes: 5}

// compress shortens the best layout by ever smaller steps. Where it no longer
// gains, it is perturbed. Where exploring ended early, so does this: the two share
// what is spent as they share the budget.
func (r *Searcher) compress(until float64) {
	start := r.spent()
	if r.Patience > 0 {
		until = min(until, start/exploreShare)
	}
	for !r.over(until) {
		if r.isIdle() {
			r.perturb(until)
		}
		share := (r.spent() - start) / math.Max(1e-9, until-start)
		if _, ok := r.shrunk(portable.Geometric(compressFirst, compressLast, share)); !ok {
			return
		}
		if r.separate(compressEffort, until) {
			r.compact()
			r.accept(r.s.spots(), r.s.used())
		}
	}
}
