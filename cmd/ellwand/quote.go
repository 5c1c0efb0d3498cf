package main

import (
	"context"
	"ellwand/cmd/ellwand/limit"
	"errors"
	"fmt"
	"io"
	"path/filepath"
	"strings"
	"time"

	"github.com/spf13/cobra"

	"ellwand/cmd/ellwand/app"
	"ellwand/cmd/ellwand/failure"
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
	// reckoning says that the client's quote has the maker's reckoning as well.
	reckoning bool
}

func newQuote(e *env) *cobra.Command {
	var m searchFlags
	var q quoteOptions
	var from fromFlags
	cmd := &cobra.Command{
		Use:   "quote JOB",
		Short: "Reckon what a job costs, and write the quote for the client",
		Long: `Quote lays the pieces of all garments of a job together on each of its cloths,
takes the cheapest offer of each, and adds notions, making, margin and tax. With
-o it writes the quote as a one-page PDF that a client can be handed, and beside
it the maker's own sheet, NAME-maker.pdf. The margin, the hours and rates, the
lay and what the amounts rest on stand on the maker's sheet alone: in the
client's quote the margin is in the price of the cloth. --reckoning puts all of
it there too.

ellwand help prices says what a job needs for it.`,
		Example: "  ellwand quote dress.yaml -o quote.pdf\n  ellwand quote dress.yaml --offer Crepe --paper letter -o " +
			"quote.pdf",
		Args: one("a job file"),
		RunE: func(cmd *cobra.Command, args []string) error {
			return e.quote(cmd.Context(), args[0], m, from, q)
		},
	}
	m.register(cmd)
	from.register(cmd)
	flags := cmd.Flags()
	flags.StringVarP(&q.output, "output", "o", "", "the PDF to write")
	flags.StringVar(&q.paper, "paper", "a4", "a4 or letter")
	flags.Var(limit.EntriesOf(&q.offers, limit.Offers), "offer", "offers to take, by name, in place of the cheapest")
	flags.BoolVar(&q.reckoning, "reckoning", false, "put margin, hours, rates and lays into the client's quote as well")
	return cmd
}

func (e *env) quote(ctx context.Context, path string, m searchFlags, from fromFlags, o quoteOptions) error {
	paper, err := parsePaper(o.paper)
	if err == nil {
		err = m.check()
	}
	if err != nil {
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
	out := &files.Set{Force: m.force, Input: path}
	if o.output != "" {
		for _, path := range o.files() {
			if err := out.Check(path); err != nil {
				return err
			}
		}
	}
	prepared, err := app.PrepareQuote(work, o.offers, time.Now())
	if err != nil {
		return err
	}
	e.warnPaper(work, o.output != "")
	watch, done := e.watch(work)
	defer done()
	reckoned, err := prepared.Reckon(ctx, m.Search, watch)
	if err != nil {
		return err
	}
	done()
	e.noteEnded(reckoned.Ended)
	if o.output != "" {
		if err := o.write(out, reckoned, paper); err != nil {
			return err
		}
	}
	if e.json {
		return e.printJSON(report.QuoteOf(reckoned))
	}
	screen.Quote(e.screen, reckoned)
	return nil
}

// files that are written: the client's, and unless that goes straight to a printer or
// another program, the maker's.
func (o quoteOptions) files() []string {
	if files.IsStream(o.output) {
		return []string{o.output}
	}
	ending := filepath.Ext(o.output)
	return []string{o.output, strings.TrimSuffix(o.output, ending) + "-maker" + ending}
}

// write writes the PDFs. One that does not go onto its page is no fault of the program.
func (o quoteOptions) write(out *files.Set, reckoned quote.Quote, sheet paper.Paper) error {
	client := reckoned
	if !o.reckoning {
		client = reckoned.ForClient()
	}
	sheets := []func(io.Writer, paper.Paper) error{client.WritePDF, reckoned.WriteOwnPDF}
	var refused error
	for i, path := range o.files() {
		err := out.Add(path, func(w io.Writer) error {
			err := sheets[i](w, sheet)
			refused = errors.Join(refused, err)
			return err
		})
		if err != nil {
			return err
		}
	}
	err := out.Commit()
	if refused != nil && failure.Is(err) { // and not because the disk is full
		return fmt.Errorf("%s: %w", out.Input, refused)
	}
	return err
}
