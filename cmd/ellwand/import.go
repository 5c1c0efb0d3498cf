package main

import (
	"cmp"
	"errors"
	"fmt"

	"github.com/spf13/cobra"

	"ellwand/cmd/ellwand/app"
	"ellwand/cmd/ellwand/failure"
	"ellwand/cmd/ellwand/files"
	"ellwand/cmd/ellwand/limit"
	"ellwand/cmd/ellwand/report"
	"ellwand/cmd/ellwand/screen"
	"ellwand/cmd/ellwand/words"
	"ellwand/pieces/found"
	"ellwand/pieces/measure"
)

// importOptions are the options of import.
type importOptions struct {
	output, picture string
	units, gap      string
	chosen          []string
	answers         app.Answers
	read            found.Options
	force           bool
	view            viewOptions
}

func newImport(e *env) *cobra.Command {
	var o importOptions
	cmd := &cobra.Command{
		Use:   "import FILE... -o pieces.yaml",
		Short: "Make pieces of drawings: PDF, SVG, DXF",
		Long: `Import reads the outlines in drawings, each by what is in it and not by its
name, and writes them as a file of pieces (see ellwand help pattern), which a
garment names under pattern:. What each kind of file carries, and what not, is
told by ellwand help import.

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
			return limit.Drawings.Check("the list of files", len(args))
		},
		RunE: func(_ *cobra.Command, args []string) error { return e.importFrom(args, o) },
	}
	o.register(cmd)
	o.view.register(cmd)
	return cmd
}

func (o *importOptions) register(cmd *cobra.Command) {
	flags := cmd.Flags()
	flags.StringVarP(&o.output, "output", "o", "", "the file of pieces to write: .yaml")
	flags.StringVar(&o.picture, "picture", "", "a picture of what was found, with numbers: .pdf, .svg or .png")
	flags.StringVar(&o.units, "units", "", "what the numbers of a drawing are that does not say it: mm, cm, m, in or yd")
	flags.StringVar(&o.gap, "gap", "", "how far apart ends of lines may be that are joined (usual 0.5 mm)")
	flags.BoolVar(&o.read.Open, "open", false, "open halves at their mirror line, in place of laying them on the fold")
	flags.BoolVar(&o.read.Smooth, "smooth", false, "draw smooth lines through the points of curves, in place of chords")
	entries := func(into *[]string, name, what string) {
		flags.Var(limit.EntriesOf(into, limit.List), name, what)
	}
	entries(&o.chosen, "piece", "only these pieces, by number or name: 1,3")
	entries(&o.answers.Name, "name", "their names: 1=front,2=back")
	entries(&o.answers.Size, "size", "their size: 38, or 1=38")
	entries(&o.answers.Cloth, "cloth", "cloth they are cut from: shell, or 3=lining")
	entries(&o.answers.Cut, "cut", "how many are cut: 2, or 3=1")
	entries(&o.answers.Pair, "pair", "half of them mirrored: yes, or 1=yes")
	entries(&o.answers.Fold, "fold", "side on the fold: left, right, top, bottom or none")
	entries(&o.answers.Grain, "grain", "how the grain runs in the drawing: up, across, bias or either")
	entries(&o.answers.Allowance, "allowance", `what outlines have of it: "included 1.5 cm", "1.5 cm" (added), unknown`)
	entries(&o.answers.Kind, "kind", "shell, facing, lining or interfacing")
	flags.BoolVar(&o.force, "force", false, "overwrite a file that exists")
}

// lengths of the options.
func (o *importOptions) lengths() error {
	if o.units != "" {
		unit, err := measure.ParseUnit(o.units)
		if err != nil {
			return fmt.Errorf("--units: %w", err)
		}
		o.read.Unit = unit.Millimetres()
	}
	if o.gap == "" {
		return nil
	}
	gap, err := measure.Parse(o.gap, measure.Millimetre)
	const most = 20 // mm; farther apart are no ends of one line [source.OwnChoice]
	if err != nil || gap <= 0 || gap > most {
		return fmt.Errorf("--gap %q: write a length above 0 and at most %d mm", o.gap, most)
	}
	o.read.Gap = float64(gap)
	return nil
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
		return errors.New(words.FoundFault(fault, system))
	}
	return err
}

// drawFound writes the picture, if one is asked for.
func (e *env) drawFound(all app.Imported, o importOptions, input string) error {
	if o.picture == "" {
		return nil
	}
	page, err := all.Picture()
	if err != nil {
		return failure.Of(err)
	}
	write, err := contactFormat(o.picture, all.Title, page)
	if err != nil {
		return err
	}
	out := &files.Set{Force: o.force, Input: input}
	if err := out.Add(o.picture, write); err != nil {
		return err
	}
	if err := out.Commit(); err != nil {
		return err
	}
	if o.output == "" {
		return e.told(all, out.Paths())
	}
	e.note("What was found is drawn in %s.", o.picture)
	return nil
}

// told says what was found.
func (e *env) told(all app.Imported, files []string) error {
	notes := words.Found(all.Notes, all.Unit.System())
	found := report.DrawingOf(all, notes, files)
	if e.json {
		return e.printJSON(found)
	}
	screen.Drawing(e.screen, found, all.Unit.System())
	e.notes(notes)
	return nil
}
