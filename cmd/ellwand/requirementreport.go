package main

import (
	"fmt"
	"strings"

	"ellwand/cmd/ellwand/screen"
	"ellwand/fabric/quote"
)

func (e *env) printTable(table quote.Table) {
	fmt.Fprintln(e.out, table.Title)
	for _, cloth := range table.Cloths {
		heads := []any{"", "nap"}
		for _, text := range cloth.WidthTexts(table.Inches) {
			heads = append(heads, text)
		}
		t := screen.Table(heads...)
		var reasons []string
		last := ""
		for _, line := range cloth.Rows {
			name := line.Name
			if name == last {
				name = ""
			}
			last = line.Name
			cells := screen.Row(name, line.NapText())
			for i, cell := range line.Cells {
				cells = append(cells, cell.Text(table.Inches))
				if cell.Impossible != "" {
					reasons = append(reasons, fmt.Sprintf("%s, %s: not possible: %s", line.Name, cloth.WidthTexts(table.Inches)[i], cell.Impossible))
				}
			}
			t.AppendRow(cells)
		}
		fmt.Fprintf(e.out, "\n%s\n%s\n", cloth.Cloth, t.Render())
		if len(reasons) > 0 {
			fmt.Fprintln(e.out, once(strings.Join(reasons, "\n")))
		}
		if basis := cloth.RestsOn(quote.Units{Inches: table.Inches}); basis != "" {
			fmt.Fprintln(e.out, basis)
		}
	}
}

// tableReport is what estimate --table prints as JSON: one entry a cell.
type tableReport struct {
	Job   string       `json:"job"`
	Cells []cellReport `json:"cells"`
}

type cellReport struct {
	Cloth   string       `json:"cloth"`
	Row     string       `json:"row"`
	Nap     string       `json:"nap"`
	WidthMM float64      `json:"width_mm"`
	BuyM    float64      `json:"buy_m,omitempty"`
	BuyYd   float64      `json:"buy_yd,omitempty"`
	RestsOn *basisReport `json:"rests_on,omitempty"`
	Refused string       `json:"refused,omitempty"`
}

func tableReportOf(table quote.Table) tableReport {
	out := tableReport{Job: table.Title, Cells: []cellReport{}}
	for _, cloth := range table.Cloths {
		for _, row := range cloth.Rows {
			for i, cell := range row.Cells {
				report := cellReport{Cloth: cloth.Cloth, Row: row.Name, Nap: row.Nap.String(), WidthMM: tidy(cloth.Widths[i]), Refused: cell.Impossible}
				if cell.Impossible == "" {
					metric, yards := cell.Bought()
					report.BuyM, report.BuyYd, report.RestsOn = tidy(metric/1000), tidy(yards/yard), basisOf(cell.Amount)
				}
				out.Cells = append(out.Cells, report)
			}
		}
	}
	return out
}
