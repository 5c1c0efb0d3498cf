package main

import (
	"context"
	"ellwand/cmd/ellwand/limit"
	"fmt"
	"io"
	"path/filepath"
	"strings"

	"github.com/spf13/cobra"

	"ellwand/cmd/ellwand/app"
	"ellwand/cmd/ellwand/failure"
	"ellwand/cmd/ellwand/files"
	"ellwand/cmd/ellwand/job"
	"ellwand/cmd/ellwand/report"
	"ellwand/cmd/ellwand/screen"
	"ellwand/pieces/paper"
)

func newDraft(e *env) *cobra.Command {
	var d draftOptions
	cmd := &cobra.Command{
		Use:   "draft JOB",
		Short: "Draft the pieces as SVG, and say whether their seams match",
		Long: `Draft drafts the pieces of a job. It prints the measurements, the pieces with
their size over all (seam allowances included), and the truing report: every
pair of seams that will be sewn together, with both lengths and what is normal.
The pieces are written as SVG drawings at true scale, one a piece, into a folder
named after the job unless -o names another.

--sheet writes the draft sheet instead: for each piece a page with its
construction in numbered steps, the figures of this body filled in, by which to
draw it by hand with ruler and curve. It is a PDF, or plain text when the name
ends in .txt. With -o as well, both are written.

--sizes drafts the job in several sizes of its table. Each drawing then has all
of them one over the other, told apart by their dashes; so has the draft sheet,
with tables of where every point lies and how long every seam is in each size.`,
		Example: `  ellwand draft blouse.yaml
  ellwand draft blouse.yaml -o pieces --force
  ellwand draft blouse.yaml --sheet steps.pdf
  ellwand draft skirt.yaml --sizes 8,12,16 --sheet sizes.pdf`,
		Args: one("a job file"),
		RunE: func(cmd *cobra.Command, args []string) error {
			return e.draft(cmd.Context(), args[0], d)
		},
	}
	cmd.Flags().StringVarP(&d.folder, "output", "o", "",
		"folder for the SVG drawings; blouse-pieces for blouse.yaml if not given")
	cmd.Flags().StringVar(&d.sheet, "sheet", "", "write the draft sheet, steps to draw by hand, as PDF or .txt")
	cmd.Flags().StringVar(&d.paper, "paper", "a4", "paper of the draft sheet: a4 or letter")
	cmd.Flags().Var(limit.EntriesOf(&d.sizes, limit.Sizes), "sizes",
		"sizes of the job's table to draw one over the other, smallest first: 10,12,14")
	cmd.Flags().BoolVar(&d.force, "force", false, "overwrite files that exist")
	return cmd
}

// draftOptions are the options of the draft command.
type draftOptions struct {
	folder, sheet, paper string
	sizes                []string
	force                bool
}

func (e *env) draft(ctx context.Context, path string, d draftOptions) error {
	if d.folder == "" && d.sheet == "" {
		base := filepath.Base(path)
		d.folder = strings.TrimSuffix(base, filepath.Ext(base)) + "-pieces"
	}
	drafted, err := app.ReadSizes(ctx, path, d.sizes)
	if err != nil {
		return err
	}
	out := &files.Set{Force: d.force, Input: path}
	if err := addDrawings(out, drafted, d.folder); err != nil {
		return err
	}
	drawings := len(out.Paths())
	if err := addSheet(out, drafted, d); err != nil {
		return err
	}
	if drafted.InSizes {
		return e.reportSizes(out, drafted, d, drawings)
	}
	return e.reportDraft(out, drafted.First(), d, drawings)
}

// reportDraft writes the files and reports on the job as it stands.
func (e *env) reportDraft(out *files.Set, work *job.Work, d draftOptions, drawings int) error {
	told, err := report.DraftOf(work)
	if err != nil {
		return failure.Of(err)
	}
	if err := out.Commit(); err != nil {
		return err
	}
	told.Files = out.Paths()
	if e.json {
		return e.printJSON(told)
	}
	screen.Draft(e.screen, work, told)
	fmt.Fprintln(e.screen)
	e.saidWritten(d, drawings)
	e.warn(work)
	return nil
}

// reportSizes writes the files and reports on the job in each size.
func (e *env) reportSizes(out *files.Set, drafted app.Drafted, d draftOptions, drawings int) error {
	told, err := report.SizesOf(drafted.Works)
	if err == nil {
		err = told.Proven(drafted.Works)
	}
	if err != nil {
		return failure.Of(err)
	}
	if err := out.Commit(); err != nil {
		return err
	}
	told.Files = out.Paths()
	if e.json {
		return e.printJSON(told)
	}
	screen.Sizes(e.screen, drafted.Works, told)
	e.saidWritten(d, drawings)
	for _, work := range drafted.Works {
		for _, sentence := range work.Notes {
			e.note("note: size %s: %s", work.Size, sentence)
		}
	}
	return nil
}

// saidWritten says what was written where.
func (e *env) saidWritten(d draftOptions, drawings int) {
	if d.folder != "" {
		fmt.Fprintf(e.screen, "%d drawings written to %s\n", drawings, d.folder)
	}
	if d.sheet != "" {
		fmt.Fprintf(e.screen, "draft sheet written to %s\n", d.sheet)
	}
}

// addDrawings plans an SVG drawing of every piece, unless there is no folder
// to write them to.
func addDrawings(out *files.Set, drafted app.Drafted, folder string) error {
	if folder == "" {
		return nil
	}
	drawings, err := app.Drawings(drafted)
	if err != nil {
		return err
	}
	for _, drawing := range drawings {
		if err := out.Add(filepath.Join(folder, drawing.Name), drawing.Write); err != nil {
			return err
		}
	}
	return nil
}

// addSheet plans the draft sheet, if one is asked for.
func addSheet(out *files.Set, drafted app.Drafted, d draftOptions) error {
	if d.sheet == "" {
		return nil
	}
	papers := map[string]paper.Paper{"a4": paper.A4, "letter": paper.Letter}
	paper, known := papers[strings.ToLower(d.paper)]
	if !known {
		return fmt.Errorf("there is no paper %q for the draft sheet; use a4 or letter", d.paper)
	}
	sheet := app.DraftSheet{Drafted: drafted}
	switch files.Extension(d.sheet) {
	case ".txt":
		return out.Add(d.sheet, sheet.WriteText)
	case ".pdf":
		return out.Add(d.sheet, func(w io.Writer) error { return sheet.WritePDF(w, paper) })
	}
	return fmt.Errorf("the draft sheet is a PDF or plain text: end its name %s in .pdf or .txt", d.sheet)
}
