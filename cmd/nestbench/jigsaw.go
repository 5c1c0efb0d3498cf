package main

import (
	"fmt"
	"io"

	"github.com/spf13/cobra"

	"ellwand/cmd/ellwand/failure"
	"ellwand/cmd/ellwand/files"
	"ellwand/cmd/ellwand/limit"
	"ellwand/cmd/nestbench/instance"
	"ellwand/nest/jigsaw"
)

// jigsawOptions are the flags of the command jigsaw.
type jigsawOptions struct {
	cut           string
	seed          uint64
	length, width float64
	columns, rows int
	force         bool
}

func newJigsaw() *cobra.Command {
	var o jigsawOptions
	cmd := &cobra.Command{
		Use:   "jigsaw INSTANCE.json",
		Short: "Cut a rectangle into an instance whose shortest layout is known",
		Long: `Jigsaw cuts a rectangle up and writes the pieces as an instance: no layout of
it is shorter than the rectangle, and one is as long.`,
		Example: "  nestbench jigsaw curved.json --cut curved --seed 3",
		RunE: func(cmd *cobra.Command, args []string) error {
			if len(args) != 1 {
				return fmt.Errorf("%s takes one file to write, but was given %d; for example:\n%s",
					cmd.CommandPath(), len(args), cmd.Example)
			}
			return o.run(args[0])
		},
	}
	flags := cmd.Flags()
	flags.StringVar(&o.cut, "cut", "slanted", "shape of the cuts: straight, slanted, curved, tongued or chopped")
	o.seed = 1
	flags.Var((*limit.Seed)(&o.seed), "seed", "another seed makes another jigsaw")
	flags.Float64Var(&o.length, "length", 1000, "length of the rectangle, along the strip")
	flags.Float64Var(&o.width, "width", 600, "width of the rectangle, which is that of the strip")
	flags.IntVar(&o.columns, "columns", 5, "pieces along")
	flags.IntVar(&o.rows, "rows", 4, "pieces across")
	flags.BoolVar(&o.force, "force", false, "overwrite a file that exists")
	return cmd
}

// most pieces along or across, so that nobody waits for a slip of the hand.
const mostCuts = 100

func (o jigsawOptions) run(path string) error {
	shape := jigsaw.Cut(-1)
	for _, cut := range jigsaw.Cuts() {
		if cut.String() == o.cut {
			shape = cut
		}
	}
	switch {
	case shape < 0:
		return fmt.Errorf("--cut is %q; write straight, slanted, curved, tongued or chopped", o.cut)
	case !(o.length > 0) || !(o.width > 0) || o.length > 1e6 || o.width > 1e6:
		return fmt.Errorf("--length and --width must be above 0, and at most 1000000")
	case o.columns < 1 || o.rows < 1 || o.columns > mostCuts || o.rows > mostCuts:
		return fmt.Errorf("--columns and --rows must be from 1 to %d", mostCuts)
	}
	puzzle := jigsaw.New(o.seed, shape, o.length, o.width, o.columns, o.rows)
	in := instance.Instance{Name: fmt.Sprintf("jigsaw, %s, seed %d, length %g", shape, o.seed, o.length),
		Problem: puzzle.Problem}
	out := files.Set{Force: o.force}
	if err := out.Add(path, func(w io.Writer) error { return in.Write(w) }); err != nil {
		return err
	}
	return failure.Of(out.Commit())
}
