package app

import (
	"cmp"
	"context"
	"slices"
	"time"

	"ellwand/cmd/ellwand/job"
	"ellwand/fabric/cloth"
	"ellwand/fabric/quote"
	"ellwand/pieces/language"
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
	// inSize is the size that was asked for; empty where the job is as it stands.
	inSize string
	work   *job.Work
	made   job.Made
	// garment is its place in the job, and size that of its size in the table of sizes.
	garment, size int
}

// ReadTableRows drafts every size that is asked for, or without any the job as
// it stands.
func ReadTableRows(ctx context.Context, path string, sizes []string) (TableRows, error) {
	file, err := job.Read(path)
	if err != nil {
		return TableRows{}, err
	}
	return TableRowsOf(file.Within(ctx), sizes)
}

// TableRowsOf drafts every size of a job that is asked for, or without any the job as it
// stands.
func TableRowsOf(file *job.File, sizes []string) (TableRows, error) {
	if len(sizes) == 0 {
		work, err := file.Resolve()
		if err != nil {
			return TableRows{}, err
		}
		return TableRows{Work: work, rows: rowsOf(work, false)}, nil
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
		for _, row := range rowsOf(work, true) {
			row.size = slices.Index(sized.SizesInOrder(), work.Size)
			out.rows = append(out.rows, row)
		}
	}
	return out, nil
}

func rowsOf(work *job.Work, inSizes bool) []tableRow {
	var out []tableRow
	for i, made := range work.Garments {
		row := tableRow{name: made.Name, work: work, made: made, garment: i}
		if inSizes {
			row.inSize = work.Size
			row.name = "size " + work.Size
			if len(work.Garments) > 1 {
				row.name = made.Name + ", " + row.name
			}
		}
		out = append(out, row)
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
	row     tableRow
	cloth   string
}

// pairs are cells of which one ought not to exceed the other, the hardest first: the next
// narrower width, the nap, the next larger size of the same garment.
func (t *TableAsked) pairs() []pair {
	order := make([]int, len(t.cells))
	for i := range order {
		order[i] = i
	}
	slices.SortStableFunc(order, func(a, b int) int { return t.cells[a].compareHardness(t.cells[b]) })
	var out []pair
	for k, i := range order {
		var found [3]bool // in width, nap and size
		for n := k - 1; n >= 0; n-- {
			way, ok := t.cells[i].easierIn(t.cells[order[n]])
			if ok && !found[way] && isEasier(t.cells[order[n]].problem.cloth, t.cells[i].problem.cloth) {
				found[way] = true
				out = append(out, pair{easier: i, harder: order[n]})
			}
		}
	}
	return out
}

// compareHardness orders cells of a table, the hardest of each garment first.
func (c openCell) compareHardness(other openCell) int {
	return cmp.Or(cmp.Compare(c.cloth, other.cloth), cmp.Compare(c.row.garment, other.row.garment),
		cmp.Compare(other.row.size, c.row.size), cmp.Compare(other.problem.cloth.Nap, c.problem.cloth.Nap),
		cmp.Compare(c.problem.cloth.Width, other.problem.cloth.Width))
}

// easierIn says in which one way alone a cell is easier than another: 0 by its width, 1
// by its nap, 2 by its size. It reports false where it is in none, or in several.
func (c openCell) easierIn(than openCell) (way int, ok bool) {
	if c.cloth != than.cloth || c.row.garment != than.row.garment {
		return 0, false
	}
	wider, freer := c.problem.cloth.Width > than.problem.cloth.Width, c.problem.cloth.Nap != than.problem.cloth.Nap
	ways := []bool{wider, freer, c.row.size < than.row.size}
	way = slices.Index(ways, true)
	return way, way >= 0 && !slices.Contains(ways[way+1:], true)
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
			line := quote.TableRow{Name: row.name, Garment: row.made.Name, Size: row.inSize, Nap: nap,
				Cells: make([]quote.Cell, len(cloths))}
			for i, c := range cloths {
				// The flaws of one bolt are not on an envelope.
				c.Nap, c.Flaws = nap, nil
				line.Cells[i].Offer.Cloth = c
				t.cells = append(t.cells, openCell{&line.Cells[i], problemOf(c.Untouched(), all), row, name})
			}
			part.Rows = append(part.Rows, line)
		}
	}
	t.table.Cloths = append(t.table.Cloths, part)
}

// Reckon fills the table. The error may be a *job.Ended: how sure its amounts are is
// drafted before anything is laid.
func (t *TableAsked) Reckon(ctx context.Context, search Search, watch Watch) (quote.Table, error) {
	problems := make([]problem, len(t.cells))
	for i, cell := range t.cells {
		problems[i] = cell.problem
	}
	doubters, err := t.doubters(ctx, search)
	if err != nil {
		return quote.Table{}, err
	}
	begun := time.Now()
	solver, pairs := newSolver(search, watch).endingSoon(), t.pairs()
	answers, err := solver.all(ctx, problems)
	if err != nil {
		return quote.Table{}, err
	}
	if err := solver.settle(ctx, problems, answers, pairs); err != nil {
		return quote.Table{}, err
	}
	t.table.Ended = search.ended(ctx, withLeftOut(endedOf(answers).Work, answers), begun)
	for i, open := range t.cells {
		open.cell.Impossible = answers[i].why()
		open.cell.Why = language.OfError(answers[i].impossible)
		if open.cell.IsLeftOut = answers[i].isLeftOut(); open.cell.IsLeftOut {
			open.cell.Impossible = "the search was ended before"
		}
		if open.cell.Impossible == "" {
			open.cell.Amount = quote.AmountOf(open.cell.Offer, answers[i].found)
		}
	}
	for _, p := range slices.Backward(pairs) { // the easiest first
		t.cells[p.harder].cell.RaiseTo(*t.cells[p.easier].cell)
	}
	t.doubt(doubters)
	return t.table, blamed(t.table.Proven())
}

// doubters of the jobs in the table, by job.
func (t *TableAsked) doubters(ctx context.Context, search Search) (map[*job.Work]doubter, error) {
	out := map[*job.Work]doubter{}
	for _, open := range t.cells {
		work := open.row.work
		if _, known := out[work]; known {
			continue
		}
		one, err := newDoubter(ctx, work, search)
		if err != nil {
			return nil, err
		}
		out[work] = one
	}
	return out, nil
}

// doubt says of each cell between which lengths it may prove to lie.
func (t *TableAsked) doubt(by map[*job.Work]doubter) {
	for _, open := range t.cells {
		if open.cell.Impossible == "" {
			open.cell.Range = by[open.row.work].rangeOf(open.cell.Offer.Cloth, open.cell.Amount, t.table.Ended.Early)
		}
	}
}
