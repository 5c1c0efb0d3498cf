package main

import (
	"ellwand/cmd/ellwand/app"
	"ellwand/cmd/ellwand/limit"
	"ellwand/pieces/found"
	"ellwand/pieces/measure"
	"fmt"
	"github.com/spf13/cobra"
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
	photo           photoOptions
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
