package quote

import (
	"encoding/csv"
	"fmt"
	"io"
	"strconv"
	"strings"

	"ellwand/pieces/text"
)

// WriteCSV writes one line a cell, for spreadsheets.
func (t Table) WriteCSV(w io.Writer) error {
	if err := t.Proven(); err != nil {
		return err
	}
	out := csv.NewWriter(w)
	rows := [][]string{{"cloth", "row", "nap", "width_mm", "buy_m", "buy_yd", "taken_mm", "never_below_mm", "lay",
		"hand_laying_mm", "straighten_mm", "shrinkage_mm", "safety_mm", "rounding_mm", "minimum_mm"}}
	for _, cloth := range t.Cloths {
		for _, row := range cloth.Rows {
			for i, cell := range row.Cells {
				line := []string{spreadsheetText(cloth.Cloth), spreadsheetText(row.Name), row.NapText(), number(cloth.Widths[i]),
					"", "", "", "", cell.Refusal(), "", "", "", "", "", ""}
				if cell.Impossible == "" {
					metric, yards := cell.Bought()
					line = append(line[:4], number(metric/1000), number(yards/yard), number(cell.Amount.Taken),
						number(cell.Amount.Bound), cell.Amount.Lay)
					for _, part := range cell.Amount.Components()[1:] {
						line = append(line, number(part.Length))
					}
				}
				rows = append(rows, line)
			}
		}
	}
	if err := out.WriteAll(rows); err != nil {
		return err
	}
	return out.Error()
}

// spreadsheetText is a clean text that no spreadsheet takes for a formula: before the
// signs that begin one stands an apostrophe, as is typed to keep a text a text.
func spreadsheetText(name string) string {
	name = text.Line(name)
	if strings.IndexAny(name, "=+-@") == 0 {
		return "'" + name
	}
	return name
}

// number prints a length for a program, to 0.001 and without noise.
func number(x float64) string {
	text := strings.TrimRight(strconv.FormatFloat(x, 'f', 3, 64), "0")
	return strings.TrimSuffix(text, ".")
}

// WriteMarkdown writes a table a cloth.
func (t Table) WriteMarkdown(w io.Writer) error {
	var b strings.Builder
	fmt.Fprintf(&b, "# %s\n", escaped(t.Title))
	for _, cloth := range t.Cloths {
		fmt.Fprintf(&b, "\n## %s\n\n|  | nap | %s |\n|---|---|%s\n", escaped(cloth.Cloth),
			strings.Join(cloth.WidthTexts(t.Inches), " | "), strings.Repeat("---|", len(cloth.Widths)))
		for _, row := range cloth.Rows {
			fmt.Fprintf(&b, "| %s | %s |", escaped(row.Name), row.NapText())
			for _, cell := range row.Cells {
				fmt.Fprintf(&b, " %s |", cell.Text(t.Inches))
			}
			b.WriteString("\n")
		}
		if basis := cloth.RestsOn(Units{Inches: t.Inches}); basis != "" {
			fmt.Fprintf(&b, "\n%s\n", basis)
		}
		if unsure := cloth.NotMeasured(Units{Inches: t.Inches}); unsure != "" {
			fmt.Fprintf(&b, "\n%s\n", unsure)
		}
		if raised := cloth.Raised(); raised != "" {
			fmt.Fprintf(&b, "\n%s\n", raised)
		}
		if left := cloth.LeftOut(); left != "" {
			fmt.Fprintf(&b, "\n%s\n", left)
		}
	}
	if t.Ended.Early {
		fmt.Fprintf(&b, "\n%s\n", t.Ended.Say())
	}
	_, err := io.WriteString(w, b.String())
	return err
}

// marked are the signs by which Markdown knows a link, a stress, a table or markup.
var marked = strings.NewReplacer(`\`, `\\`, "|", `\|`, "*", `\*`, "_", `\_`, "<", `\<`, "[", `\[`, "]", `\]`, "`",
	"\\`", "&", `\&`, "~", `\~`)

// escaped is a clean text that breaks no Markdown table, and is shown as it stands.
func escaped(name string) string { return marked.Replace(text.Line(name)) }
