package app

import (
	"ellwand/fabric/words"
	"ellwand/pieces"
)

// Rough names the pieces whose outlines are only so accurate, each once, and says how
// far the roughest may be out, mm.
func Rough(all []pieces.Piece) (names []string, accuracy float64) { return words.Roughest(all) }
