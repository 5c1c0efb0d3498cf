package main

import (
	"context"
	"ellwand/cmd/ellwand/limit"
	"fmt"
	"io"
	"time"

	"github.com/spf13/cobra"

	"ellwand/cmd/ellwand/app"
	"ellwand/cmd/ellwand/files"
	"ellwand/cmd/ellwand/report"
	"ellwand/cmd/ellwand/screen"
	"ellwand/fabric/quote"
	"ellwand/pieces/paper"
)

// quoteOptions are the options of the quote command alone.
type quoteOptions struct {
	output string
	paper  string
	offers []string
}

func newQuote(e *env) *cobra.Command {
	var m searchFlags
	var q quoteOptions
	cmd := &cobra.Command{
		Use:   "quote JOB",
		Short: "Reckon what a job costs, and write the quote for the client",
		Long: `Quote lays the pieces of all garments of a job together on each of its cloths,
takes the cheapest offer of each, and adds notions, making, margin and tax. With
-o it writes the quote as a one-page PDF that a client can be handed.

ellwand help prices says what a job needs for it.`,
		Example: "  ellwand quote dress.yaml -o quote.pdf\n  ellwand quote dress.yaml --offer Crepe --paper letter -o " +
			"quote.pdf",
		Args: one("a job file"),
		RunE: func(cmd *cobra.Command, args []string) error {
			return e.quote(cmd.Context(), args[0], m, q)
		},
	}
	m.register(cmd)
	flags := cmd.Flags()
	flags.StringVarP(&q.output, "output", "o", "", "the PDF to write")
	flags.StringVar(&q.paper, "paper", "a4", "a4 or letter")
	flags.Var(limit.EntriesOf(&q.offers, limit.Offers), "offer", "offers to take, by name, in place of the cheapest")
	return cmd
}

func (e *env) quote(ctx context.Context, path string, m searchFlags, o quoteOptions) error {
	paper, err := parsePaper(o.paper)
	if err == nil {
		err = m.check()
	}
	if err != nil {
		return err
	}
	work, err := app.ReadJob(path)
	if err != nil {
		return err
	}
	out := &files.Set{Force: m.force, Input: path}
	if o.output != "" {
		if err := out.Check(o.output); err != nil {
			return err
		}
	}
	prepared, err := app.PrepareQuote(work, o.offers, time.Now())
	if err != nil {
		return err
	}
	e.warnPaper(work, o.output != "")
	watch, done := e.watch(work)
	defer done()
	ctx, cancel := m.within(ctx)
	defer cancel()
	reckoned, err := prepared.Reckon(ctx, m.Search, watch)
	if err != nil {
		return err
	}
	done()
	e.noteEnded(reckoned.Ended)
	if o.output != "" {
		if err := writeQuote(out, o.output, reckoned, paper); err != nil {
			return err
		}
	}
	if e.json {
		return e.printJSON(report.QuoteOf(reckoned))
	}
	screen.Quote(e.screen, reckoned)
	return nil
}

// writeQuote writes the PDF. One that does not go onto its page is no fault of
// the program.
func writeQuote(out *files.Set, path string, reckoned quote.Quote, paper paper.Paper) error {
	var refused error
	err := out.Add(path, func(w io.Writer) error {
		refused = reckoned.WritePDF(w, paper)
		return refused
	})
	if err == nil {
		err = out.Commit()
	}
	if refused != nil {
		return fmt.Errorf("%s: %w", out.Input, refused)
	}
	return err
}
