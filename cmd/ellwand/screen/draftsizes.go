package screen

import (
	"fmt"
	"io"

	"github.com/jedib0t/go-pretty/v6/table"

	"ellwand/cmd/ellwand/job"
	"ellwand/cmd/ellwand/report"
)

// printSizes prints how large each piece is in each size, and whether the
// seams match.
// Sizes prints how large each piece is in each size, and whether the seams
// match.
func Sizes(w io.Writer, works []*job.Work, sizes report.Sizes) {
	work := works[0]
	fmt.Fprintln(w, work.Title())
	heads := []any{"piece", "cloth"}
	for _, one := range sizes.Sizes {
		heads = append(heads, "size "+one.Size)
	}
	for i, made := range work.Garments {
		t := Table(heads...)
		for _, p := range sizes.Sizes[0].Garments[i].Pieces {
			cells := table.Row{p.Name, p.Cloth}
			for _, one := range sizes.Sizes {
				cells = append(cells, one.Garments[i].Extent(work, p))
			}
			t.AppendRow(cells)
		}
		fmt.Fprintf(w, "\n%s, width and height with the seam allowances\n%s\n", made.Name, t.In(w))
		for _, one := range sizes.Sizes {
			fmt.Fprintf(w, "size %s: %s\n", one.Size, one.Garments[i].Verdict())
		}
	}
	fmt.Fprintln(w)
}
