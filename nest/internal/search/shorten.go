package search

import (
	"ellwand/nest/internal/compact"
)

const (
	// shortenReach is how far a linear program may move a piece, as a share of
	// the width.
	shortenReach = 0.01
	// shortenGain is the share of the length below which another program is
	// not worth its time.
	shortenGain   = 1e-5
	shortenRounds = 8
	// shortenMost is the number of pieces up to which programs pay: at 400
	// pieces one takes as long as dozens of passes.
	shortenMost = 400
)

// shorten draws the layout in the state, which must be without overlap,
// together by linear programs. What it accepts is tested for overlap again.
func (r *Searcher) shorten() {
	s := r.s
	if s.pieces > shortenMost {
		return
	}
	length := s.used()
	for range shortenRounds {
		before := s.spots()
		moved, ok := compact.Shorten(s.m, before, shortenReach*s.m.Width)
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
		if gain < shortenGain {
			return
		}
	}
}
