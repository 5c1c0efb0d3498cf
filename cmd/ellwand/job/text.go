package job

import (
	"ellwand/cmd/ellwand/patternfile"
	"ellwand/cmd/ellwand/strict"
)

// The values of a job file, and what is said of them, are those of every file
// that is read strictly.
type (
	Text    = strict.Text
	Measure = strict.Measure
	Count   = strict.Count
	YesNo   = strict.YesNo
	Path    = strict.Path
	Fault   = strict.Fault
	Faults  = strict.Faults

	// Piece is a piece as the maker gives it; see patternfile.
	Piece = patternfile.Piece

	// Choice is a word for a value of T, as it stands in the file.
	Choice[T strict.Worded] = strict.Choice[T]
)
