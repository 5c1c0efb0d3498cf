package report

import (
	"ellwand/fabric/quote"
	"ellwand/pieces/language"
)

// Table is what estimate --table prints as JSON: one entry a cell.
type Table struct {
	Job   string `json:"job"`
	Cells []Cell `json:"cells"`
	Ended
}

// Cell is a row of the table in one width.
type Cell struct {
	Cloth string `json:"cloth"`
	Row   string `json:"row"`
	// Garment by its name in the job, and Size that was asked for.
	Garment string  `json:"garment"`
	Size    string  `json:"size,omitempty"`
	Nap     string  `json:"nap"`
	WidthMM float64 `json:"width_mm"`
	BuyM    float64 `json:"buy_m,omitempty"`
	BuyYd   float64 `json:"buy_yd,omitempty"`
	RestsOn *Basis  `json:"rests_on,omitempty"`
	// Range is between which lengths to buy the amount may prove to lie.
	Range   *Range `json:"range,omitempty"`
	Refused string `json:"refused,omitempty"`
	// IsLeftOut says that the search was ended before the cell was laid.
	IsLeftOut bool `json:"left_out,omitempty"`
	// IsRaised says that the amount is that of a smaller size, a wider cloth or one
	// without nap, for which more was found.
	IsRaised bool `json:"raised,omitempty"`
}

// TableOf a table of requirements, as commands have it.
func TableOf(table quote.Table) Table { return TableIn(table, language.English) }

// TableIn is a table for a reader of a language.
func TableIn(table quote.Table, reader language.Language) Table {
	out := Table{Job: table.Title, Cells: []Cell{}, Ended: endedOf(table.Ended)}
	for _, cloth := range table.Cloths {
		for _, row := range cloth.Rows {
			for i, cell := range row.Cells {
				report := Cell{Cloth: cloth.Cloth, Row: row.Name, Garment: row.Garment, Size: row.Size, Nap: row.Nap.String(),
					WidthMM: tidy(cloth.Widths[i]), Refused: cell.Why.In(reader), IsLeftOut: cell.IsLeftOut, IsRaised: cell.IsRaised}
				if cell.IsLeftOut {
					report.Refused = cell.Refusal() + ": " + cell.Impossible
				}
				if cell.Impossible == "" {
					metric, yards := cell.Bought()
					report.BuyM, report.BuyYd, report.RestsOn = tidy(metric/1000), tidy(inYards(yards)), basisOf(cell.Amount)
					between := rangeOf(cell.Range)
					report.Range = &between
				}
				out.Cells = append(out.Cells, report)
			}
		}
	}
	return out
}
