// Package plan finds the length of cloth that pieces need in every lay, and where
// each of them lies. Every plan is proven before anybody sees it.
package plan

import (
	"context"
	"errors"
	"fmt"
	"math"

	"ellwand/fabric/bed"
	"ellwand/fabric/cloth"
	"ellwand/fabric/internal/geometry"
	"ellwand/fabric/lay"
	"ellwand/fabric/rules"
	"ellwand/nest"
	"ellwand/nest/layout"
	"ellwand/nest/verify"
	"ellwand/pieces"
)

// Options say which lays to try and how much to search. The zero value tries
// every lay with the usual effort.
type Options struct {
	// Lays to try; empty means all.
	Lays []lay.Kind
	// Effort is how much work goes into each lay. Those that are seldom the best have
	// a quarter of it when others are tried too.
	Effort Effort
	// Passes, when not 0, are made in place of the effort: exactly so many in each
	// search.
	Passes int
	Seed   uint64
	// Workers is the number of goroutines; 0 means one a core.
	Workers int
	// Known are plans found for stricter questions about the same pieces, such
	// as one-way cloth or a repeat. Those that are plans of this question too
	// are where its searches start, so that its answer is never longer.
	Known []lay.Plan
	// enough is a length that will do: the search of a lay of one bed ends there.
	Enough float64
	// Untidied leaves a layout that fits on a remnant as it was found, instead
	// of pushing it together.
	Untidied bool
	// Kept are plans that were found for this very question before, as Bare gives
	// them. They are laid anew and verified; the answer is never longer.
	Kept []lay.Plan
	// KeptPlain are those of the same pieces on the same cloth without its repeat, by
	// which the cost of matching is measured.
	KeptPlain []lay.Plan
	// Searched says that the kept plans are what this search found: the lays that
	// they have are not searched again.
	Searched bool
	// Tables are shared by searches about the same pieces, whatever their cloth;
	// nil makes some. They are of [NewTables].
	Tables *nest.Tables
	// Progress, when set, is called with each better layout of a lay.
	Progress func(lay.Kind, nest.Progress)
	// share of the budget; 0 is all.
	share float64
}

// Requirement is how much of a cloth a set of pieces needs.
type Requirement struct {
	Cloth cloth.Cloth
	// Lays that were tried, in the order of the constants.
	Lays []lay.Plan
	// Chosen is an index into Lays: the lay with the least to buy; of equals
	// the one with the least to chalk.
	Chosen int
	// Length of cloth that the chosen lay takes, and Buy, mm.
	Length, Buy float64
	// Work that the searches did.
	Work Work
	// Found are the possible lays as they were found, before those of two parts that
	// gain nothing were given up.
	Found []lay.Plan
	// FoundPlain is the lay without the repeat, by which the cost of matching is
	// measured; none for plain cloth.
	FoundPlain []lay.Plan
	// Improved says that a kept plan was shorter than what the search found.
	Improved bool
	// Matching says what matching the repeat costs; nil for plain cloth.
	Matching *Matching
}

// nominalWidth of cloth, mm, that tolerances are shares of on any: so that what is
// made for one width serves for all [source.OwnChoice].
const nominalWidth = 1400

// NewTables for searches on any cloth.
func NewTables() *nest.Tables { return nest.NewTables(nominalWidth) }

// ErrInternal marks a layout that failed its check: a fault of the program,
// not of the job.
var ErrInternal = errors.New("internal error")

// Require finds the length of cloth that all pieces need, in every lay that
// is possible, each solved and verified. Pieces whose Cloth is another one
// must be left out by the caller.
//
// The open lay is searched last and starts from the others, opened out flat, so
// that it is never longer than any of them. A gap between pieces is the
// exception: it is not kept along a fold or a straight cut across, which is
// slit, so that the open lay may need more.
//
// When the context is cancelled it returns the best found so far, and begins no
// lay but the open one if there is one already. It fails,
// with a sentence for the maker, when the cloth or a piece is not sound or
// when no lay is possible.
func Require(ctx context.Context, c cloth.Cloth, all []pieces.Piece, options Options) (Requirement, error) {
	if err := CheckJob(c, all); err != nil {
		return Requirement{}, err
	}
	wanted, err := rules.DemandsOf(rules.Enlarged(c, all))
	if err != nil {
		return Requirement{}, err
	}
	t := &Table{Ctx: ctx, Cloth: c, Asked: all, Wanted: wanted, Options: options, Work: &Work{}}
	plans := map[lay.Kind]lay.Plan{}
	for _, kind := range searchOrder {
		if !options.wants(kind) {
			continue
		}
		if kind != lay.Open && endedWithOne(ctx, plans) {
			t.Left(t.share(kind))
			continue
		}
		plan, err := t.planLay(kind)
		if err != nil {
			return Requirement{}, err
		}
		plans[kind] = plan
	}
	out := Requirement{Cloth: c, Chosen: -1}
	for _, kind := range lay.Kinds() {
		if plan, tried := plans[kind]; tried {
			out.Lays = append(out.Lays, plan)
		}
	}
	for _, plan := range out.Lays {
		if plan.Possible() {
			out.Found = append(out.Found, plan)
		}
	}
	out.compare()
	out.Work, out.Improved = *t.Work, t.improved
	out, err = out.choose()
	if err != nil || c.Repeat.IsPlain() {
		return out, err
	}
	out.Matching, out.FoundPlain, err = t.costOfMatching(out.Lays[out.Chosen])
	return out, err
}

