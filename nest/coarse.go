package nest

import (
	"math"
	"time"

	"ellwand/nest/internal/model"
	"ellwand/nest/internal/search"
)

// level is how outlines are simplified for a first search, since most of a short one
// makes tables, and of those most goes by the square of the number of convex parts.
type level struct {
	tolerance float64 // share of the width
	cells     int     // of a table on its long side
	patience  int     // passes without gain that end a search
	starts    int     // searches, where there is a limit of time and some of it left
}

// levels from the coarsest: 2.8 and 1 mm on cloth of 1.40 m, by which drafted pieces grow
// by 0.4 and 0.1 % and have a fifth and a half of their parts (nest/MEASURED.md).
var levels = []level{{2e-3, 24, 150, 2}, {7e-4, 32, 200, 3}}

const (
	// fewerParts is how many times fewer parts a level must have than the outlines
	// themselves, and fewerThanNext than the next.
	fewerParts    = 2
	fewerThanNext = 1.5
	// coarseShare of the budget goes to all levels at most, coarseOnlyShare where the
	// tables of the outlines themselves would take too long.
	coarseShare     = 0.8
	coarseOnlyShare = 0.95
	// startShare of that is when no further start is made.
	startShare = 0.5
	// coarsePatience: see search.Searcher.Patience.
	coarsePatience = 0.5
	// tableShare of a limit of time is the most that tables may take.
	tableShare = 0.35
	// sumTime and tableTime are about what a sum of parts takes in a table, and the rest
	// of one.
	sumTime   = 3 * time.Microsecond
	tableTime = 60 * time.Microsecond
)

// coarse is the problem at a level.
type coarse struct {
	level
	number int
	model  *model.Model
}

// coarser are the levels that have fewer parts, the coarsest first: none of outlines that
// have few as they are, or for a sheet.
func (q *prepared) coarser() []coarse {
	m := q.model
	if m.Length > 0 {
		return nil
	}
	_, all := m.Size()
	var list []coarse
	last := 0.0
	for k, l := range levels {
		c := m.Coarser(float64(l.tolerance*q.scale), l.cells)
		_, parts := c.Size()
		if fewerParts*parts > all || float64(parts) < fewerThanNext*last {
			continue
		}
		list, last = append(list, coarse{l, k, c}), float64(parts)
	}
	return list
}

// affords reports whether the tables of a model would take no more than a share of the
// time. Under a budget of passes they may take any.
func affords(m *model.Model, limit time.Duration) bool {
	outlines, parts := m.Size()
	tables := 2 * time.Duration(outlines*outlines)
	return limit == 0 || tables*tableTime+2*time.Duration(parts*parts)*sumTime <= time.Duration(tableShare*float64(limit))
}

// coarsely searches the levels for search k of the whole.
func (r *run) coarsely(k int, levels []coarse) coarseSearch {
	c := coarseSearch{
		run: r, stream: 4000 + 1000*uint64(k), passes: passesOfStart(r.o.Passes), share: 1, floor: r.floor,
		report: func(found search.Outcome) { r.offer(k, found) },
	}
	c.over(r.q.model, levels)
	return c
}

// coarseSearch is a search of a problem, or of a part of it, at its levels one after the
// other: a finer one goes on from the shortest layout of the last, and from others.
type coarseSearch struct {
	run    *run
	stream uint64
	passes int     // of each start, at most
	share  float64 // of the time
	floor  float64 // see run
	report func(search.Outcome)
	best   search.Outcome // the shortest found
	made   int            // passes until then
	passed int
}

// over searches the levels of a model m.
func (c *coarseSearch) over(m *model.Model, levels []coarse) {
	limit := time.Duration(c.share * float64(c.run.limit))
	share := c.share * coarseShare
	if !affords(m, limit) {
		share = c.share * coarseOnlyShare
	}
	begin := c.run.Spent(0)
	for _, l := range levels {
		if c.best.Spots != nil && !affords(l.model, limit) {
			continue
		}
		for k := range l.starts {
			budget := &shareBudget{run: c.run, begin: begin, passes: c.passes, share: share, floor: c.floor}
			if k > 0 && (c.passes > 0 || budget.Spent(0) > startShare) || c.run.Stopped() {
				break
			}
			c.start(l, k, budget)
		}
	}
}

// lead has a search of the outlines themselves go on from what was found. It returns
// false when nothing was.
func (c *coarseSearch) lead(s *search.Searcher) bool {
	begin := c.best.Begin()
	if begin == nil {
		return false
	}
	s.Before = c.made
	s.BeginFrom(begin)
	return true
}

// start is one search: the first of a level goes on from the best.
func (c *coarseSearch) start(l coarse, k int, budget search.Budget) {
	begin := c.best.Begin()
	var s *search.Searcher
	s = search.New(l.model, c.run.o.Seed, c.stream+uint64(100*l.number+10*k), budget, func(found search.Outcome) {
		if found.Loss > 0 || c.best.Spots != nil && found.Length >= c.best.Length {
			return
		}
		c.best, c.made = found, c.passed+s.Passes()
		c.report(found)
	})
	s.Patience, s.PatienceLeast = coarsePatience, l.patience
	if k == 0 && begin != nil {
		s.Follow(begin)
	} else {
		s.Hurry()
	}
	c.passed += s.Passes()
}

// passesOfStart is how many passes each start has at most, where the search after it has
// so many.
func passesOfStart(passes int) int { return int(math.Ceil(float64(passes) / 8)) }
