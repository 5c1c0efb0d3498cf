package words

import (
	"fmt"
	"slices"
	"strings"

	"ellwand/pieces"
)

// Roughest names the pieces whose outlines are only so accurate, each once, and says
// how far the roughest may be out, mm.
func Roughest(all []pieces.Piece) (names []string, accuracy float64) {
	for _, p := range all {
		if p.Accuracy > 0 && !slices.Contains(names, p.Name) {
			names = append(names, p.Name)
		}
		accuracy = max(accuracy, p.Accuracy)
	}
	return names, accuracy
}

// Rough says how pieces are laid that were measured or traced to within an accuracy;
// say says how far something may be out. Empty where there are none.
func Rough(all []pieces.Piece, say func(mm float64) string) string {
	names, accuracy := Roughest(all)
	if len(names) == 0 {
		return ""
	}
	const most = 4 // names in one sentence [source.OwnChoice]
	text := strings.Join(names, ", ")
	if len(names) > most {
		text = fmt.Sprintf("%d pieces", len(names))
	}
	return fmt.Sprintf("Measured to within %s, and so laid that much larger all round: %s.",
		say(accuracy), text)
}
