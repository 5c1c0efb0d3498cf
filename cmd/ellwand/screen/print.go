package screen

import (
	"fmt"
	"io"

	"ellwand/cmd/ellwand/job"
	"ellwand/cmd/ellwand/report"
)

// Print says on how many sheets the pieces of a job were printed.
func Print(w io.Writer, work *job.Work, printed report.Print) {
	fmt.Fprintf(w, "%s on %s of %s, %s in all, written to %s\n", counted(printed.Pieces, "piece"),
		counted(printed.Sheets, "sheet"), printed.Paper, counted(printed.Pages, "page"), printed.File)
	square := "10 cm"
	if work.InInches() {
		square = "4 in"
	}
	fmt.Fprintf(w, "Print at 100 %%, not fitted to the page, and measure the square of %s on the first page before "+
		"you cut.\n", square)
}

func counted(n int, what string) string {
	if n == 1 {
		return "1 " + what
	}
	return fmt.Sprintf("%d %ss", n, what)
}
