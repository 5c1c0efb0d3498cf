package search

// fit looks for a layout without overlap on a sheet of fixed length.
func (r *Searcher) fit(until float64) {
	for {
		r.separate(exploreEffort, until)
		if loss := r.s.total(); r.least == nil || loss < *r.least {
			r.least = &loss
			r.report(Outcome{Spots: r.s.spots(), Length: r.s.used(), Loss: loss, Depths: r.s.depths()})
		}
		if *r.least == 0 || r.spent() >= until || r.budget.Stopped() {
			return
		}
		r.addToPool()
		r.restart(r.m.Length)
	}
}
