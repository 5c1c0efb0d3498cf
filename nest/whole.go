package nest

import (
	"ellwand/nest/internal/model"
	"ellwand/nest/internal/search"
)

// large is the search for a large set: its parts are laid each by itself, one behind
// the other, then stretches of the strip are made shorter where they give way. So a
// large set is never longer than its parts.
type large struct {
	run     *run
	m       *model.Model
	spread  map[int]bool // groups of which several parts have pieces
	levels  []coarse
	fitters []*search.Fitter
	passes  int // over the whole, that the stretches amount to
}

// offer reports a layout of the whole.
func (l *large) offer(whole laidPart) {
	spots := make([]search.Spot, len(whole.spots))
	for k, i := range whole.pieces {
		spots[i] = whole.spots[k]
	}
	l.run.best = make([]search.Outcome, 1)
	l.run.offer(0, search.Outcome{Spots: spots, Length: whole.length})
}

// goesOn reports that the share of the budget is not spent.
func (l *large) goesOn(share float64) bool {
	return !l.run.Stopped() && l.run.Spent(l.passes) < share
}

// count adds passes over so many pieces, as passes over the whole.
func (l *large) count(passes, pieces int) {
	l.passes += max(1, passes*pieces/len(l.m.Pieces))
}
