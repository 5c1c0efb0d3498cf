package screen

import (
	"fmt"
	"io"

	"ellwand/cmd/ellwand/job"
	"ellwand/cmd/ellwand/report"
	"ellwand/draft"
	"ellwand/pieces/measure"
)

// Draft prints the measurements, the pieces and the truing report of a job.
func Draft(w io.Writer, work *job.Work, drafted report.Draft) {
	fmt.Fprintln(w, work.Title())
	if len(drafted.Body) > 0 {
		t := Table("measurement", "length", "")
		for _, name := range draft.Measurements() {
			value, ok := work.Body.Get(name)
			if !ok {
				continue
			}
			from := ""
			if _, derived := work.Derived[name]; derived {
				from = "derived"
			}
			t.AppendRow(Row(name, work.Format(value), from))
		}
		fmt.Fprintf(w, "\n%s\n", t.In(w))
	}
	for i, made := range work.Garments {
		printGarment(w, work, made, drafted.Garments[i])
	}
}

func printGarment(w io.Writer, work *job.Work, made job.Made, garment report.Garment) {
	fmt.Fprintf(w, "\n%s, %s\n", made.Name, times(made.Quantity))
	t := Table("piece", "cloth", "cut", "how", "width", "height")
	for _, p := range garment.Pieces {
		t.AppendRow(Row(p.Name, p.Cloth, p.Cut, p.How(), work.Format(p.WidthMM), work.Format(p.HeightMM)))
	}
	fmt.Fprintln(w, t.In(w))
	for _, figure := range made.Figures {
		fmt.Fprintf(w, "%s: %s\n", figure.Name, work.Format(figure.Value))
	}
	if len(made.Truing.Rows) > 0 {
		fmt.Fprintf(w, "\ntruing of the %s\n", made.Name)
		printTruing(w, made.Truing, work.Unit)
	}
}

// printTruing prints the rows of a truing report, and what is normal.
func printTruing(w io.Writer, truing draft.Report, unit measure.Unit) {
	say := unit.System().Size
	t := Table("seam", "of", "length", "against", "length", "difference", "verdict")
	for _, r := range truing.Rows {
		t.AppendRow(Row(r.Seam, r.Of, say(r.OfLength), r.Against, say(r.AgainstLength), say(r.Difference),
			r.Verdict.In(unit)))
	}
	fmt.Fprintf(w, "%s\nwhat is normal:\n", t.In(w))
	said := map[string]bool{}
	for _, r := range truing.Rows {
		line := fmt.Sprintf("  %s: %s\n", r.Seam, r.Normal.In(unit))
		if !said[line] {
			fmt.Fprint(w, line)
		}
		said[line] = true
	}
}

func times(quantity int) string {
	if quantity == 1 {
		return "made once"
	}
	return fmt.Sprintf("made %d times", quantity)
}
