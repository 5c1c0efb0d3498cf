package quote

import (
	"encoding/csv"
	"fmt"
	"io"
	"strconv"
	"strings"

	"ellwand/fabric/cloth"
	"ellwand/fabric/plan"
	"ellwand/pieces/text"
)

// Table is a requirement table, as it stands on a pattern's envelope: for each
// cloth the lengths to buy by size or garment, width and nap.
type Table struct {
	Title  string
	Inches bool // widths and lengths in inches and yards first
	Cloths []ClothTable
	// Ended says whether the searches for lays were ended early.
	Ended plan.Ended
}

// Settle makes the cells agree with each other: a lay for one-way cloth is one
// for cloth without nap, and a lay on a narrow cloth is one on a wider. Rows of
// one name follow each other. A cloth with a repeat is left as it is: where its
// lines lie depends on the width.
func (c ClothTable) Settle() {
	for _, row := range c.Rows {
		for i := range row.Cells {
			for j := range row.Cells {
				if c.Widths[j] < c.Widths[i] {
					row.Cells[i].noMoreThan(row.Cells[j], c.Widths[j]/c.Widths[i])
				}
			}
		}
	}
	for _, row := range c.Rows {
		for _, other := range c.Rows {
			if row.Name != other.Name || row.Nap != cloth.EitherWay || other.Nap == cloth.EitherWay {
				continue
			}
			for i := range row.Cells {
				row.Cells[i].noMoreThan(other.Cells[i], 1)
			}
		}
	}
}

// noMoreThan takes the lay of another cell when it is shorter. narrower is its
// width over this one's. The bound stays: it was proven for this cell.
func (c *Cell) noMoreThan(other Cell, narrower float64) {
	if other.Impossible != "" || c.Impossible == "" && c.Amount.Taken <= other.Amount.Taken || c.Offer.Cloth.Repeat.Along+c.Offer.Cloth.Repeat.Across > 0 {
		return
	}
	found := other.Amount.Found
	found.Density *= narrower
	found.Bound = c.Amount.Bound
	c.Impossible, c.Amount = "", AmountOf(c.Offer, found)
}

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
				line := []string{spreadsheetText(cloth.Cloth), spreadsheetText(row.Name), row.NapText(), number(cloth.Widths[i]), "", "", "", "", "not possible", "", "", "", "", "", ""}
				if cell.Impossible == "" {
					metric, yards := cell.Bought()
					line = append(line[:4], number(metric/1000), number(yards/yard), number(cell.Amount.Taken), number(cell.Amount.Bound), cell.Amount.Lay)
					for _, part := range cell.Amount.Parts()[1:] {
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
	}
	if t.Ended.Early {
		fmt.Fprintf(&b, "\n%s\n", t.Ended.Say())
	}
	_, err := io.WriteString(w, b.String())
	return err
}

// marked are the signs by which Markdown knows a link, a stress, a table or markup.
var marked = strings.NewReplacer(`\`, `\\`, "|", `\|`, "*", `\*`, "_", `\_`, "<", `\<`, "[", `\[`, "]", `\]`, "`", "\\`",
	"&", `\&`, "~", `\~`)

// escaped is a clean text that breaks no Markdown table, and is shown as it stands.
func escaped(name string) string { return marked.Replace(text.Line(name)) }
