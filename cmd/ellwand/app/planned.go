package app

import (
	"math"

	"ellwand/fabric/lay"
	"ellwand/fabric/plan"
	"ellwand/fabric/quote"
)

// Change says how a plan differs from the quote of its job.
type Change int

// The ways in which a plan may differ from the quote.
const (
	// Unchanged says that it is the plan that was quoted, or that nothing was.
	Unchanged Change = iota
	// JobChanged says that the cloth or its pieces are others now.
	JobChanged
	// LayChanged says that they are the same, and are laid otherwise.
	LayChanged
)

// Planned is the lay of a cloth that is drawn.
type Planned struct {
	lay.Plan
	// Need is the requirement that it was taken from; of a lay that was asked
	// for it holds that lay alone.
	Need plan.Requirement
	// InsteadOf is the lay that was asked for where this one is drawn in its
	// place, and Gainless says why; otherwise nil and empty.
	InsteadOf *lay.Kind
	Gainless  string
	// Ended says whether the search was ended early.
	Ended plan.Ended
	// SinceQuote says how it differs from the quote of the job, and Quoted is the mark
	// that stands there; empty where there is none.
	SinceQuote Change
	Quoted     string
	// Kept as in Estimated.
	Kept bool
}

// Reckoned is the amount of the lay that is drawn by its parts. It reports false while the
// search goes on, and where another lay is drawn than the requirement rests on.
func (p Planned) Reckoned() (Estimated, bool) {
	if len(p.Need.Lays) == 0 {
		return Estimated{}, false
	}
	out := Estimated{Requirement: p.Need, Amount: quote.AmountOf(quote.Offer{Cloth: p.Cloth}, quote.FoundIn(p.Need))}
	const isSame = 1e-6 // mm
	return out, math.Abs(out.Amount.Buy-p.Buy) < isSame && math.Abs(out.Amount.Taken-p.Taken) < isSame
}
