package app

import (
	"context"
	"time"

	"ellwand/cmd/ellwand/job"
	"ellwand/fabric/cloth"
	"ellwand/fabric/quote"
)

// TableRows is what a table of requirements has a row of: each garment of a
// job, or each garment in each of several sizes.
type TableRows struct {
	// Work is the job, or the job in the first size.
	Work *job.Work
	rows []tableRow
}

type tableRow struct {
	name string
	made job.Made
}

// ReadTableRows drafts every size that is asked for, or without any the job as
// it stands.
func ReadTableRows(path string, sizes []string) (TableRows, error) {
	file, err := job.Read(path)
	if err != nil {
		return TableRows{}, err
	}
	if len(sizes) == 0 {
		work, err := file.Resolve()
		if err != nil {
			return TableRows{}, err
		}
		return TableRows{Work: work, rows: rowsOf(work, "")}, nil
	}
	sized, err := file.OfSizes()
	if err != nil {
		return TableRows{}, err
	}
	works, err := inSizes(sized, sizes)
	if err != nil {
		return TableRows{}, err
	}
	out := TableRows{Work: works[0]}
	for _, work := range works {
		out.rows = append(out.rows, rowsOf(work, "size "+work.Size)...)
	}
	return out, nil
}

func rowsOf(work *job.Work, size string) []tableRow {
	var out []tableRow
	for _, made := range work.Garments {
		name := made.Name
		switch {
		case size != "" && len(work.Garments) == 1:
			name = size
		case size != "":
			name += ", " + size
		}
		out = append(out, tableRow{name, made})
	}
	return out
}

// TableAsked is a table of requirements before anything is laid.
type TableAsked struct {
	table quote.Table
	cells []openCell
}

// openCell is a cell of the table with the problem that fills it.
type openCell struct {
	cell    *quote.Cell
	problem problem
}

// TableOf lays out a table: every row on every cloth and width, with and
// without nap.
func TableOf(rows TableRows, widths []float64) (*TableAsked, error) {
	out := &TableAsked{table: quote.Table{Title: rows.Work.Name, Inches: rows.Work.InInches()}}
	for _, offer := range rows.Work.Cloths {
		cloths, err := clothIn(rows.Work, offer, widths)
		if err != nil {
			return nil, err
		}
		out.add(offer.Cloth.Name, cloths, rows.rows)
	}
	return out, nil
}

// add a cloth in several widths.
func (t *TableAsked) add(name string, cloths []cloth.Cloth, rows []tableRow) {
	part := quote.ClothTable{Cloth: name}
	for _, c := range cloths {
		part.Widths = append(part.Widths, c.Width)
	}
	for _, row := range rows {
		all := piecesOn(row.made, name)
		if len(all) == 0 {
			continue
		}
		for _, nap := range []cloth.Nap{cloth.EitherWay, cloth.OneWay} {
			line := quote.TableRow{Name: row.name, Nap: nap, Cells: make([]quote.Cell, len(cloths))}
			for i, c := range cloths {
				// The flaws of one bolt are not on an envelope.
				c.Nap, c.Flaws = nap, nil
				line.Cells[i].Offer.Cloth = c
				t.cells = append(t.cells, openCell{&line.Cells[i], problemOf(c, all)})
			}
			part.Rows = append(part.Rows, line)
		}
	}
	t.table.Cloths = append(t.table.Cloths, part)
}

// Reckon fills the table.
func (t *TableAsked) Reckon(ctx context.Context, search Search, watch Watch) (quote.Table, error) {
	problems := make([]problem, len(t.cells))
	for i, cell := range t.cells {
		problems[i] = cell.problem
	}
	begun := time.Now()
	answers, err := newSolver(search, watch).all(ctx, problems)
	if err != nil {
		return quote.Table{}, err
	}
	t.table.Ended = search.ended(ctx, endedOf(answers).Work, begun)
	for i, open := range t.cells {
		open.cell.Impossible = answers[i].why()
		if open.cell.Impossible == "" {
			open.cell.Amount = quote.AmountOf(open.cell.Offer, answers[i].found)
		}
	}
	for _, cloth := range t.table.Cloths {
		cloth.Settle()
	}
	return t.table, blamed(t.table.Proven())
}
