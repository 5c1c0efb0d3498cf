package screen

import (
	"fmt"
	"io"

	"ellwand/cmd/ellwand/app"
	"ellwand/cmd/ellwand/job"
	"ellwand/cmd/ellwand/words"
)

// Remnants prints the answers about pieces of cloth, and with why all that was
// tried.
func Remnants(w io.Writer, work *job.Work, all []app.RemnantAnswer, search app.Search, why bool) {
	fmt.Fprintln(w, work.Title())
	for _, a := range all {
		fmt.Fprintf(w, "\n%s, %s, nap %s: %s\n", a.Cloth.Name, words.PieceOfCloth(work, a), a.Cloth.Nap, words.IsEnough(a,
			search))
		for _, line := range words.Evidence(work, a, why) {
			fmt.Fprintln(w, line)
		}
	}
}
