package strict

import (
	"reflect"

	"ellwand/cmd/ellwand/limit"
	"ellwand/pieces/language"
)

// Form is a kind of file, as messages speak of it.
type Form struct {
	// Whole is what all of the file is: "the job"; One is one of it: "one job".
	Whole, One language.Sentence
	// File is what the file is called: "a job file".
	File language.Sentence
	// Begin says how to begin one: "write a starter job with: ellwand new ";
	// the name of the file follows.
	Begin language.Sentence
	// Size is the most bytes of a file, Lists the most entries of its lists by
	// their key, and Paragraphs the keys of texts that may be long.
	Size       limit.Limit
	Lists      map[string]limit.Limit
	Paragraphs map[string]bool

	of reflect.Type
}
