package screen

import (
	"fmt"
	"io"
	"strings"

	"ellwand/cmd/ellwand/report"
	"ellwand/pieces/measure"
)

// Drawing prints what was found in a drawing.
func Drawing(w io.Writer, found report.Drawing, system measure.System) {
	fmt.Fprintf(w, "%s\n\n", found.Title)
	t := Table("", "name", "size", "across", "up", "still to be said")
	for _, f := range found.Found {
		lacks := strings.Join(f.Lacks, ", ")
		if f.IsFaulty {
			lacks = "(its outline is at fault)"
		}
		t.AppendRow(Row(f.Number, f.Name, f.Size, system.Size(f.AcrossMM), system.Size(f.UpMM), lacks))
	}
	fmt.Fprintln(w, t.In(w))
	for _, file := range found.Files {
		fmt.Fprintf(w, "\nwritten to %s\n", file)
	}
}
