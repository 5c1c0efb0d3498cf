package patternfile

import (
	"ellwand/cmd/ellwand/strict"
)

// The values of the file.
type (
	Text    = strict.Text
	Measure = strict.Measure
	Count   = strict.Count
	YesNo   = strict.YesNo
	Path    = strict.Path

	// Choice is a word for a value of T, as it stands in the file.
	Choice[T strict.Worded] = strict.Choice[T]
)
