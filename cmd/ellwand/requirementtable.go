package main

import (
	"ellwand/cmd/ellwand/limit"
	"fmt"
	"io"

	"github.com/spf13/cobra"

	"ellwand/cmd/ellwand/app"
	"ellwand/cmd/ellwand/files"
	"ellwand/cmd/ellwand/report"
	"ellwand/cmd/ellwand/screen"
	"ellwand/fabric/quote"
	"ellwand/pieces/paper"
)

// tableOptions are the options of estimate --table.
type tableOptions struct {
	wanted  bool
	widths  []string
	sizes   []string
	outputs []string
	paper   string
}

// tableFlags are the options that make sense for a table alone.
var tableFlags = []string{"sizes", "output", "paper"}

func (t *tableOptions) register(cmd *cobra.Command) {
	flags := cmd.Flags()
	flags.BoolVar(&t.wanted, "table", false,
		"a table by garment or size, nap and width, in metres and yards")
	flags.Var(limit.EntriesOf(&t.sizes, limit.Sizes), "sizes", "with --table: a row for each of these sizes of the "+
		"job's size table")
	flags.VarP(limit.EntriesOf(&t.outputs, limit.Outputs), "output", "o", "with --table: files to write it to, .csv, "+
		".md or .pdf")
	flags.StringVar(&t.paper, "paper", "a4", "with --table: a4 or letter")
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

// requirementTable lays every size or garment on every cloth and width, with
// and without nap.
func (e *env) requirementTable(cmd *cobra.Command, path string, s searchFlags, o tableOptions) error {
	paper, err := parsePaper(o.paper)
	if err == nil {
		err = s.check()
	}
	if err != nil {
		return err
	}
	ctx, cancel := s.within(cmd.Context())
	defer cancel()
	rows, err := app.ReadTableRows(ctx, path, o.sizes)
	if err != nil {
		return err
	}
	out := &files.Set{Force: s.force, Input: path}
	for _, output := range o.outputs {
		if err := checkTableFile(out, output); err != nil {
			return err
		}
	}
	widths, err := parseWidths(o.widths, rows.Work.Unit)
	if err != nil {
		return err
	}
	asked, err := app.TableOf(rows, widths)
	if err != nil {
		return err
	}
	e.warn(rows.Work)
	watch, done := e.watch(rows.Work)
	defer done()
	table, err := asked.Reckon(ctx, s.Search, watch)
	if err != nil {
		return err
	}
	done()
	e.noteEnded(table.Ended)
	for _, output := range o.outputs {
		if err := out.Add(output, tableWriter(table, output, paper)); err != nil {
			return err
		}
	}
	if err := out.Commit(); err != nil {
		return err
	}
	if e.json {
		return e.printJSON(report.TableOf(table))
	}
	screen.Requirements(e.screen, table)
	return nil
}

// checkTableFile refuses a file that cannot be written, or of a kind that a
// table is not written as.
func checkTableFile(out *files.Set, path string) error {
	switch files.Extension(path) {
	case ".csv", ".md", ".pdf":
		return out.Check(path)
	}
	return fmt.Errorf("-o %s: a table is written as .csv, .md or .pdf; end the name with one of them", path)
}

func tableWriter(table quote.Table, path string, paper paper.Paper) func(io.Writer) error {
	switch files.Extension(path) {
	case ".csv":
		return table.WriteCSV
	case ".md":
		return table.WriteMarkdown
	}
	return func(w io.Writer) error { return table.WritePDF(w, paper) }
}
