package nest

import "ellwand/nest/internal/search"

// all runs the searches: one a worker under a time budget, a fixed number
// otherwise. Between the stages they meet, and those behind go on from the
// best.
func (r *run) all() {
	count := r.o.Workers
	if r.limit == 0 {
		count = searches
	}
	r.best = make([]search.Outcome, count)
	all := make([]*search.Searcher, count)
	var levels []coarse
	if r.limit > 0 {
		levels = r.q.coarser()
	}
	r.sideBySide(count, func(k int) {
		all[k] = search.New(r.q.model, r.o.Seed, uint64(k), r, func(found search.Outcome) { r.offer(k, found) })
		all[k].Patience = r.o.Patience
		r.beginSearch(all[k], k, levels)
	})
	for _, until := range search.Stages(r.clustered) {
		r.sideBySide(count, func(k int) { all[k].Search(until) })
		best := r.leader()
		for _, s := range all {
			s.Adopt(best)
		}
	}
	for _, s := range all {
		r.passes += s.Passes()
	}
}

// beginSearch makes the first layout of search k, soon by coarser outlines where it has no
// start and a limit of time: under a budget of passes there is no haste, and it came to no
// shorter layouts (nest/MEASURED.md).
func (r *run) beginSearch(s *search.Searcher, k int, levels []coarse) {
	start := r.start(k)
	if start == nil {
		c := r.coarsely(k, levels)
		if c.lead(s) {
			return
		}
	}
	s.Begin(start)
}

// start is where search k begins. The second tries a repeated cluster, so that a
// set that does not gain by them loses little.
func (r *run) start(k int) []*search.Spot {
	if r.begins != nil {
		return r.begins
	}
	if r.o.Start == nil && k == 1 {
		spots := r.clusterStart()
		r.clustered = spots != nil
		return spots
	}
	return r.q.startSpots(r.o.Start)
}
