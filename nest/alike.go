package nest

import (
	"math"
	"time"

	"ellwand/nest/internal/search"
)

// likeShare of the budget goes to the part that is repeated.
const likeShare = 0.8

// layLike lays like parts, each as the first: that one by the search of a small set with
// a share of the budget, so that the large set is never longer than such small lays.
func (l *large) layLike(parts []laidSubset) {
	found := l.run.ofPart(parts[0].subset, l, likeShare)
	for k := range parts {
		parts[k].spots, parts[k].length = found.Spots, found.Length
	}
}

// ofPart searches one part as if it were all that is laid.
func (r *run) ofPart(p subset, l *large, share float64) search.Outcome {
	q := *r.q
	q.model = p.model(l.m, l.spread)
	one := &run{q: &q, o: r.o, ctx: r.ctx, begin: r.begin, limit: time.Duration(share * float64(r.limit))}
	one.o.Passes, one.o.Progress = int(math.Ceil(share*float64(r.o.Passes))), nil
	for i := range q.model.Pieces {
		one.floor += q.model.OutlineArea(i) / q.model.Width
	}
	one.all()
	return one.leader()
}
