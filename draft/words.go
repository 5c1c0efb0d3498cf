package draft

import (
	"errors"

	"ellwand/draft/construct"
	"ellwand/pieces/language"
	"ellwand/pieces/measure"
)

// Worded says in English an error of Draft, Size or Body.Check with its lengths in a
// unit: in cm, or in inches to the nearest 1/16.
func Worded(err error, unit measure.Unit) string {
	var refusal construct.Refusal
	if errors.As(err, &refusal) {
		return refusal.In(unit)
	}
	return err.Error()
}

// Said is what is said of such an error, its lengths in a unit.
func Said(err error, unit measure.Unit) language.Sentence {
	var refusal construct.Refusal
	if errors.As(err, &refusal) {
		return refusal.Said(unit)
	}
	return language.OfError(err)
}
