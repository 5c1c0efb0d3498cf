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
	"ellwand/pieces/drawing"
)

// printOptions are the options of the print command.
type printOptions struct {
	searchFlags
	output string
	paper  paperOptions
	sizes  []string
	seams  string
	choice app.Choice
}

func newPrint(e *env) *cobra.Command {
	var p printOptions
	cmd := &cobra.Command{
		Use:   "print JOB -o pieces.pdf",
		Short: "Print the pieces full size, on sheets to be joined",
		Long: `Print draws the pieces of a job at full size, with their seam allowances, on as
few sheets as it can, and writes them as a PDF. Every sheet has its name (B3 is
the third in the second row), trim lines, and marks that meet those of its
neighbours; sheets that would be blank are left out. The first page has squares
of 10 cm and 4 in by which to measure the print, and a map of the sheets.

--sizes drafts the job in several sizes of its table and nests them: each size
has dashes of its own, and --seams names the one whose seam lines are drawn too.
--piece and --cloth print some of the pieces alone.
Print at 100 %, and measure the square before you cut.`,
		Example: `  ellwand print blouse.yaml -o pieces.pdf
  ellwand print blouse.yaml -o pieces.pdf --paper a0
  ellwand print blouse.yaml -o nested.pdf --paper letter --sizes 10,12,14`,
		Args: one("a job file"),
		RunE: func(cmd *cobra.Command, args []string) error {
			return e.print(cmd, args[0], p)
		},
	}
	p.register(cmd)
	flags := cmd.Flags()
	flags.StringVarP(&p.output, "output", "o", "", "the PDF to write (required)")
	p.paper.register(cmd, "a4")
	flags.Var(limit.EntriesOf(&p.sizes, limit.Sizes), "sizes", "sizes of the job's table to nest, smallest first: "+
		"10,12,14")
	flags.Var(limit.EntriesOf(&p.choice.Pieces, limit.Pieces), "piece", "only the pieces of these names: front,back")
	flags.Var(limit.EntriesOf(&p.choice.Cloths, limit.Cloths), "cloth", "only pieces that are cut from these cloths")
	flags.StringVar(&p.seams, "seams", "", "with --sizes: the size whose seam lines are drawn; the first if not given")
	return cmd
}

func (e *env) print(cmd *cobra.Command, path string, p printOptions) error {
	switch {
	case p.output == "":
		return fmt.Errorf("the pieces need a file to go to; for example: ellwand print %s -o pieces.pdf", path)
	case files.Extension(p.output) != ".pdf":
		return fmt.Errorf("the sheets are written as a PDF, but %s is not named so; for example: -o pieces.pdf", p.output)
	}
	if err := p.check(); err != nil {
		return err
	}
	ctx, cancel := p.within(cmd.Context())
	defer cancel()
	drafted, err := app.ReadSizes(ctx, path, p.sizes)
	if err != nil {
		return err
	}
	if drafted, err = drafted.Only(p.choice); err != nil {
		return err
	}
	work := drafted.First()
	paper, err := p.paper.paper(work)
	if err != nil {
		return err
	}
	printing, err := app.PreparePrinting(drafted, p.seams, paper, p.paper.called())
	if err != nil {
		return err
	}
	out := &files.Set{Force: p.force, Input: path}
	var printed app.Printed
	if err := out.Add(p.output, func(w io.Writer) error {
		return drawing.WriteLayeredPDF(w, printed.Title,
			printed.Pages)
	}); err != nil {
		return err
	}
	e.warnPaper(work, true)
	if printed, err = printing.Pack(ctx, p.Search); err != nil {
		return err
	}
	e.noteEnded(printed.Ended)
	if err := out.Commit(); err != nil {
		return err
	}
	told := report.PrintOf(work, printed, p.paper.name, p.output)
	if e.json {
		return e.printJSON(told)
	}
	screen.Print(e.screen, work, told)
	return nil
}
