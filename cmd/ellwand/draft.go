package main

import (
	"fmt"
	"io"
	"path/filepath"
	"strings"

	"github.com/spf13/cobra"

	"ellwand/cmd/ellwand/failure"
	"ellwand/cmd/ellwand/files"
	"ellwand/cmd/ellwand/job"
	"ellwand/cmd/ellwand/screen"
	"ellwand/draft"
	"ellwand/pieces/svg"
)

func newDraft(e *env) *cobra.Command {
	var d draftOptions
	cmd := &cobra.Command{
		Use:   "draft JOB",
		Short: "Draft the pieces, report whether their seams match, write them as SVG",
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
		RunE: func(_ *cobra.Command, args []string) error {
			return e.draft(args[0], d)
		},
	}
	cmd.Flags().StringVarP(&d.folder, "output", "o", "", "folder for the SVG drawings; blouse-pieces for blouse.yaml if not given")
	cmd.Flags().StringVar(&d.sheet, "sheet", "", "write the draft sheet, steps to draw by hand, as PDF or .txt")
	cmd.Flags().StringVar(&d.paper, "paper", "a4", "paper of the draft sheet: a4 or letter")
	cmd.Flags().StringSliceVar(&d.sizes, "sizes", nil, "sizes of the job's table to draw one over the other, smallest first: 10,12,14")
	cmd.Flags().BoolVar(&d.force, "force", false, "overwrite files that exist")
	return cmd
}

// draftOptions are the options of the draft command.
type draftOptions struct {
	folder, sheet, paper string
	sizes                []string
	force                bool
}

func (e *env) draft(path string, d draftOptions) error {
	if d.folder == "" && d.sheet == "" {
		base := filepath.Base(path)
		d.folder = strings.TrimSuffix(base, filepath.Ext(base)) + "-pieces"
	}
	if len(d.sizes) > 0 {
		return e.draftSizes(path, d)
	}
	work, err := readJob(path)
	if err != nil {
		return err
	}
	files := &files.Set{Force: d.force, Input: path}
	if err := addDrawings(files, work, d.folder); err != nil {
		return err
	}
	drawings := len(files.Paths())
	if err := addSheet(files, []*job.Work{work}, d); err != nil {
		return err
	}
	report, err := draftOf(work)
	if err != nil {
		return failure.Of(err)
	}
	if err := files.Commit(); err != nil {
		return err
	}
	report.Files = files.Paths()
	if e.json {
		return e.printJSON(report)
	}
	e.printDraft(work, report)
	fmt.Fprintln(e.out)
	e.saidWritten(d, drawings)
	e.warn(work)
	return nil
}

// saidWritten says what was written where.
func (e *env) saidWritten(d draftOptions, drawings int) {
	if d.folder != "" {
		fmt.Fprintf(e.out, "%d drawings written to %s\n", drawings, d.folder)
	}
	if d.sheet != "" {
		fmt.Fprintf(e.out, "draft sheet written to %s\n", d.sheet)
	}
}

// addDrawings plans an SVG drawing of every piece, unless there is no folder
// to write them to.
func addDrawings(files *files.Set, work *job.Work, folder string) error {
	if folder == "" {
		return nil
	}
	for _, made := range work.Garments {
		for _, piece := range made.Pieces {
			name := fmt.Sprintf("%s-%s-%s.svg", job.Slug(made.Name), job.Slug(piece.Name), job.Slug(piece.Cloth))
			write := func(w io.Writer) error { return svg.Write(w, piece) }
			if err := files.Add(filepath.Join(folder, name), write); err != nil {
				return err
			}
		}
	}
	return nil
}

func (e *env) printDraft(work *job.Work, report draftReport) {
	fmt.Fprintln(e.out, work.Title())
	if len(report.Body) > 0 {
		t := screen.Table("measurement", "length", "")
		for _, name := range draft.Measurements() {
			value, ok := work.Body.Get(name)
			if !ok {
				continue
			}
			from := ""
			if _, derived := work.Derived[name]; derived {
				from = "derived"
			}
			t.AppendRow(screen.Row(name, work.Format(value), from))
		}
		fmt.Fprintf(e.out, "\n%s\n", t.Render())
	}
	for i, made := range work.Garments {
		e.printGarment(work, made, report.Garments[i])
	}
}

func (e *env) printGarment(work *job.Work, made job.Made, report garmentReport) {
	fmt.Fprintf(e.out, "\n%s, %s\n", made.Name, times(made.Quantity))
	t := screen.Table("piece", "cloth", "cut", "how", "width", "height")
	for _, p := range report.Pieces {
		t.AppendRow(screen.Row(p.Name, p.Cloth, p.Cut, p.how(), work.Format(p.WidthMM), work.Format(p.HeightMM)))
	}
	fmt.Fprintln(e.out, t.Render())
	for _, figure := range made.Figures {
		fmt.Fprintf(e.out, "%s: %s\n", figure.Name, work.Format(figure.Value))
	}
	if len(made.Truing.Rows) == 0 {
		return
	}
	fmt.Fprintf(e.out, "\ntruing of the %s\n", made.Name)
	t = screen.Table("seam", "of", "length", "against", "length", "difference", "verdict")
	for _, r := range made.Truing.Rows {
		t.AppendRow(screen.Row(r.Seam, r.Of, work.Format(r.OfLength), r.Against, work.Format(r.AgainstLength),
			work.Format(r.Difference), r.Verdict.In(work.Unit)))
	}
	fmt.Fprintf(e.out, "%s\nwhat is normal:\n", t.Render())
	said := map[string]bool{}
	for _, r := range made.Truing.Rows {
		line := fmt.Sprintf("  %s: %s\n", r.Seam, r.Normal.In(work.Unit))
		if !said[line] {
			fmt.Fprint(e.out, line)
		}
		said[line] = true
	}
}

func times(quantity int) string {
	if quantity == 1 {
		return "made once"
	}
	return fmt.Sprintf("made %d times", quantity)
}
