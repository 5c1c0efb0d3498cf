package search

import (
	"math"
	"math/rand/v2"
	"slices"

	"ellwand/nest/internal/model"
	"ellwand/nest/portable"
)

// Budget says when a search stops.
type Budget interface {
	// Spent is the share of the budget used after so many passes, 0 to 1.
	Spent(passes int) float64
	// Stopped reports that the search must end at once.
	Stopped() bool
	// Floor is a length that cannot be beaten.
	Floor() float64
}

// repairGain is the share of the length below which a repaired layout does
// not count as shorter: most of those are the best layout found again.
const repairGain = 1e-4

// Searcher makes one layout short. It belongs to one goroutine.
type Searcher struct {
	m      *model.Model
	s      *state
	rng    *rand.Rand
	budget Budget
	report func(Outcome)
	// shrinksMost says that after a gain the largest step is taken, until the start
	// has been perturbed.
	shrinksMost bool

	// best is the layout at hand, the shortest since it was perturbed.
	best   []Spot
	length float64
	// returning says that it was perturbed and has not yet come below shortest.
	returning bool
	// gained is the number of passes made when best last gained, or when it was
	// perturbed or could not be.
	gained int
	// shortest is the shortest layout of the start that is followed.
	shortest start
	// perturbed says that the start has been perturbed.
	perturbed bool
	// advanced is the number of passes made when the start last gained, or was
	// begun or taken up again.
	advanced int
	// rung is that of the start in the race, waiting those of every rung.
	rung    int
	waiting [][]start
	// reported is the length of the shortest layout of all, improved the number of
	// passes made when it last gained noticeably.
	reported float64
	improved int
	// Patience ends exploring that has stopped paying: after so many times the
	// passes that the last gain took to come, without another, and no fewer than
	// PatienceLeast. 0 explores for the whole budget.
	Patience      float64
	PatienceLeast int
	// Before are passes of other searches that led to the start, which count as made
	// before the first gain.
	Before int

	least *float64 // overlap of the best layout on a sheet
	pool  []poolMember
}

// New makes a searcher. Those of one seed differ by their stream, in the random
// numbers and, odd ones from even ones, in the steps. report is called with each
// better layout.
func New(m *model.Model, seed, stream uint64, budget Budget, report func(Outcome)) *Searcher {
	rng := rand.New(rand.NewPCG(seed, stream))
	return &Searcher{
		m: m, s: newState(m, rng), rng: rng, budget: budget, report: report,
		shrinksMost: stream%2 == 1, PatienceLeast: patienceLeast, reported: math.Inf(1), shortest: start{length: math.Inf(1)},
	}
}

// Passes made so far.
func (r *Searcher) Passes() int { return r.s.passes }

// over reports that the search must end, or has nothing left to gain.
func (r *Searcher) over(until float64) bool {
	return r.best == nil || r.budget.Stopped() || r.spent() >= until || r.length <= r.floor()
}

// patienceLeast passes without gain are made before exploring is given up: one
// attempt on a length takes 200 to 600.
const patienceLeast = 1000

// isSpent reports that exploring has stopped paying.
func (r *Searcher) isSpent() bool {
	return r.Patience > 0 && r.s.passes-r.improved > max(r.PatienceLeast, int(r.Patience*float64(r.Before+r.improved)))
}

// floor is the bound, widened by what counts as touching.
func (r *Searcher) floor() float64 { return r.budget.Floor() + 2*r.m.Touch }

func (r *Searcher) accept(spots []Spot, length float64) {
	r.best = slices.Clone(spots)
	r.length, r.gained = length, r.s.passes
	if length < r.shortest.length*(1-repairGain) {
		r.returning, r.advanced = false, r.s.passes
	}
	if length < r.shortest.length {
		r.shortest = start{r.best, length}
	}
	if length >= r.reported {
		return
	}
	if length < r.reported*(1-repairGain) {
		r.improved = r.s.passes
	}
	r.reported = length
	r.report(Outcome{Spots: r.best, Length: length})
}

func (r *Searcher) spent() float64 { return r.budget.Spent(r.s.passes) }

// poolMember is a layout that nearly fits, with its overlap.
type poolMember struct {
	spots []Spot
	loss  float64
}

// start is a layout that waits for the others of its rung.
type start struct {
	spots  []Spot
	length float64
}

// drawn is a number between two, a small one as likely as a large one.
func (r *Searcher) drawn(least, most float64) float64 {
	return portable.Geometric(least, most, r.rng.Float64())
}
