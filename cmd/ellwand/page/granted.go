package page

import (
	"fmt"
	"slices"
	"strings"

	"ellwand/cmd/ellwand/app"
	"ellwand/pieces/found"
)

// longestSide stands for that of each piece.
const longestSide = "longest"

// granted is what is taken for granted where neither the drawing nor anybody says it; it
// stands at the head of the file, to be looked through.
var granted = []struct {
	question found.Question
	answer   string
	sentence string
}{
	{found.AskName, "piece %d", "Pieces without a name are numbered."},
	{found.AskCut, "1", "Where the drawing does not say how many are cut, it is one."},
	{found.AskGrain, "up", "Where the drawing has no grainline, it runs up the drawing."},
	{found.AskFold, longestSide, "Pieces whose words say that they lie on the fold, but not by which side, lie on it by " +
		"their longest straight one; those without any are laid as drawn."},
	{found.AskAllowance, "unknown", "Whether outlines have their allowances in them is not known; nothing is added."},
}

// grant answers what is missing, and says how.
func grant(missing *app.Unanswered, answers *app.Answers) []string {
	var out []string
	for _, lack := range missing.List {
		for _, one := range granted {
			if !slices.Contains(lack.Questions, one.question) {
				continue
			}
			text := one.answer
			if text == longestSide {
				text = lack.Fold
			}
			if strings.Contains(text, "%d") {
				text = fmt.Sprintf(text, lack.Number)
			}
			answers.Add(one.question, lack.Number, text)
			if !slices.Contains(out, one.sentence) {
				out = append(out, one.sentence)
			}
		}
	}
	return out
}
