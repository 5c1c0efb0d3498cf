package search

import (
	"ellwand/nest/internal/compact"
)

const (
	// compactReach is how far a linear program may move a piece, as a share of
	// the width.
	compactReach = 0.01
	// compactGain is the share of the length below which another program is
	// not worth its time.
	compactGain   = 1e-5
	compactRounds = 8
	// compactMost is the number of pieces up to which programs pay: at 400
	// pieces one takes as long as dozens of passes.
	compactMost = 400
)

// compact draws the layout in the state, which must be without overlap,
// together by linear programs. What it accepts is tested for overlap again.
func (r *Searcher) compact() {
	s := r.s
	if s.pieces > compactMost {
		return
	}
	length := s.used()
	for range compactRounds {
		before := s.spots()
		moved, ok := compact.Shorten(s.m, before, compactReach*s.m.Width)
		if !ok {
			return
		}
		s.load(moved, s.length)
		now := s.used()
		if s.total() > 0 || now >= length {
			s.load(before, s.length)
			return
		}
		gain := (length - now) / length
		length = now
		if gain < compactGain {
			return
		}
	}
}
