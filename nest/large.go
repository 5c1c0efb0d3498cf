package nest

import (
	"math"
	"slices"

	"ellwand/nest/internal/search"
)

// Shares of the budget of a large set after which the parts that differ are laid,
// and after which the period of like parts is as short as
// it gets. What is left goes to stretches of the whole.
const (
	unlikeShare = 0.6
	periodShare = 0.9
)

// large lays a large set, and returns false for one that is not.
func (r *run) large() bool {
	parts := partsOf(r.q.model)
	if parts == nil || r.begins != nil || r.o.Start != nil {
		return false
	}
	l := &large{run: r, m: r.q.model, spread: spreadGroups(r.q.model, parts)}
	if r.limit > 0 {
		l.levels = r.q.coarser()
	}
	for k := range r.lanes() {
		l.fitters = append(l.fitters, search.NewFitter(l.m, r.o.Seed, 3000+uint64(k)))
	}
	laid := make([]laidPart, len(parts))
	for k, p := range parts {
		laid[k] = laidPart{part: p}
	}
	alike := toSearch(l.m, parts) == len(parts[0].pieces)
	share := likeShare
	var built laidPart
	if alike {
		l.layLike(laid)
	} else {
		share, built = unlikeShare, l.build()
		l.lay(laid, share)
	}
	l.passes = int(share * float64(r.o.Passes))
	whole := joined(l.m, laid)
	if len(whole.spots) < len(l.m.Pieces) {
		return false // the context ended before every part had a layout
	}
	if built.spots != nil && built.length < whole.length {
		whole = built
	} else {
		l.offer(whole)
	}
	if alike {
		whole = l.repeat(laid, whole)
	}
	l.shorten(whole)
	r.passes += l.passes
	return true
}

// lanes is the number of searches side by side: under a budget of passes it does not
// depend on the workers.
func (r *run) lanes() int {
	if r.limit == 0 {
		return searches
	}
	return r.o.Workers
}

// build makes a first layout of the whole piece by piece, which is soon there.
func (l *large) build() laidPart {
	var built laidPart
	m := l.m
	if len(l.levels) > 0 {
		m = l.levels[0].model
	}
	s := search.New(m, l.run.o.Seed, 1999, l.run, func(found search.Outcome) {
		built = laidPart{spots: found.Spots, length: found.Length}
	})
	s.Begin(nil)
	for i := range built.spots {
		built.pieces = append(built.pieces, i)
	}
	if built.spots != nil {
		l.offer(built)
	}
	return built
}

// lay lays parts for a share of the budget, those of the same content once.
func (l *large) lay(parts []laidPart, share float64) {
	first := map[string]int{}
	var unlike []int
	like := make([]int, len(parts))
	for k := range parts {
		content := parts[k].content(l.m)
		if _, met := first[content]; !met {
			first[content] = k
			unlike = append(unlike, k)
		}
		like[k] = first[content]
	}
	l.search(parts, unlike, share)
	for k := range parts {
		from := &parts[like[k]]
		parts[k].spots, parts[k].length = from.spots, from.length
	}
}

// search lays the given parts, as many at a time as there are workers. A single one is
// searched once in each lane.
func (l *large) search(parts []laidPart, at []int, share float64) {
	r := l.run
	jobs := at
	for len(jobs) < r.lanes() {
		jobs = append(jobs, at...)
	}
	found := make([]search.Outcome, len(jobs))
	each := share * math.Min(1, float64(r.o.Workers)/float64(len(jobs)))
	r.sideBySide(len(jobs), func(n int) {
		found[n] = l.laidAlone(parts[jobs[n]].part, 2000+uint64(n), each, share)
	})
	for n, k := range jobs {
		if p := &parts[k]; p.spots == nil || found[n].Length < p.length {
			p.spots, p.length = found[n].Spots, found[n].Length
		}
	}
}

// laidAlone searches one part for a share of the time, or of the passes: soon by coarser
// outlines, where there are.
func (l *large) laidAlone(p part, stream uint64, time, passes float64) search.Outcome {
	r := l.run
	budget := &shareBudget{
		run: r, begin: r.Spent(0), passes: int(math.Ceil(passes * float64(r.o.Passes))), share: time,
	}
	var best search.Outcome
	report := func(found search.Outcome) { best = found }
	m := p.model(l.m, l.spread)
	c := coarseSearch{run: r, stream: 1000 * stream, passes: passesOfStart(budget.passes), share: time, report: report}
	levels := slices.Clone(l.levels)
	for k := range levels {
		levels[k].model = p.model(levels[k].model, l.spread)
	}
	c.over(m, levels)
	s := search.New(m, r.o.Seed, stream, budget, report)
	s.Patience = r.o.Patience
	if !c.lead(s) {
		s.Begin(nil)
	}
	for _, until := range search.Stages(false) {
		s.Search(until)
	}
	return best
}

// repeat shortens the period of like parts, and returns the whole made of it, where that
// is shorter.
func (l *large) repeat(laid []laidPart, whole laidPart) laidPart {
	p := periodOf(l.m, laid[0])
	for l.goesOn(periodShare) {
		found := make([]period, len(l.fitters))
		passes := make([]int, len(l.fitters))
		l.run.sideBySide(len(l.fitters), func(k int) {
			found[k], passes[k], _ = p.shortened(l.m, l.fitters[k], func() bool { return !l.goesOn(periodShare) })
		})
		for k, f := range found {
			l.count(passes[k], len(p.pieces))
			if f.length < p.length {
				p = f
			}
		}
	}
	one := p.cut(l.m)
	for k := range laid {
		laid[k].spots, laid[k].length = one.spots, one.length
	}
	if repeated := joined(l.m, laid); repeated.length < whole.length {
		l.offer(repeated)
		return repeated
	}
	return whole
}
