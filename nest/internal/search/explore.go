package search

import (
	"maps"
	"math"
	"math/rand/v2"
	"slices"
	"sort"

	"ellwand/nest/internal/model"
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

// Outcome is a layout found by a search.
type Outcome struct {
	Spots  []Spot
	Length float64
	// Loss is 0 when nothing overlaps.
	Loss float64
	// Depths by which each piece overlaps others, when Loss is positive.
	Depths []float64
}

// Better reports whether an outcome beats another: less overlap, then
// shorter.
func (o Outcome) Better(than Outcome) bool {
	if o.Spots == nil || than.Spots == nil {
		return o.Spots != nil
	}
	if o.Loss != than.Loss {
		return o.Loss < than.Loss
	}
	return o.Length < than.Length
}

// Searcher makes one layout short. It belongs to one goroutine.
type Searcher struct {
	m      *model.Model
	s      *state
	rng    *rand.Rand
	budget Budget
	report func(Outcome)

	best   []Spot
	length float64
	least  *float64 // overlap of the best layout on a sheet
	pool   []poolMember
}

type poolMember struct {
	spots []Spot
	loss  float64
}

// New makes a searcher. report is called with each better layout.
func New(m *model.Model, seed, stream uint64, budget Budget, report func(Outcome)) *Searcher {
	rng := rand.New(rand.NewPCG(seed, stream))
	return &Searcher{m: m, s: newState(m, rng), rng: rng, budget: budget, report: report}
}

// Passes made so far.
func (r *Searcher) Passes() int { return r.s.passes }

// Begin makes the first layout, from the start where it is given.
func (r *Searcher) Begin(start []*Spot) {
	spots, length := r.s.construct(start)
	if r.m.Length > 0 {
		r.s.load(spots, r.m.Length)
		return
	}
	r.begin(spots, length)
}

// Search goes on until the share of the budget is spent: towards a shorter
// strip, or, on a sheet, towards a layout that fits.
func (r *Searcher) Search(until float64) {
	switch {
	case r.m.Length > 0:
		r.fit(until)
	case until <= exploreShare:
		r.explore(until)
	default:
		r.compress(until)
	}
}

// Adopt goes on from a layout that another search found.
func (r *Searcher) Adopt(found Outcome) {
	if r.m.Length > 0 || found.Loss > 0 || r.best == nil || found.Length >= r.length {
		return
	}
	r.best = append([]Spot(nil), found.Spots...)
	r.length = found.Length
	r.pool = r.pool[:0]
}

// begin makes the constructed layout the first to beat. One that overlaps, as
// a given start may, is separated on a strip that grows until it succeeds.
func (r *Searcher) begin(spots []Spot, length float64) {
	r.s.load(spots, length)
	for r.s.total() > 0 {
		if r.separate(exploreEffort, math.Inf(1)) {
			break
		}
		if r.budget.Stopped() {
			r.report(Outcome{Spots: r.s.spots(), Length: r.s.used(), Loss: r.s.total(), Depths: r.s.depths()})
			return
		}
		r.s.load(r.s.spots(), 1.02*r.s.length)
	}
	r.accept(r.s.spots(), r.s.used())
}

// over reports that the search must end, or has nothing left to gain.
func (r *Searcher) over(until float64) bool {
	return r.best == nil || r.budget.Stopped() || r.spent() >= until || r.length <= r.floor()
}

// floor is the bound, widened by what counts as touching.
func (r *Searcher) floor() float64 { return r.budget.Floor() + 2*r.m.Touch }

func (r *Searcher) accept(spots []Spot, length float64) {
	r.best = append([]Spot(nil), spots...)
	r.length = length
	r.report(Outcome{Spots: r.best, Length: length})
}

// Stages are the shares of the budget after which searches compare what they
// have and all go on from the best.
var Stages = []float64{0.4, 0.6, exploreShare, 1}

const (
	// exploreShare of the budget goes to exploring, the rest to compressing.
	exploreShare = 0.8
	// exploreStep is small throughout: steps of 1 % while they are easy cost
	// 0.3 points of density on average over the four garment sets.
	exploreStep = 0.001
	// shortenAfter is the number of passes that a step must have taken before
	// linear programs are tried: they take the time of some thirty and gain 0.1
	// to 1 % (measured at 85 to 89 % density).
	shortenAfter = 30
)

var exploreEffort = effort{patience: 200, strikes: 3}

func (r *Searcher) explore(until float64) {
	target, ok := r.shrunk(exploreStep)
	for ok && !r.over(until) {
		before := r.s.passes
		if r.separate(exploreEffort, until) {
			if r.s.passes-before > shortenAfter {
				r.shorten()
			}
			r.accept(r.s.spots(), r.s.used())
			r.pool = r.pool[:0]
			target, ok = r.shrunk(exploreStep)
			continue
		}
		if r.spent() >= until {
			return
		}
		r.remember()
		r.restart(target)
	}
}

func (r *Searcher) spent() float64 { return r.budget.Spent(r.s.passes) }

func (r *Searcher) separate(e effort, until float64) bool {
	// An attempt counts as a pass, so that a budget ends even when each
	// succeeds at once.
	r.s.passes++
	return r.s.separate(e, func() bool { return r.budget.Stopped() || r.spent() >= until })
}

// shrunk loads the best layout on a strip shorter by the given share: what
// lies right of a random cut moves left. It returns false when a piece has no
// place on that strip.
func (r *Searcher) shrunk(share float64) (target float64, ok bool) {
	target = math.Max(r.length*(1-share), r.budget.Floor())
	if !r.s.possible(target) {
		return target, false
	}
	cut := r.rng.Float64() * target
	spots := append([]Spot(nil), r.best...)
	for i := range spots {
		if spots[i].X > cut {
			spots[i].X -= r.length - target
		}
	}
	r.s.forget()
	r.s.load(spots, target)
	return target, true
}

// remember keeps the state in the pool of layouts that nearly fit.
func (r *Searcher) remember() {
	r.pool = append(r.pool, poolMember{r.s.spots(), r.s.total()})
	sort.SliceStable(r.pool, func(a, b int) bool { return r.pool[a].loss < r.pool[b].loss })
}

// restart loads a pool member, the better the likelier, and disturbs it.
func (r *Searcher) restart(target float64) {
	at := min(int(math.Abs(r.rng.NormFloat64())*0.25*float64(len(r.pool))), len(r.pool)-1)
	r.s.forget()
	r.s.load(r.pool[at].spots, target)
	if r.s.turnGroup() {
		return
	}
	r.s.swapTwo()
}

// turnGroup turns all pieces of a random group to another direction, one time
// in three. It returns whether it did.
func (s *state) turnGroup() bool {
	groups := slices.Sorted(maps.Keys(s.direction))
	if len(groups) == 0 || s.rng.IntN(3) > 0 {
		return false
	}
	group, turned := groups[s.rng.IntN(len(groups))], false
	for i, piece := range s.m.Pieces {
		if piece.Group != group {
			continue
		}
		now := s.m.Shapes[s.bodies[i].shape].Direction
		for _, k := range piece.Shapes {
			if s.m.Shapes[k].Direction != now && (!turned || s.m.Shapes[k].Direction == s.direction[group]) {
				s.place(i, s.clampInto(i, k))
				turned = true
				break
			}
		}
	}
	return turned
}

// clampInto returns the spot of piece i, in another shape.
func (s *state) clampInto(i, shape int) Spot {
	x, y := s.spans(i, shape)
	return Spot{shape, x.snap(s.bodies[i].x), y.snap(s.bodies[i].y)}
}

// swapTwo exchanges two large pieces of different outline.
func (s *state) swapTwo() {
	order := s.largestFirst()
	var total float64
	for i := range order {
		total += s.m.HullArea(i)
	}
	large := 0
	for sum := 0.0; large < len(order) && sum < 0.75*total; large++ {
		sum += s.m.HullArea(order[large])
	}
	large = max(large, min(2, len(order)))
	if large < 2 {
		return
	}
	for tries := 0; tries < 50; tries++ {
		i, j := order[s.rng.IntN(large)], order[s.rng.IntN(large)]
		if i == j || s.base(i) == s.base(j) {
			continue
		}
		a, b := s.spot(i), s.spot(j)
		s.place(i, s.clamp(i, Spot{a.Shape, b.X, b.Y}))
		s.place(j, s.clamp(j, Spot{b.Shape, a.X, a.Y}))
		return
	}
}

// used is the length that the pieces take.
func (s *state) used() float64 {
	most := 0.0
	for i := 0; i < s.pieces; i++ {
		most = math.Max(most, s.bodies[i].x+s.bodies[i].hx)
	}
	return most
}

const (
	compressFirst = 0.0005
	compressLast  = 0.00001
)

var compressEffort = effort{patience: 100, strikes: 5}

// compress shortens the best layout by ever smaller steps.
func (r *Searcher) compress(until float64) {
	start := r.spent()
	for !r.over(until) {
		share := (r.spent() - start) / math.Max(1e-9, until-start)
		if _, ok := r.shrunk(compressFirst * math.Pow(compressLast/compressFirst, share)); !ok {
			return
		}
		if r.separate(compressEffort, until) {
			r.shorten()
			r.accept(r.s.spots(), r.s.used())
		}
	}
}

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
		r.remember()
		r.restart(r.m.Length)
	}
}

// depths returns how deeply each piece overlaps others.
func (s *state) depths() []float64 {
	n := len(s.bodies)
	out := make([]float64, s.pieces)
	for i := range out {
		for j, v := range s.severity[i*n : (i+1)*n] {
			out[i] = math.Max(out[i], float64(v)/(s.factor[i]*s.factor[j]))
		}
	}
	return out
}

func (s *state) base(i int) int { return s.m.Shapes[s.m.Pieces[i].Shapes[0]].Base }
