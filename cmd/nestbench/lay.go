package main

import (
	"fmt"
	"io"
	"runtime"
	"time"

	"github.com/spf13/cobra"

	"ellwand/cmd/ellwand/failure"
	"ellwand/cmd/ellwand/files"
	"ellwand/cmd/ellwand/limit"
	"ellwand/cmd/ellwand/screen"
	"ellwand/cmd/nestbench/instance"
	"ellwand/nest"
	"ellwand/nest/layout"
	"ellwand/nest/verify"
)

// layOptions are the flags of the command lay.
type layOptions struct {
	time    time.Duration
	passes  int
	seed    uint64
	workers int
	layout  string // file for the placements, or empty
	record  string // file for the density, or empty
	force   bool
	json    bool
	// busy measures the time by the processor.
	busy bool
}

func newLay() *cobra.Command {
	var o layOptions
	cmd := &cobra.Command{
		Use:   "lay INSTANCE.json",
		Short: "Lay an instance and print its density",
		Long: `Lay reads an instance (JSON, as the open collections have it), searches for a
short layout, verifies it and prints how dense it is. --layout writes the
placements as JSON; --record keeps the density with machine and commit in a CSV
file. With --passes in place of --time the layout depends on the instance and
the seed alone.`,
		Example: "  nestbench lay albano.json --time 10s --workers 2",
		RunE: func(cmd *cobra.Command, args []string) error {
			if len(args) != 1 {
				return fmt.Errorf("%s takes one instance file, but was given %d; for example:\n%s",
					cmd.CommandPath(), len(args), cmd.Example)
			}
			if cmd.Flags().Changed("passes") && !cmd.Flags().Changed("time") {
				o.time = 0
			}
			return o.run(cmd, args[0])
		},
	}
	flags := cmd.Flags()
	flags.DurationVar(&o.time, "time", 10*time.Second, "time to search, for example 10s or 20m")
	flags.Var(limit.NumberOf(&o.passes, limit.Passes), "passes", "passes of each search, in place of the time")
	o.seed = 1
	flags.Var((*limit.Seed)(&o.seed), "seed", "seed of the search")
	flags.Var(limit.NumberOf(&o.workers, limit.Workers), "workers", "processor cores to use; 0 is all of them")
	flags.StringVar(&o.layout, "layout", "", "write the placements to this `FILE`")
	flags.StringVar(&o.record, "record", "", "keep the density in this CSV `FILE`")
	flags.BoolVar(&o.force, "force", false, "overwrite files that exist")
	flags.BoolVar(&o.busy, "busy", false, "the machine is busy: --time is processor time, for each worker")
	flags.BoolVar(&o.json, "json", false, "print JSON for programs instead of a table")
	return cmd
}

// check refuses what cannot be meant.
func (o layOptions) check() error {
	switch {
	case o.time < 0 || o.time == 0 && o.passes == 0:
		return fmt.Errorf("--time is %v; it must be above 0", o.time)
	case o.record != "" && o.passes > 0:
		return fmt.Errorf("--record keeps what is reached in a time; leave --passes out")
	}
	return nil
}

func (o layOptions) run(cmd *cobra.Command, path string) error {
	if err := o.check(); err != nil {
		return err
	}
	in, err := instance.Read(path)
	if err != nil {
		return err
	}
	if err := in.Problem.Check(); err != nil {
		return fmt.Errorf("%s: %w", path, err)
	}
	out := files.Set{Force: o.force, Input: path}
	var laid layout.Layout
	if o.layout != "" {
		if err := out.Add(o.layout, func(w io.Writer) error { return in.WriteLayout(w, laid) }); err != nil {
			return err
		}
	}
	result, err := o.solve(cmd, in)
	if err != nil {
		return failure.Of(err)
	}
	laid = result.Layout
	if err := out.Commit(); err != nil {
		return err
	}
	r := reached{
		Name: in.Name, Items: len(in.Problem.Items), Pieces: in.Pieces(), Width: in.Problem.Width,
		Length: laid.Length, Density: in.Density(laid.Length), Bound: result.Bound,
		Seconds: result.Elapsed.Seconds(), Passes: result.TotalPasses, Workers: o.coresUsed(), Seed: o.seed, Verified: true,
	}
	if o.record != "" {
		if err := record(o.record, r, o.time.Seconds()); err != nil {
			return err
		}
	}
	return r.print(cmd.OutOrStdout(), o.json)
}

// coresUsed is the number of searches side by side.
func (o layOptions) coresUsed() int {
	if o.workers == 0 {
		return runtime.GOMAXPROCS(0)
	}
	return o.workers
}

// solve searches, shows how it goes, and verifies what was found.
func (o layOptions) solve(cmd *cobra.Command, in instance.Instance) (nest.Result, error) {
	bar := screen.NewProgress(cmd.ErrOrStderr(), false)
	var clock func() time.Duration
	if o.busy {
		clock = clockOf(o.coresUsed())
	}
	result, err := nest.Solve(cmd.Context(), in.Problem, nest.Options{
		Time: o.time, Clock: clock, Passes: o.passes, Seed: o.seed, Workers: o.workers,
		Progress: func(p nest.Progress) {
			bar.Show(in.Name, fmt.Sprintf("%.4g", p.Length), fmt.Sprintf("%.4g", p.Bound), p.Elapsed)
		},
	})
	bar.Done()
	if err != nil {
		return result, err
	}
	if err := verify.Layout(in.Problem, result.Layout); err != nil {
		return result, fmt.Errorf("the layout found does not stand up to checking: %w", err)
	}
	return result, nil
}
