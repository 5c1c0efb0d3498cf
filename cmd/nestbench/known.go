package main

import (
	"fmt"
	"io"
	"math"
	"strings"
	"time"

	"github.com/spf13/cobra"

	"ellwand/cmd/ellwand/failure"
	"ellwand/cmd/ellwand/limit"
	"ellwand/cmd/ellwand/screen"
	"ellwand/cmd/nestbench/instance"
	"ellwand/nest"
	"ellwand/nest/jigsaw"
	"ellwand/nest/verify"
)

// knownOptions are the flags of the command known.
type knownOptions struct {
	time       time.Duration
	seed, sets uint64
	workers    int
	only       string
	record     string
}

func newKnown() *cobra.Command {
	var o knownOptions
	cmd := &cobra.Command{
		Use:   "known",
		Short: "Lay twenty sets whose shortest layout is known",
		Long: `Known lays jigsaws of every kind, cut by the seed --sets, and prints how far above
the shortest each layout is. The time is that of the processor, for each worker: what
else the machine does counts for nothing. --record keeps the densities with machine and
commit in a CSV file.`,
		Example: "  nestbench known --time 10s --workers 2",
		Args:    cobra.NoArgs,
		RunE:    func(cmd *cobra.Command, _ []string) error { return o.run(cmd) },
	}
	flags := cmd.Flags()
	flags.DurationVar(&o.time, "time", 10*time.Second, "processor time of each worker, for example 10s or 1m")
	o.seed, o.sets = 1, 1
	flags.Var((*limit.Seed)(&o.seed), "seed", "seed of the search")
	flags.Var((*limit.Seed)(&o.sets), "sets", "another seed makes other sets")
	o.workers = 2
	flags.Var(limit.NumberOf(&o.workers, limit.Workers), "workers", "searches side by side")
	flags.StringVar(&o.only, "only", "", "lay only the sets whose name has this `WORD`")
	flags.StringVar(&o.record, "record", "", "keep the densities in this CSV `FILE`")
	return cmd
}

func (o knownOptions) run(cmd *cobra.Command) error {
	if o.time <= 0 || o.workers == 0 {
		return fmt.Errorf("--time and --workers must be above 0")
	}
	table := screen.Table("set", "pieces", "shortest", "length", "above")
	for _, set := range jigsaw.Sets(o.sets) {
		if !strings.Contains(set.Name, o.only) {
			continue
		}
		r, err := o.lay(cmd, set)
		if err != nil {
			return failure.Of(err)
		}
		if o.record != "" {
			if err := record(o.record, r, o.time.Seconds()); err != nil {
				return err
			}
		}
		table.AppendRow(screen.Row(set.Name, r.Pieces, fmt.Sprintf("%.6g", set.Solved.Length),
			fmt.Sprintf("%.6g", r.Length), fmt.Sprintf("%.2f %%", math.Max(0, 100*(r.Length/set.Solved.Length-1)))))
	}
	_, err := io.WriteString(cmd.OutOrStdout(), table.Render()+"\n")
	return failure.Of(err)
}

// lay lays one set and verifies what was found.
func (o knownOptions) lay(cmd *cobra.Command, set jigsaw.Set) (reached, error) {
	result, err := nest.Solve(cmd.Context(), set.Problem, nest.Options{
		Time: o.time, Clock: clockOf(o.workers), Seed: o.seed, Workers: o.workers,
	})
	if err != nil {
		return reached{}, err
	}
	if err := verify.Layout(set.Problem, result.Layout); err != nil {
		return reached{}, fmt.Errorf("the layout found does not stand up to checking: %w", err)
	}
	in := instance.Instance{Name: fmt.Sprintf("%s, seed %d", set.Name, o.sets), Problem: set.Problem}
	return reached{
		Name: in.Name, Items: len(in.Problem.Items), Pieces: in.Pieces(), Width: in.Problem.Width,
		Length: result.Layout.Length, Density: in.Density(result.Layout.Length), Bound: result.Bound,
		Seconds: result.Elapsed.Seconds(), Passes: result.TotalPasses, Workers: o.workers, Seed: o.seed, Verified: true,
	}, nil
}
