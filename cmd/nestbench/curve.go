package main

import (
	"encoding/csv"
	"fmt"
	"io"
	"path/filepath"
	"strconv"
	"strings"
	"time"

	"github.com/spf13/cobra"

	"ellwand/cmd/ellwand/app"
	"ellwand/cmd/ellwand/build"
	"ellwand/cmd/ellwand/failure"
	"ellwand/cmd/ellwand/files"
	"ellwand/cmd/ellwand/job"
	"ellwand/fabric/bed"
	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/fabric/rules"
	"ellwand/nest"
	"ellwand/nest/layout"
)

// curveTimes are when the length is noted, in seconds of processor time.
var curveTimes = []float64{0.03, 0.1, 0.3, 1, 3, 10}

// curveOptions are the flags of the command curve.
type curveOptions struct {
	time   time.Duration
	seeds  int
	record string
}

func newCurve() *cobra.Command {
	var o curveOptions
	cmd := &cobra.Command{
		Use:   "curve JOB.yaml...",
		Short: "Note how short the open lay of jobs is over time",
		Long: `Curve lays every cloth of the jobs open, in its first width, by one search, and
notes how long the lay is after 0.03, 0.1, 0.3, 1, 3 and 10 s of processor time, which
include making the tables. --record keeps the lengths with machine and commit in a CSV
file.`,
		Example: "  nestbench curve testdata/*.yaml --seeds 5 --record curve.csv",
		Args:    cobra.MinimumNArgs(1),
		RunE:    func(cmd *cobra.Command, args []string) error { return o.run(cmd, args) },
	}
	flags := cmd.Flags()
	flags.DurationVar(&o.time, "time", 10*time.Second, "processor time of each search, for example 1s")
	flags.IntVar(&o.seeds, "seeds", 1, "number of seeds, from 1")
	flags.StringVar(&o.record, "record", "", "write the lengths to this CSV `FILE`")
	return cmd
}

func (o curveOptions) run(cmd *cobra.Command, paths []string) error {
	rows := [][]string{{"job", "cloth", "width_mm", "pieces", "seed", "seconds", "length_mm", "commit", "machine"}}
	for _, path := range paths {
		work, err := app.ReadJob(cmd.Context(), path)
		if err != nil {
			return err
		}
		cloths, err := app.OneWidthEach(work, nil)
		if err != nil {
			return err
		}
		name := strings.TrimSuffix(filepath.Base(path), filepath.Ext(path))
		for _, c := range cloths {
			more, err := o.curveOf(cmd, name, work, c)
			if err != nil {
				return err
			}
			rows = append(rows, more...)
		}
	}
	if o.record == "" {
		return failure.Of(csv.NewWriter(cmd.OutOrStdout()).WriteAll(rows))
	}
	out := files.Set{Force: true}
	if err := out.Add(o.record, func(w io.Writer) error { return csv.NewWriter(w).WriteAll(rows) }); err != nil {
		return err
	}
	return out.Commit()
}

// curveOf one cloth of a job, by every seed.
func (o curveOptions) curveOf(cmd *cobra.Command, name string, work *job.Work, c cloth.Cloth) ([][]string, error) {
	problem, err := openLay(work, c)
	if err != nil {
		return nil, err
	}
	pieces := 0
	for _, item := range problem.Items {
		pieces += item.Copies
	}
	var rows [][]string
	for seed := 1; seed <= o.seeds; seed++ {
		lengths, err := o.lengths(cmd, problem, uint64(seed))
		if err != nil {
			return nil, failure.Of(err)
		}
		for i, length := range lengths {
			rows = append(rows, []string{name, c.Name, strconv.FormatFloat(c.Width, 'f', 0, 64), strconv.Itoa(pieces),
				strconv.Itoa(seed), strconv.FormatFloat(curveTimes[i], 'g', -1, 64), length, build.Commit(), machine()})
		}
	}
	return rows, nil
}

// openLay is the problem of the open lay.
func openLay(work *job.Work, c cloth.Cloth) (layout.Problem, error) {
	wanted, err := rules.DemandsOf(rules.Enlarged(c, work.PiecesOf(c.Name)))
	if err != nil {
		return layout.Problem{}, err
	}
	b := bed.Of(c, lay.Open)
	templates, err := rules.TemplatesOf(c, b, wanted)
	if err != nil {
		return layout.Problem{}, err
	}
	return rules.ProblemOf(c, b, templates)
}

// lengths at the times, "" where there was no layout yet.
func (o curveOptions) lengths(cmd *cobra.Command, problem layout.Problem, seed uint64) ([]string, error) {
	begun := processorTime()
	clock := func() time.Duration { return processorTime() - begun }
	var lengths []string
	length := ""
	note := func(now time.Duration) {
		for len(lengths) < len(curveTimes) && now.Seconds() > curveTimes[len(lengths)] {
			lengths = append(lengths, length)
		}
	}
	result, err := nest.Solve(cmd.Context(), problem, nest.Options{
		Time: o.time, Clock: clock, Seed: seed, Workers: 1,
		Progress: func(p nest.Progress) {
			note(p.Elapsed)
			length = fmt.Sprintf("%.1f", p.Length)
		},
	})
	if err != nil {
		return nil, err
	}
	note(result.Elapsed)
	for len(lengths) < len(curveTimes) && curveTimes[len(lengths)] <= o.time.Seconds() {
		lengths = append(lengths, length)
	}
	return lengths, nil
}
