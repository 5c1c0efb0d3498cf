package screen

import (
	"fmt"
	"io"

	"ellwand/cmd/ellwand/app"
	"ellwand/cmd/ellwand/report"
)

// Pieces prints a collection of pieces as a table, and how its seams match.
func Pieces(w io.Writer, c app.Collection, told report.Pieces) {
	fmt.Fprintf(w, "%s\n\n", c.Title)
	say := c.Unit.System().Size
	heads, sized, rough := []any{"", "piece"}, false, false
	for _, p := range told.Pieces {
		sized, rough = sized || p.Size != "", rough || p.AccuracyMM > 0
	}
	if sized {
		heads = append(heads, "size")
	}
	heads = append(heads, "cloth", "cut", "how", "width", "height", "allowance")
	if rough {
		heads = append(heads, "accurate to")
	}
	t := Table(heads...)
	for i, p := range told.Pieces {
		row := Row(i+1, p.Name)
		if sized {
			row = append(row, p.Size)
		}
		row = append(row, p.Cloth, p.Cut, p.How(), say(p.WidthMM), say(p.HeightMM), p.Allowance)
		if rough && p.AccuracyMM > 0 {
			row = append(row, c.Unit.System().Accuracy(p.AccuracyMM))
		}
		t.AppendRow(row)
	}
	fmt.Fprintln(w, t.In(w))
	if len(c.Truing.Rows) > 0 {
		fmt.Fprintln(w, "\nseams that are sewn together")
		printTruing(w, c.Truing, c.Unit)
	}
	for _, file := range told.Files {
		fmt.Fprintf(w, "\nwritten to %s\n", file)
	}
}
