package app

import (
	"slices"

	"ellwand/pieces"
)

// Rough names the pieces whose outlines are only so accurate, each once, and says how
// far the roughest may be out, mm.
func Rough(all []pieces.Piece) (names []string, accuracy float64) {
	for _, p := range all {
		if p.Accuracy > 0 && !slices.Contains(names, p.Name) {
			names = append(names, p.Name)
		}
		accuracy = max(accuracy, p.Accuracy)
	}
	return names, accuracy
}
