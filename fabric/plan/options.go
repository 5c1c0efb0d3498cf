package plan

import (
	"ellwand/fabric/lay"
	"ellwand/nest"
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
	// WarmStarts are plans found for stricter questions about the same pieces, such
	// as one-way cloth or a repeat. Those that are plans of this question too
	// are where its searches start, so that its answer is never longer.
	WarmStarts []lay.Plan
	// Enough is a length that will do: the search of a lay of one bed ends there.
	Enough float64
	// Untidied leaves a layout that fits on a remnant as it was found, instead
	// of pushing it together.
	Untidied bool
	// Kept are plans that were found for this very question before, as Bare gives
	// them. They are laid anew and verified; the answer is never longer.
	Kept []lay.Plan
	// Fixed has pieces that stay where they lie in it, such as those that are cut
	// already; all others are laid around them, in its lay alone.
	Fixed lay.Plan
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
	// Better, when set, is called with each better layout of a lay of one part, which it
	// may have as a plan, proven like any other; false when that is none. It must not keep
	// the search waiting.
	Better func(kind lay.Kind, plan func() (lay.Plan, bool))
	// share of the budget; 0 is all.
	share float64
}

// nominalWidth of cloth, mm, that tolerances are shares of on any: so that what is
// made for one width serves for all [source.OwnChoice].
const nominalWidth = 1400

// NewTables for searches on any cloth.
func NewTables() *nest.Tables { return nest.NewTables(nominalWidth) }

func (o Options) wants(kind lay.Kind) bool {
	for _, l := range o.Lays {
		if l == kind {
			return true
		}
	}
	return len(o.Lays) == 0
}

// Scaled is a share of a budget.
func (o Options) Scaled(share float64) Options {
	if o.share == 0 {
		o.share = 1
	}
	o.share *= share
	return o
}
