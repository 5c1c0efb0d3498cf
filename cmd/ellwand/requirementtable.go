package main

import (
	"context"
	"fmt"
	"io"
	"path/filepath"
	"strings"

	"github.com/spf13/cobra"

	"ellwand/cmd/ellwand/files"
	"ellwand/cmd/ellwand/job"
	"ellwand/fabric"
	"ellwand/fabric/marker"
	"ellwand/fabric/quote"
	"ellwand/pieces"
)

// tableOptions are the options of estimate --table.
type tableOptions struct {
	wanted  bool
	widths  []string
	sizes   []string
	outputs []string
	paper   string
	noCache bool
}

// tableFlags are the options that make sense for a table alone.
var tableFlags = []string{"sizes", "output", "paper", "no-cache"}

func (t *tableOptions) register(cmd *cobra.Command) {
	flags := cmd.Flags()
	flags.BoolVar(&t.wanted, "table", false, "a table by garment or size, nap and width, in metres and yards; --time is 2s a lay if not given")
	flags.StringSliceVar(&t.sizes, "sizes", nil, "with --table: a row for each of these sizes of the job's size table")
	flags.StringSliceVarP(&t.outputs, "output", "o", nil, "with --table: files to write it to, .csv, .md or .pdf")
	flags.StringVar(&t.paper, "paper", "a4", "with --table: a4 or letter")
	flags.BoolVar(&t.noCache, "no-cache", false, "with --table: search anew, and keep nothing of what is found")
}

// unused refuses options of a table where none is asked for.
func (t *tableOptions) unused(cmd *cobra.Command) error {
	for _, name := range tableFlags {
		if cmd.Flags().Changed(name) {
			return fmt.Errorf("--%s goes with --table; add --table, or leave it out", name)
		}
	}
	return nil
}

// budget of the searches: a shorter time a lay than that of a single estimate,
// unless one is given.
func (t *tableOptions) budget(cmd *cobra.Command, s search) budget {
	out := budget{time: s.time, seed: s.seed, workers: s.workers, force: s.force, noCache: t.noCache}
	if !cmd.Flags().Changed("time") {
		out.time = usualBudget
	}
	return out
}

// tableLine is one size or garment, before it is laid.
type tableLine struct {
	name string
	made job.Made
}

// requirementTable lays every size or garment on every cloth and width, with
// and without nap.
func (e *env) requirementTable(ctx context.Context, path string, b budget, o tableOptions) error {
	paper, err := parsePaper(o.paper)
	if err != nil {
		return err
	}
	work, lines, err := tableLines(path, o.sizes)
	if err != nil {
		return err
	}
	files := &files.Set{Force: b.force, Input: path}
	for _, output := range o.outputs {
		if err := checkTableFile(files, output); err != nil {
			return err
		}
	}
	table, cells, err := emptyTable(work, lines, o.widths)
	if err != nil {
		return err
	}
	e.warn(work)
	problems := make([]problem, len(cells))
	for i, cell := range cells {
		problems[i] = cell.problem
	}
	answers, err := e.solveAll(ctx, problems, b)
	if err != nil {
		return err
	}
	for i, cell := range cells {
		cell.cell.Impossible = answers[i].impossible
		if cell.cell.Impossible == "" {
			cell.cell.Amount = quote.AmountOf(cell.cell.Offer, answers[i].found)
		}
	}
	for _, cloth := range table.Cloths {
		cloth.Settle()
	}
	for _, output := range o.outputs {
		if err := files.Add(output, tableWriter(table, output, paper)); err != nil {
			return err
		}
	}
	if err := files.Commit(); err != nil {
		return err
	}
	if e.json {
		return e.printJSON(tableReportOf(table))
	}
	e.printTable(table)
	return nil
}

// checkTableFile refuses a file that cannot be written, or of a kind that a
// table is not written as.
func checkTableFile(files *files.Set, path string) error {
	switch strings.ToLower(filepath.Ext(path)) {
	case ".csv", ".md", ".pdf":
		return files.Check(path)
	}
	return fmt.Errorf("-o %s: a table is written as .csv, .md or .pdf; end the name with one of them", path)
}

func tableWriter(table quote.Table, path string, paper marker.Paper) func(io.Writer) error {
	switch strings.ToLower(filepath.Ext(path)) {
	case ".csv":
		return table.WriteCSV
	case ".md":
		return table.WriteMarkdown
	}
	return func(w io.Writer) error { return table.WritePDF(w, paper) }
}

// tableLines drafts every size that is asked for, or the job as it stands.
func tableLines(path string, sizes []string) (*job.Work, []tableLine, error) {
	file, err := job.Read(path)
	if err != nil {
		return nil, nil, err
	}
	if len(sizes) == 0 {
		work, err := file.Resolve()
		if err != nil {
			return nil, nil, err
		}
		return work, linesOf(work, ""), nil
	}
	sized, err := file.OfSizes()
	if err != nil {
		return nil, nil, err
	}
	var first *job.Work
	var out []tableLine
	for _, size := range sizes {
		work, err := sized.InSize(strings.TrimSpace(size))
		if err != nil {
			return nil, nil, fmt.Errorf("--sizes, size %s:\n%w", size, err)
		}
		if first == nil {
			first = work
		}
		out = append(out, linesOf(work, "size "+size)...)
	}
	return first, out, nil
}

func linesOf(work *job.Work, size string) []tableLine {
	var out []tableLine
	for _, made := range work.Garments {
		name := made.Name
		switch {
		case size != "" && len(work.Garments) == 1:
			name = size
		case size != "":
			name += ", " + size
		}
		out = append(out, tableLine{name, made})
	}
	return out
}

// openCell is a cell of the table with the problem that fills it.
type openCell struct {
	cell    *quote.Cell
	problem problem
}

// emptyTable lays out the rows and columns.
func emptyTable(work *job.Work, lines []tableLine, widthTexts []string) (quote.Table, []openCell, error) {
	widths, err := parseWidths(widthTexts, work.Unit)
	if err != nil {
		return quote.Table{}, nil, err
	}
	table := quote.Table{Title: work.Name, Inches: work.InInches()}
	var cells []openCell
	for _, offer := range work.Cloths {
		single := *work
		single.Cloths = []job.Offer{offer}
		cloths, err := clothsAt(&single, widths)
		if err != nil {
			return quote.Table{}, nil, err
		}
		part := quote.ClothTable{Cloth: offer.Cloth.Name}
		for _, cloth := range cloths {
			part.Widths = append(part.Widths, cloth.Width)
		}
		for _, line := range lines {
			all := piecesOn(line.made, offer.Cloth.Name)
			if len(all) == 0 {
				continue
			}
			for _, nap := range []fabric.Nap{fabric.EitherWay, fabric.OneWay} {
				row := quote.TableRow{Name: line.name, Nap: nap, Cells: make([]quote.Cell, len(cloths))}
				for i, cloth := range cloths {
					// The flaws of one bolt are not on an envelope.
					cloth.Nap, cloth.Flaws = nap, nil
					row.Cells[i].Offer.Cloth = cloth
					cells = append(cells, openCell{&row.Cells[i], problemOf(cloth, all)})
				}
				part.Rows = append(part.Rows, row)
			}
		}
		table.Cloths = append(table.Cloths, part)
	}
	return table, cells, nil
}

// piecesOn are the pieces of one garment that are cut from a cloth.
func piecesOn(made job.Made, cloth string) []pieces.Piece {
	var out []pieces.Piece
	for _, piece := range made.Pieces {
		if piece.Cloth == cloth {
			out = append(out, piece)
		}
	}
	return out
}
