package screen

import (
	"fmt"
	"io"
	"slices"
	"strings"

	"ellwand/fabric/quote"
	"ellwand/fabric/words"
	"ellwand/pieces/language"
)

// Requirements prints a table of requirements.
func Requirements(w io.Writer, table quote.Table) {
	fmt.Fprintln(w, table.Title)
	for _, cloth := range table.Cloths {
		heads := []any{"", "nap"}
		for _, text := range cloth.WidthTexts(table.Inches) {
			heads = append(heads, text)
		}
		t := Table(heads...)
		var refused words.Shared
		last := ""
		for _, line := range cloth.Rows {
			name := line.Name
			if name == last {
				name = ""
			}
			last = line.Name
			cells := Row(name, line.NapText())
			for i, cell := range line.Cells {
				cells = append(cells, cell.Text(table.Inches))
				if cell.Impossible != "" && !cell.IsLeftOut {
					refused.Add(language.Name(line.Name+", "+cloth.WidthTexts(table.Inches)[i]),
						language.Name("not possible: "+strings.ReplaceAll(cell.Impossible, "\n", "\n  ")))
				}
			}
			t.AppendRow(cells)
		}
		fmt.Fprintf(w, "\n%s\n%s\n", cloth.Cloth, t.In(w))
		printAll(w, language.Texts(refused.Lines(), language.English))
		if slices.ContainsFunc(cloth.Rows, restsOnKept) {
			fmt.Fprintln(w, "Some of these lays were found by an earlier search.")
		}
		if basis := cloth.RestsOn(quote.Units{Inches: table.Inches}); basis != "" {
			fmt.Fprintln(w, basis)
		}
		if unsure := cloth.NotMeasured(quote.Units{Inches: table.Inches}); unsure != "" {
			fmt.Fprintln(w, unsure)
		}
		if raised := cloth.Raised(); raised != "" {
			fmt.Fprintln(w, raised)
		}
		if left := cloth.LeftOut(); left != "" {
			fmt.Fprintln(w, left)
		}
	}
}

// restsOnKept says that an earlier search found a lay of a row.
func restsOnKept(row quote.TableRow) bool {
	return slices.ContainsFunc(row.Cells, func(cell quote.Cell) bool { return cell.Impossible == "" && cell.Amount.Kept })
}
