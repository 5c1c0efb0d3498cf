package search

import "ellwand/nest/internal/compact"

const repairRounds = 6

// repair parts the few pieces that overlap when a separation gives up, by
// linear programs that may lengthen the strip. Most layouts that fail overlap
// in two to ten places by a thousandth of the length or so: parted, many are
// still shorter than the best. It returns whether it succeeded; if not, the
// state is as before.
func (r *Searcher) repair() bool {
	s := r.s
	if r.m.Length > 0 || r.best == nil || s.pieces > compactMost {
		return false
	}
	aim := r.length * (1 - repairGain)
	before, length := s.spots(), s.length
	spots := before
	for round := range repairRounds {
		var ok bool
		if spots, ok = compact.Shorten(s.m, spots, compactReach*s.m.Width); !ok {
			break
		}
		s.load(spots, r.length)
		if used := s.used(); used < aim && s.total() == 0 {
			return true
		} else if used >= aim && round > 0 {
			break
		}
	}
	s.load(before, length)
	return false
}

// part moves the pieces of a start that overlap a little apart by linear programs, on
// as long a strip as it takes: pieces cut from one another whose contours were rounded.
// It returns whether it succeeded; if not, the state is as before.
func (r *Searcher) part() bool {
	s := r.s
	if r.m.Length > 0 || s.pieces > compactMost {
		return false
	}
	before, length := s.spots(), s.length
	spots := before
	for range repairRounds {
		var ok bool
		if spots, ok = compact.Shorten(s.m, spots, compactReach*s.m.Width); !ok {
			break
		}
		s.load(spots, (1+compactReach)*length)
		if s.total() == 0 {
			return true
		}
	}
	s.load(before, length)
	return false
}
