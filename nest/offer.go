package nest

import (
	"ellwand/nest/internal/search"
	"ellwand/nest/layout"
)

// leader is the best outcome of all searches.
func (r *run) leader() search.Outcome {
	best := r.best[0]
	for _, b := range r.best[1:] {
		if b.Better(best) {
			best = b
		}
	}
	return best
}

// offer takes a better layout of search k.
func (r *run) offer(k int, found search.Outcome) {
	r.mu.Lock()
	defer r.mu.Unlock()
	if r.best[k].Spots != nil && r.best[k].Better(found) {
		return
	}
	r.best[k] = found
	if found.Loss > 0 || r.reported > 0 && found.Length >= r.reported {
		return
	}
	r.reported = found.Length
	if r.reported <= r.floor*(1+touchShare) || r.q.model.Length > 0 {
		r.solved.Store(true)
	}
	if r.o.Progress != nil {
		r.o.Progress(Progress{Length: found.Length, Bound: r.bound, Elapsed: r.elapsed(),
			Layout: func() layout.Layout { return r.q.layout(found.Spots) }})
	}
}
