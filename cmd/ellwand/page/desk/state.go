package desk

import (
	"time"

	"ellwand/pieces/language"
)

// State is what a desk holds at one revision.
type State struct {
	Revision         int
	Text             string
	Typed            map[string]HalfValue
	CanUndo, CanRedo bool
	// Outside says that a change from outside was taken in, or that the file is gone; empty
	// where there is nothing to say.
	Outside language.Sentence
	// History are the steps that can be gone back to, the last ones of a long one.
	History []Made
	Reading
}

// Made is a step of the history.
type Made struct {
	// Step says how many steps are made after it.
	Step int
	When time.Time
	Kind Kind
	Path string
	// Now says that it is the last one that is made.
	Now bool
}
