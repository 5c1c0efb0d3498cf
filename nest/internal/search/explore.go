package search

import (
	"math"
	"slices"
)

// Stages returns the shares of the budget after which searches compare what
// they have and all go on from the best. Searches that began from like starts
// explore on their own, since meeting earlier costs more in variety than it
// gains (nest/MEASURED.md); from starts of different kinds they meet early.
func Stages(unlike bool) []float64 {
	if unlike {
		return []float64{0.3, exploreShare, 1}
	}
	return []float64{exploreShare, 1}
}

const (
	// exploreShare of the budget goes to exploring, the rest to compressing.
	exploreShare = 0.8
	// shrinkLeast and shrinkMost are between what the strip is made shorter
	// than the best layout, as shares of its length (nest/MEASURED.md).
	shrinkLeast = 0.001
	shrinkMost  = 0.01
	// compactAfter is the number of passes that a step must have taken before
	// linear programs are tried: they take the time of some thirty and gain 0.1
	// to 1 % (measured at 85 to 89 % density).
	compactAfter = 30
)

var exploreEffort = effort{patience: 200, strikes: 3}

func (r *Searcher) explore(until float64) {
	target, ok := r.shrunk(r.shrinkShare())
	for ok && !r.over(until) && !r.isSpent() {
		gained := r.fill(until)
		if !gained && r.spent() >= until {
			return
		}
		idle := r.isIdle()
		if idle && (r.isStagnant() && r.nextStart() || r.perturb(until)) || gained {
			target, ok = r.shrunk(r.shrinkShare())
			continue
		}
		r.addToPool()
		if idle { // a length out of reach would be kept until repair finds something
			if target, ok = r.shorter(r.drawnShare()); !ok {
				return
			}
		}
		r.restart(target)
	}
}

// fill separates the pieces on the strip that is loaded, and accepts the layout
// where it can.
func (r *Searcher) fill(until float64) bool {
	before := r.s.passes
	if !r.separate(exploreEffort, until) {
		return false
	}
	if r.s.passes-before > compactAfter {
		r.compact()
	}
	r.accept(r.s.spots(), r.s.used())
	r.pool = r.pool[:0]
	return true
}

// shrinkShare is the share by which the strip is shortened after a gain. Some
// sets are filled by small steps only, others by repair from large ones; so
// every second search takes the largest step, and the others draw theirs. Once a
// start has been perturbed, all draw.
func (r *Searcher) shrinkShare() float64 {
	if r.shrinksMost && !r.perturbed {
		return shrinkMost
	}
	return r.drawnShare()
}

func (r *Searcher) drawnShare() float64 { return r.drawn(shrinkLeast, shrinkMost) }

// shrunk loads the best layout on a strip shorter by the given share: what
// lies right of a random cut moves left. It returns false when a piece has no
// place on that strip.
func (r *Searcher) shrunk(share float64) (target float64, ok bool) {
	if target, ok = r.shorter(share); !ok {
		return target, false
	}
	cut := r.rng.Float64() * target
	spots := slices.Clone(r.best)
	for i := range spots {
		if spots[i].X > cut {
			spots[i].X -= r.length - target
		}
	}
	r.s.resetWeights()
	r.s.load(spots, target)
	return target, true
}

// shorter is the length of the best layout less the given share, and whether
// every piece has a place on such a strip.
func (r *Searcher) shorter(share float64) (target float64, ok bool) {
	target = math.Max(r.length*(1-share), r.budget.Floor())
	return target, r.s.possible(target)
}