// endedWithOne reports that the search was ended when a lay had been found: the
// lays still to come are left out, but for the open one, which begins from it.
func endedWithOne(ctx context.Context, plans map[lay.Kind]lay.Plan) bool {
	if ctx.Err() == nil {
		return false
	}
	for _, plan := range plans {
		if plan.Possible() {
			return true
		}
	}
	return false
}

// searchOrder has the open lay last: whatever the others find, opened out, is
// a layout of it.
var searchOrder = []lay.Kind{lay.FoldedAlong, lay.FoldedAcross, lay.CutAcross, lay.SelvedgeIn, lay.BothSelvedgesIn, lay.InStretches, lay.Open}

func (o Options) wants(kind lay.Kind) bool {
	for _, l := range o.Lays {
		if l == kind {
			return true
		}
	}
	return len(o.Lays) == 0
}

// shorter returns the start when it is sound and the search, against its
// purpose, gave a longer layout.
func shorter(problem layout.Problem, found layout.Layout, start *layout.Layout) layout.Layout {
	if start != nil && start.Length < found.Length && verify.Layout(problem, *start) == nil {
		return *start
	}
	return found
}

// choose picks the lay with the least to buy; of equals the one with the least to
// chalk.
func (r Requirement) choose() (Requirement, error) {
	var reasons []error
	var open error
	least := math.Inf(1)
	for _, plan := range r.Lays {
		if plan.Possible() {
			least = min(least, plan.Buy)
		} else {
			reason := fmt.Errorf("%s: %s", plan.Lay, plan.Impossible)
			reasons = append(reasons, reason)
			if plan.Lay == lay.Open {
				open = reason
			}
		}
	}
	for i, plan := range r.Lays {
		if plan.Possible() && plan.Buy <= least+SameLength && (r.Chosen < 0 || isLessWorkThan(plan, r.Lays[r.Chosen])) {
			r.Chosen, r.Length, r.Buy = i, plan.Taken, plan.Buy
		}
	}
	if r.Chosen < 0 && open != nil {
		// What fits no open cloth fits none that is folded: the reasons of the
		// other lays would only bury it.
		reasons = []error{open}
	}
	if r.Chosen < 0 && len(r.Lays) == 1 && r.Lays[0].Lay != lay.Open {
		return Requirement{}, fmt.Errorf("it cannot be laid %s: %s", r.Lays[0].Lay.Way(), r.Lays[0].Impossible)
	}
	if r.Chosen < 0 {
		return Requirement{}, fmt.Errorf("no lay of %s is possible:\n%w", r.Cloth, errors.Join(reasons...))
	}
	return r, nil
}

// isLessWorkThan another plan: less to chalk, or as much in fewer cuts.
func isLessWorkThan(p lay.Plan, other lay.Plan) bool {
	if less := chalkLine(other) - chalkLine(p); math.Abs(less) > SameLength {
		return less > 0
	}
	return p.Cuts < other.Cuts
}

// chalkLine is the length of all that is chalked, mm: the outlines, but for what lies on
// a fold, and the cuts across the cloth that the lay itself takes.
func chalkLine(p lay.Plan) float64 {
	sum := float64(p.Cuts-len(p.Pieces)) * bed.UsableWidth(lay.Open, p.Cloth)
	for _, l := range p.Pieces {
		for i := 1; i < len(l.Outline); i++ {
			if a, b := l.Outline[i-1], l.Outline[i]; !l.OnFold || !isFold(p.PartOf(l), a[1]) || !isFold(p.PartOf(l), b[1]) {
				sum += geometry.Distance(a, b)
			}
		}
	}
	return sum
}

// isFold reports whether a place across is a fold of a part.
func isFold(part lay.Part, y float64) bool {
	return part.FoldLow && math.Abs(y-part.Y) <= pinTolerance ||
		part.FoldHigh && math.Abs(y-part.Y-part.Width) <= pinTolerance
}

// sameLength, mm: shorter differences do not matter to anyone with scissors
// [source.OwnChoice].
const SameLength = 1.0

// Opening says how much less an open lay takes than the folded one, in length
// and to buy (mm, not negative). It reports false unless both are possible.
func (r Requirement) Opening() (length, buy float64, ok bool) {
	open, folded := -1, -1
	for i, plan := range r.Lays {
		if plan.Possible() && plan.Lay == lay.Open {
			open = i
		}
		if plan.Possible() && plan.Lay == lay.FoldedAlong {
			folded = i
		}
	}
	if open < 0 || folded < 0 {
		return 0, 0, false
	}
	length = r.Lays[folded].Taken - r.Lays[open].Taken
	buy = r.Lays[folded].Buy - r.Lays[open].Buy
	return max(length, 0), max(buy, 0), true
}
