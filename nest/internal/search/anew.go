package search

// anewPatience is the number of passes, on top of those that led to its last
// gain, after which a start without gain is given up (nest/README.md): half a
// minute of a set of 24 pieces.
const anewPatience = 100_000

// isStuck reports that the start which is followed has gone as long without
// gain as it took to come where it is, and anewPatience more.
func (r *Searcher) isStuck() bool {
	passes := r.s.passes
	return passes-r.gained > r.gained-r.begun+anewPatience
}

// beginAnew leaves the best layout, which has been reported, for another first
// one: starts differ by more than a long search gains (random restarts: Luby,
// Sinclair, Zuckerman 1993, doi 10.1016/0020-0190(93)90029-9). It returns false,
// and changes nothing, when that one overlaps.
func (r *Searcher) beginAnew() bool {
	before, length := r.s.spots(), r.s.length
	clear(r.s.direction)
	spots, used := r.s.construct(nil)
	r.s.load(spots, used)
	if r.s.total() > 0 {
		r.s.load(before, length)
		return false
	}
	r.best, r.length, r.pool = spots, used, r.pool[:0]
	r.begun, r.gained = r.s.passes, r.s.passes
	return true
}
