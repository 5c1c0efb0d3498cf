package search

const (
	// hurryStarts are the first layouts made, of which the shortest is gone on from: with
	// one shirtblouse is 2 % longer after 0.3 s, with four eight jobs are no shorter.
	hurryStarts = 2
	// hurryShrink is the share by which the strip is made shorter at first: by 4 or 8 %
	// most attempts fail.
	hurryShrink = 0.02
	// patientPieces of coarse outlines have so many pairs that most are seldom asked for:
	// 36 to 54 pieces are 1.5 to 2.5 % shorter after 0.1 to 0.3 s, 13 to 17 pieces 1 % longer.
	patientPieces = 24
)

// hurryEffort is small: a step that fails is halved.
var hurryEffort = effort{patience: 15, strikes: 1}

// Hurry makes a layout short soon: the shortest of some first layouts, by large steps,
// which are halved where they fail, and then as Search explores.
func (r *Searcher) Hurry() {
	r.beginShortest()
	r.s.pairs.patient = r.s.pieces >= patientPieces
	for share := hurryShrink; share > shrinkMost/2 && !r.over(1); {
		if r.squeezed(share) && r.separate(hurryEffort, 1) {
			r.accept(r.s.spots(), r.s.used())
			continue
		}
		share /= 2
	}
	r.s.pairs.patient = false // grid sampling wants every table
	r.explore(1)
}

// beginShortest begins from the shortest of some first layouts.
func (r *Searcher) beginShortest() {
	var best start
	for k := 0; k < hurryStarts && (k == 0 || !r.budget.Stopped() && r.spent() < 1); k++ {
		clear(r.s.direction)
		spots, length := r.s.construct(nil, r.budget.Stopped)
		if k == 0 || length < best.length {
			best = start{spots, length}
		}
	}
	r.begin(best.spots, best.length)
}

// squeezed loads the best layout drawn together onto a strip shorter by the given share.
// It returns false when a piece has no place on that strip.
func (r *Searcher) squeezed(share float64) bool {
	target, ok := r.shorter(share)
	if !ok {
		return false
	}
	r.s.resetWeights()
	r.s.load(stretched(r.best, target/r.length), target)
	return true
}

// Follow goes on from a layout of larger outlines, drawn together, as Search explores.
func (r *Searcher) Follow(begin []*Spot) {
	r.BeginFrom(begin)
	r.explore(1)
}

// BeginFrom begins from a layout of larger outlines, drawn together.
func (r *Searcher) BeginFrom(begin []*Spot) {
	r.Begin(begin)
	if r.best == nil || r.over(1) {
		return
	}
	r.s.load(r.best, r.length)
	r.compact()
	r.accept(r.s.spots(), r.s.used())
}
