package search

func (r *Searcher) separate(e effort, until float64) bool {
	// An attempt counts as a pass, so that a budget ends even when each
	// succeeds at once.
	r.s.passes++
	return r.s.separate(e, func() bool { return r.budget.Stopped() || r.spent() >= until }, r.repair)
}
