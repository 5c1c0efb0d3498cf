package nest

import (
	"math"
	"time"

	"ellwand/nest/internal/search"
)

// likeShare of the budget goes to the part that is repeated (nest/MEASURED.md).
const likeShare = 0.8

// layLike lays like parts, each as the first: so the large set is never longer than such
// small lays with that share of the budget.
func (l *large) layLike(parts []laidPart) {
	found := l.asSmallSet(parts[0].part)
	for k := range parts {
		parts[k].spots, parts[k].length = found.Spots, found.Length
	}
}

// asSmallSet searches one part as if it were all that is laid.
func (l *large) asSmallSet(p part) search.Outcome {
	r := l.run
	q := *r.q
	q.model = p.model(l.m, l.spread)
	one := &run{q: &q, o: r.o, ctx: r.ctx, begin: r.begin, limit: time.Duration(likeShare * float64(r.limit))}
	one.o.Passes, one.o.Progress = int(math.Ceil(likeShare*float64(r.o.Passes))), nil
	for i := range q.model.Pieces {
		one.floor += q.model.OutlineArea(i) / q.model.Width
	}
	one.all()
	return one.leader()
}
