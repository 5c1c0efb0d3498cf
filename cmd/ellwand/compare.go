package main

import (
	"context"

	"github.com/spf13/cobra"

	"ellwand/cmd/ellwand/app"
	"ellwand/cmd/ellwand/report"
	"ellwand/cmd/ellwand/screen"
)

func newCompare(e *env) *cobra.Command {
	var m searchFlags
	var cloth string
	var from fromFlags
	cmd := &cobra.Command{
		Use:   "compare JOB",
		Short: "Say which of several offers of a cloth is the cheapest for a job",
		Long: `Compare lays the pieces of a job on every offer of a cloth, and ranks the
offers by what the job would cost on each: width, price, the shop's step and
least cut, and remnants are all reckoned in. Write the offers into the job:

  currency: EUR
  cloths:
    - name: shell
      offers:
        - {name: Crepe, width: 150, price: 24.50}
        - {name: Market stall, width: 115, price: 14}`,
		Example: "  ellwand compare dress.yaml\n  ellwand compare dress.yaml --cloth lining --effort long",
		Args:    one("a job file"),
		RunE: func(cmd *cobra.Command, args []string) error {
			return e.compare(cmd.Context(), args[0], cloth, m, from)
		},
	}
	m.register(cmd)
	from.register(cmd)
	cmd.Flags().StringVar(&cloth, "cloth", "", "the cloth to compare; every one that has a price if not given")
	_ = cmd.Flags().MarkHidden("force") // compare writes no files
	return cmd
}

func (e *env) compare(ctx context.Context, path, cloth string, m searchFlags, from fromFlags) error {
	if err := m.check(); err != nil {
		return err
	}
	ctx, cancel := m.within(ctx)
	defer cancel()
	work, err := app.ReadJob(ctx, path)
	if err != nil {
		return err
	}
	if err := from.bringIn(ctx, work, app.EveryCloth(work, nil), &m.Search); err != nil {
		return err
	}
	chosen, err := app.Priced(work, cloth)
	if err != nil {
		return err
	}
	e.warn(work)
	watch, done := e.watch(work)
	defer done()
	ranked, err := app.Compare(ctx, work, chosen, m.Search, watch)
	if err != nil {
		return err
	}
	done()
	e.noteEnded(ranked.Ended)
	if e.json {
		return e.printJSON(report.ComparisonOf(work, ranked))
	}
	screen.Comparison(e.screen, work, ranked)
	return nil
}
