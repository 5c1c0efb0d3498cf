package words

import (
	"fmt"
	"strings"

	"ellwand/cmd/ellwand/job"
)

// Rough says how pieces are laid that were measured or traced to within an accuracy,
// mm.
func Rough(work *job.Work, names []string, accuracy float64) string {
	const most = 4
	text := strings.Join(names, ", ")
	if len(names) > most {
		text = counted(len(names), "piece", "pieces")
	}
	return fmt.Sprintf("Measured to within %s, and so laid that much larger all round: %s. What is proven impossible is "+
		"proven of outlines that much smaller.", work.Unit.System().Accuracy(accuracy), text)
}
