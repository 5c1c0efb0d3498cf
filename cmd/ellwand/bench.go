package main

import (
	"fmt"
	"io"
	"runtime"

	"github.com/spf13/cobra"

	"ellwand/cmd/ellwand/failure"
	"ellwand/cmd/ellwand/files"
	"ellwand/cmd/ellwand/instance"
	"ellwand/cmd/ellwand/screen"
	"ellwand/nest"
	"ellwand/nest/layout"
	"ellwand/nest/verify"
)

func newBench(e *env) *cobra.Command {
	var s search
	var into string
	cmd := &cobra.Command{
		Use:   "bench INSTANCE.json",
		Short: "Lay an instance of the open nesting data and print its density",
		Long: `Bench lays an instance of the open irregular strip packing collections and
prints how dense the laid is. --laid writes the placements as JSON;
--record keeps the density with machine and commit in a CSV file.`,
		Example: "  ellwand bench ../shared/bench/albano.json --time 10s --workers 2",
		Args:    one("an instance file"),
		RunE: func(cmd *cobra.Command, args []string) error {
			return e.bench(cmd, args[0], s, into)
		},
	}
	s.register(cmd)
	cmd.Flags().StringVar(&into, "record", "", "keep the density in this CSV `FILE`")
	return cmd
}

// benchResult is what bench prints. Lengths are in the unit of the instance,
// density in percent.
type benchResult struct {
	Name     string  `json:"name"`
	Items    int     `json:"items"`
	Width    float64 `json:"width"`
	Length   float64 `json:"length"`
	Density  float64 `json:"density"`
	Bound    float64 `json:"bound"`
	Seconds  float64 `json:"seconds"`
	Workers  int     `json:"workers"`
	Seed     uint64  `json:"seed"`
	Verified bool    `json:"verified"`
}

func (e *env) bench(cmd *cobra.Command, path string, s search, into string) error {
	if err := s.check(); err != nil {
		return err
	}
	in, err := instance.Read(path)
	if err != nil {
		return err
	}
	if err := in.Problem.Check(); err != nil {
		return fmt.Errorf("%s: %w", path, err)
	}
	files := files.Set{Force: s.force, Input: path}
	var laid layout.Layout
	if s.layout != "" {
		if err := files.Add(s.layout, func(w io.Writer) error { return in.WriteLayout(w, laid) }); err != nil {
			return err
		}
	}
	bar := screen.NewProgress(e.err, e.quiet)
	result, err := nest.Solve(cmd.Context(), in.Problem, nest.Options{
		Time: s.time, Seed: s.seed, Workers: s.workers,
		Progress: func(p nest.Progress) {
			bar.Show(in.Name, fmt.Sprintf("%.4g", p.Length), fmt.Sprintf("%.4g", p.Bound), p.Elapsed)
		},
	})
	bar.Done()
	if err != nil {
		return failure.Of(err)
	}
	if err := verify.Layout(in.Problem, result.Layout); err != nil {
		return failure.Of(fmt.Errorf("the layout found does not stand up to checking: %w", err))
	}
	laid = result.Layout
	if err := files.Commit(); err != nil {
		return err
	}
	workers := s.workers
	if workers == 0 {
		workers = runtime.GOMAXPROCS(0)
	}
	r := benchResult{
		Name: in.Name, Items: len(in.Problem.Items), Width: in.Problem.Width,
		Length: laid.Length, Density: in.Density(laid.Length), Bound: result.Bound,
		Seconds: result.Elapsed.Seconds(), Workers: workers, Seed: s.seed, Verified: true,
	}
	if into != "" {
		if err := record(into, r, s.time.Seconds()); err != nil {
			return err
		}
	}
	return e.printBench(in, r)
}

func (e *env) printBench(in instance.Instance, r benchResult) error {
	if e.json {
		return e.printJSON(r)
	}
	t := screen.Table("instance", "pieces", "width", "length", "density", "never below", "seconds")
	t.AppendRow(screen.Row(r.Name, in.Pieces(), fmt.Sprintf("%.6g", r.Width), fmt.Sprintf("%.6g", r.Length),
		fmt.Sprintf("%.2f %%", r.Density), fmt.Sprintf("%.6g", r.Bound), fmt.Sprintf("%.1f", r.Seconds)))
	fmt.Fprintln(e.out, t.Render())
	return nil
}
