package job

import (
	"fmt"

	"ellwand/pieces/language"
)

// Question asks about what is most likely a slip.
type Question struct {
	// Path of the value that it asks about, and its line in the file; 0 where there is none.
	Path Path
	File string
	Line int
	// Said asks, and guesses what was meant.
	Said language.Sentence
}

// String is the question with its place: "blouse.yaml:7: ...".
func (q Question) String() string {
	if q.Line > 0 {
		return fmt.Sprintf("%s:%d: %s", q.File, q.Line, q.Said)
	}
	return q.File + ": " + q.Said.String()
}
