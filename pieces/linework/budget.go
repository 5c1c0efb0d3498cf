package linework

import "ellwand/pieces/found"

// MostLetters of a name or a line of words; what is longer is cut off
// [source.OwnChoice].
const MostLetters = 200

// Budget counts what is read against limits, so that a file that asks for more than a
// drawing can hold is refused alike on every machine.
type Budget struct {
	limits found.Limits
	counts found.Limits
}

// NewBudget has all that the limits allow.
func NewBudget(limits found.Limits) *Budget { return &Budget{limits: limits} }

// Spend counts so many more of something. The error is *found.TooMuch.
func (b *Budget) Spend(what found.Amount, n int) error {
	b.counts[what] += n
	return b.limits.Check(what, b.counts[what])
}

// Depth refuses what is nested too deep. The error is *found.TooMuch.
func (b *Budget) Depth(n int) error { return b.limits.Check(found.Nesting, n) }
