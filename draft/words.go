package draft

import (
	"errors"

	"ellwand/draft/construct"
	"ellwand/pieces/measure"
)

// Worded says an error of Draft, Size or Body.Check with its lengths in a
// unit: in cm, or in inches to the nearest 1/16.
func Worded(err error, unit measure.Unit) string {
	var refusal construct.Refusal
	if errors.As(err, &refusal) {
		return refusal.In(unit)
	}
	return err.Error()
}
