package screen

import (
	"fmt"
	"io"

	"ellwand/cmd/ellwand/app"
	"ellwand/cmd/ellwand/job"
	"ellwand/cmd/ellwand/words"
	"ellwand/cmd/ellwand/words/reason"
	"ellwand/fabric/plan"
	"ellwand/pieces/language"
)

// Estimate prints what a job takes of each cloth: what to buy first. With why it
// says as well why other lays cannot be, and how the cloth is spread; several widths of
// a cloth are only then shown each by itself.
func Estimate(w io.Writer, work *job.Work, needs []app.Estimated, why bool) {
	fmt.Fprintln(w, work.Title())
	for len(needs) > 0 {
		several := 1
		for several < len(needs) && needs[several].Cloth.Name == needs[0].Cloth.Name {
			several++
		}
		if several > 1 && !why {
			printWidths(w, work, needs[:several])
		} else {
			printEach(w, work, needs[:several], why)
		}
		needs = needs[several:]
	}
}

// printWidths compares the widths of a cloth.
func printWidths(w io.Writer, work *job.Work, needs []app.Estimated) {
	fmt.Fprintf(w, "\n%s, nap %s\n", needs[0].Cloth.Name, needs[0].Cloth.Nap)
	t := Table("width", "to buy", "range", "length", "never below", "lay")
	var notes []string
	for _, found := range needs {
		chosen, width := found.Lays[found.Chosen], work.Format(found.Cloth.Width)
		shown := words.LayOf(work, found.Cloth, chosen)
		t.AppendRow(Row(width, shown.Buy, words.Between(found.Cloth, found.Range), shown.Length, shown.Never,
			chosen.Lay.String()))
		for _, note := range words.Notes(chosen) {
			notes = append(notes, width+": "+note)
		}
		if found.Kept {
			notes = append(notes, width+": "+words.Kept)
		}
	}
	fmt.Fprintln(w, t.In(w))
	printAll(w, append(notes, "--why says of each how else it can be laid, and what is reckoned in."))
}

// printEach prints each width of a cloth by itself.
func printEach(w io.Writer, work *job.Work, needs []app.Estimated, why bool) {
	for _, found := range needs {
		need := found.Requirement
		c := need.Cloth
		fmt.Fprintf(w, "\n%s, %s wide, nap %s\n", c.Name, work.Format(c.Width), c.Nap)
		fmt.Fprintln(w, words.Advice(work, need))
		if need.Matching != nil {
			fmt.Fprintln(w, words.Matching(work, need))
		}
		fmt.Fprintln(w, words.Sureness(work, found))
		if names, accuracy := app.Rough(work.PiecesOf(c.Name)); len(names) > 0 {
			fmt.Fprintln(w, words.Rough(work, names, accuracy))
		}
		if found.Kept {
			fmt.Fprintln(w, words.Kept)
		}
		printAll(w, words.Notes(need.Lays[need.Chosen]))
		printLays(w, work, need)
		if !why {
			printUnlessEmpty(w, words.OtherLays(need))
		}
		printParts(w, work, found)
		if why {
			printAll(w, append(language.Texts(reason.WhyNot(need.Lays), language.English), words.Spreading(work,
				need)...))
		}
	}
}

func printLays(w io.Writer, work *job.Work, need plan.Requirement) {
	t := Table("lay", "plies", "cuts", "length", "efficiency", "never below", "to buy")
	for _, p := range need.Lays {
		if !p.Possible() {
			continue
		}
		shown := words.LayOf(work, need.Cloth, p)
		t.AppendRow(Row(p.Lay.String(), shown.Plies, p.Cuts, shown.Length, shown.Efficiency, shown.Never, shown.InStore))
	}
	fmt.Fprintln(w, t.In(w))
}

// partColumn is where what a part is for begins, columns, if all lengths are shorter
// than that [source.OwnChoice].
const partColumn = 12

// printParts lists what the length to buy is made of, each with its reason and, in
// brackets, the key of the job that changes it.
func printParts(w io.Writer, work *job.Work, found app.Estimated) {
	column, parts := partColumn, words.Parts(work, found)
	for _, part := range parts {
		column = max(column, len("  "+part[0])+1)
	}
	for _, part := range parts {
		fmt.Fprintln(w, beside(w, "  "+part[0], column, part[1]))
	}
}

func printAll(w io.Writer, lines []string) {
	for _, line := range lines {
		fmt.Fprintln(w, line)
	}
}

func printUnlessEmpty(w io.Writer, line string) {
	if line != "" {
		fmt.Fprintln(w, line)
	}
}

// Plans prints the plans of a job, and below them the file that each goes to:
// a path may be longer than any column.
func Plans(w io.Writer, work *job.Work, plans []app.Planned, files []string) {
	t := Table("cloth", "width", "lay", "length", "to buy")
	for _, plan := range plans {
		shown := words.ShownOf(work, plan.Plan)
		t.AppendRow(Row(plan.Cloth.Name, shown.Width, plan.Lay.String(), shown.Length, shown.Buy))
	}
	fmt.Fprintln(w, t.In(w))
	for i, plan := range plans {
		fmt.Fprintf(w, "%s, %s wide, is drawn in %s\n", plan.Cloth.Name, work.Format(plan.Cloth.Width), files[i])
		if plan.Mark != "" {
			fmt.Fprintf(w, "its mark is %s\n", plan.Mark)
		}
		if plan.Kept {
			fmt.Fprintln(w, words.Kept)
		}
	}
}
