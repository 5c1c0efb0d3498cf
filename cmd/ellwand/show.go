package main

import (
	"context"
	"ellwand/cmd/ellwand/limit"
	"fmt"
	"io"

	"github.com/spf13/cobra"

	"ellwand/cmd/ellwand/app"
	"ellwand/cmd/ellwand/failure"
	"ellwand/cmd/ellwand/files"
	"ellwand/cmd/ellwand/report"
	"ellwand/cmd/ellwand/screen"
	"ellwand/pieces/drawing"
)

// showOptions are the options of show and export.
type showOptions struct {
	output string
	pieces []string
	force  bool
}

func (o *showOptions) register(cmd *cobra.Command, what string) {
	flags := cmd.Flags()
	flags.StringVarP(&o.output, "output", "o", "", what)
	flags.Var(limit.EntriesOf(&o.pieces, limit.Pieces), "piece", "only the pieces of these names: front,back")
	flags.BoolVar(&o.force, "force", false, "overwrite a file that exists")
}

func newShow(e *env) *cobra.Command {
	var o showOptions
	cmd := &cobra.Command{
		Use:   "show FILE",
		Short: "Show the pieces of a pattern or a job, as a table and on one sheet",
		Long: `Show lists the pieces of a file of pieces, or of a job: how often and from what
each is cut, its size over all as it is cut, what its outline has of the seam
allowance, and how accurate it is. Edges that are sewn together are held against
each other.

-o draws them small on one page, all to one scale, as PDF, SVG or PNG by the
ending of its name: a contact sheet to see at a glance whether a pattern was
measured and typed rightly.`,
		Example: `  ellwand show skirt.yaml
  ellwand show skirt.yaml -o skirt.pdf`,
		Args: one("a file of pieces or a job"),
		RunE: func(cmd *cobra.Command, args []string) error { return e.show(cmd.Context(), args[0], o) },
	}
	o.register(cmd, "the contact sheet to draw: .pdf, .svg or .png")
	return cmd
}

func (e *env) show(ctx context.Context, path string, o showOptions) error {
	all, err := collection(ctx, path, o)
	if err != nil {
		return err
	}
	out := &files.Set{Force: o.force, Input: path}
	if o.output != "" {
		page, err := all.ContactSheet()
		if err != nil {
			return err
		}
		write, err := contactFormat(o.output, all.Title, page)
		if err != nil {
			return err
		}
		if err := out.Add(o.output, write); err != nil {
			return err
		}
	}
	return e.shown(all, out)
}

// shown writes the files, and tells what there is.
func (e *env) shown(all app.Collection, out *files.Set) error {
	told, err := report.PiecesOf(all)
	if err != nil {
		return failure.Of(err)
	}
	if err := out.Commit(); err != nil {
		return err
	}
	told.Files = append(told.Files, out.Paths()...)
	if e.json {
		return e.printJSON(told)
	}
	screen.Pieces(e.screen, all, told)
	e.notes(all.Notes)
	return nil
}

func collection(ctx context.Context, path string, o showOptions) (app.Collection, error) {
	all, err := app.ReadCollection(ctx, path)
	if err != nil {
		return all, err
	}
	return all.Named(o.pieces)
}

// contactFormat is what writes a contact sheet, by the ending of its name.
func contactFormat(path, title string, page drawing.Page) (func(io.Writer) error, error) {
	const pixelsPerMM = 6 // sharp on a screen [source.OwnChoice]
	switch files.Extension(path) {
	case ".pdf":
		return func(w io.Writer) error { return drawing.WritePDF(w, title, []drawing.Page{page}) }, nil
	case ".svg":
		return func(w io.Writer) error { return drawing.WriteSVG(w, title, page) }, nil
	case ".png":
		if page.Bars() > mostBars {
			return nil, fmt.Errorf("%s would show more lines than a PNG is drawn of; end its name in .svg or .pdf", path)
		}
		return func(w io.Writer) error { return drawing.WritePNG(w, page, pixelsPerMM) }, nil
	}
	return nil, fmt.Errorf("the contact sheet is written as .pdf, .svg or .png, but the file is named %s; give it "+
		"one of these endings", path)
}

// mostBars that are painted of a page, half a second of work [source.OwnChoice].
const mostBars = 100_000
