package app

import (
	"ellwand/fabric/plan"
	"ellwand/fabric/quote"
)

// Estimated is what a job takes of one cloth in one width.
type Estimated struct {
	plan.Requirement
	// Amount is what to buy by its parts, and Range between which amounts that may
	// prove to lie.
	Amount quote.Amount
	Range  quote.Range
	// Ended says whether the search was ended early.
	Ended plan.Ended
	// Kept says that it rests on what an earlier search with another seed or effort
	// found.
	Kept bool
}
