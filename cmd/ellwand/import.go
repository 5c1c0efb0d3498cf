package main

import (
	"cmp"
	"errors"
	"fmt"

	"github.com/spf13/cobra"

	"ellwand/cmd/ellwand/app"
	"ellwand/cmd/ellwand/files"
	"ellwand/cmd/ellwand/limit"
	"ellwand/cmd/ellwand/words"
	"ellwand/pieces/language"
	"ellwand/pieces/measure"
)

func newImport(e *env) *cobra.Command {
	var o importOptions
	cmd := &cobra.Command{
		Use:   "import FILE... -o pieces.yaml",
		Short: "Make pieces of drawings and photos: PDF, SVG, DXF, JPEG, PNG",
		Long: `Import reads the outlines in drawings, each by what is in it and not by its
name, and writes them as a file of pieces (see ellwand help pattern), which a
garment names under pattern:. What each kind of file carries, and what not, is
told by ellwand help drawings.

--picture draws what was found, with numbers by which pieces are chosen. What
the drawing does not say is said with the options, for all pieces or for one by
its number or name (--cut 2, --cut 3=4), or is asked for on a terminal. All
that is missing is listed at once.`,
		Example: `  ellwand import shirt.dxf -o shirt.yaml
  ellwand import shirt.dxf --picture found.pdf
  ellwand import card.dxf --piece 1,2 --name 1=front,2=back --cut 2 --pair yes \
    --grain up --allowance "included 1.5 cm" -o card.yaml`,
		Args: func(cmd *cobra.Command, args []string) error {
			if len(args) == 0 {
				return fmt.Errorf("%s needs a drawing; for example:\n%s", cmd.CommandPath(), cmd.Example)
			}
			return limit.Drawings.Check(language.Say("the list of files", "die Liste der Dateien"), len(args))
		},
		RunE: func(_ *cobra.Command, args []string) error { return e.importFrom(args, o) },
	}
	o.register(cmd)
	o.view.register(cmd)
	o.photo.register(cmd)
	return cmd
}

func (e *env) importFrom(paths []string, o importOptions) error {
	if o.output == "" && o.picture == "" && o.view.overview == "" {
		return fmt.Errorf("the pieces need a file to go to; for example: ellwand import %s -o pieces.yaml", paths[0])
	}
	if ending := files.Extension(o.output); o.output != "" && ending != ".yaml" && ending != ".yml" {
		return fmt.Errorf("the pieces are written as YAML, but the file is named %s; end its name in .yaml", o.output)
	}
	err := o.lengths()
	if err != nil {
		return err
	}
	if o.read.View, err = o.view.view(); err != nil {
		return err
	}
	if o.read.Reference, err = o.photo.reference(); err != nil {
		return err
	}
	all, err := app.ReadDrawings(paths, o.read)
	if drawn := e.drawOverview(all, o, paths[0]); drawn != nil || err != nil {
		return cmp.Or(err, drawn)
	}
	if err := o.answers.Check(all.Found); err != nil {
		return err
	}
	if all, err = all.Choose(o.chosen); err != nil {
		return err
	}
	if err := e.drawFound(all, o, paths[0]); err != nil || o.output == "" {
		return err
	}
	if e.asks() {
		if err := e.askFor(all, &o.answers); err != nil {
			return err
		}
	}
	done, notes, err := all.Collection(o.answers, o.read)
	if err != nil {
		return inWords(err, all.Unit.System())
	}
	done.Notes = append(done.Notes, words.Found(notes, all.Unit.System())...)
	out := &files.Set{Force: o.force, Input: paths[0]}
	if err := out.Add(o.output, done.WriteFile); err != nil {
		return err
	}
	return e.shown(done, out)
}

// inWords says what is missing or at fault of pieces that were found.
func inWords(err error, system measure.System) error {
	var missing *app.Unanswered
	var fault *app.FoundFault
	switch {
	case errors.As(err, &missing):
		return errors.New(words.Unanswered(missing))
	case errors.As(err, &fault):
		return &language.Refusal{Sentence: words.FoundFault(fault, system)}
	}
	return err
}
