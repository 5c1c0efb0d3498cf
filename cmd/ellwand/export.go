package main

import (
	"context"
	"fmt"
	"io"

	"github.com/spf13/cobra"

	"ellwand/cmd/ellwand/files"
)

func newExport(e *env) *cobra.Command {
	var o showOptions
	cmd := &cobra.Command{
		Use:   "export FILE -o pieces.yaml",
		Short: "Write the pieces of a job to a file: our own, or a drawing",
		Long: `Export writes the pieces of a job, drafted ones too, or of a file of pieces, as
a file of pieces (see ellwand help pattern): every point of every outline,
exact to a ten-thousandth of a mm, with grain, notches, darts, marks and
allowances.

A file that is named .dxf is written as sewn-product patterns are interchanged
(ASTM D6673); ellwand help dxf says what that carries, and what not. One
that is named .svg or .pdf has all pieces at true size on one page, in layers
that are named by what they hold: cut, sew, marks, words.

Change a piece by hand, and name the file under pattern: of its garment: it
takes the place of the drafted piece of the same name.`,
		Example: `  ellwand export blouse.yaml -o blouse-pieces.yaml
  ellwand export skirt.yaml --piece "front skirt" -o front.yaml
  ellwand export blouse.yaml -o blouse.dxf
  ellwand export blouse.yaml -o blouse.svg`,
		Args: one("a job or a file of pieces"),
		RunE: func(cmd *cobra.Command, args []string) error { return e.export(cmd.Context(), args[0], o) },
	}
	o.register(cmd, "the file to write: "+exportEndings()+" (required)")
	return cmd
}

func (e *env) export(ctx context.Context, path string, o showOptions) error {
	if o.output == "" {
		return fmt.Errorf("the pieces need a file to go to; for example: ellwand export %s -o pieces.yaml", path)
	}
	format, err := exportFormatOf(o.output)
	if err != nil {
		return err
	}
	all, err := collection(ctx, path, o)
	if err != nil {
		return err
	}
	out := &files.Set{Force: o.force, Input: path}
	if err := out.Add(o.output, func(w io.Writer) error { return format.write(all, w) }); err != nil {
		return err
	}
	return e.shown(all, out)
}
