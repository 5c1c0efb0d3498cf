package main

import (
	"context"
	"fmt"
	"io"
	"slices"
	"strings"
	"time"

	"github.com/spf13/cobra"

	"ellwand/cmd/ellwand/files"
	"ellwand/cmd/ellwand/job"
	"ellwand/fabric/quote"
	"ellwand/pieces"
)

// quoteOptions are the options of the quote command alone.
type quoteOptions struct {
	output string
	paper  string
	offers []string
}

func newQuote(e *env) *cobra.Command {
	var b budget
	var q quoteOptions
	cmd := &cobra.Command{
		Use:   "quote JOB",
		Short: "Reckon what a job costs, and write the quote for the client",
		Long: `Quote lays the pieces of all garments of a job together on each of its cloths,
takes the cheapest offer of each, and adds notions, making, margin and tax. With
-o it writes the quote as a one-page PDF that a client can be handed.

README, "Quotes", says what a job needs for it.`,
		Example: "  ellwand quote dress.yaml -o quote.pdf\n  ellwand quote dress.yaml --offer Crepe --paper letter -o quote.pdf",
		Args:    one("a job file"),
		RunE: func(cmd *cobra.Command, args []string) error {
			return e.quote(cmd.Context(), args[0], b, q)
		},
	}
	b.register(cmd)
	flags := cmd.Flags()
	flags.StringVarP(&q.output, "output", "o", "", "the PDF to write")
	flags.StringVar(&q.paper, "paper", "a4", "a4 or letter")
	flags.StringSliceVar(&q.offers, "offer", nil, "offers to take, by name, in place of the cheapest")
	return cmd
}

func (e *env) quote(ctx context.Context, path string, b budget, o quoteOptions) error {
	paper, err := parsePaper(o.paper)
	if err != nil {
		return err
	}
	work, err := readJob(path)
	if err != nil {
		return err
	}
	files := &files.Set{Force: b.force, Input: path}
	if o.output != "" {
		if err := files.Check(o.output); err != nil {
			return err
		}
	}
	cloths, err := quotedCloths(work, o.offers)
	if err != nil {
		return err
	}
	request := requestOf(work)
	// What is wrong with the rest is said before the search.
	if _, err := quote.Of(request); err != nil {
		return fmt.Errorf("%s: %w", path, err)
	}
	e.warn(work)
	if o.output != "" {
		e.warnLetters(work)
	}
	if request.Cloths, err = e.clothRequests(ctx, work, cloths, b); err != nil {
		return err
	}
	reckoned, err := quote.Of(request)
	if err != nil {
		return fmt.Errorf("%s: %w", path, err)
	}
	if o.output != "" {
		var refused error
		err := files.Add(o.output, func(w io.Writer) error {
			refused = reckoned.WritePDF(w, paper)
			return refused
		})
		if err == nil {
			err = files.Commit()
		}
		if refused != nil {
			return fmt.Errorf("%s: %w", path, refused)
		}
		if err != nil {
			return err
		}
	}
	if e.json {
		return e.printJSON(quoteReportOf(reckoned))
	}
	e.printQuote(reckoned)
	return nil
}

// quotedCloths gives every cloth of a job with the offers to choose from. Each
// needs a price.
func quotedCloths(work *job.Work, wanted []string) ([]job.Offer, error) {
	var out []job.Offer
	used := map[string]bool{}
	var names []string
	for _, cloth := range work.Cloths {
		if len(cloth.Offers) == 0 {
			return nil, fmt.Errorf("%s: cloth %q has no price; add currency: at the top level, and to the cloth a price such as: price: 18.50", work.File, cloth.Cloth.Name)
		}
		var chosen []quote.Offer
		for _, offer := range cloth.Offers {
			names = append(names, offer.Name)
			if named(wanted, offer.Name) {
				used[strings.ToLower(offer.Name)] = true
				chosen = append(chosen, offer)
			}
		}
		if len(chosen) > 0 {
			cloth.Offers = chosen
		}
		out = append(out, cloth)
	}
	for _, name := range wanted {
		if !used[strings.ToLower(name)] {
			return nil, fmt.Errorf("--offer %q: the job has no such offer; it has: %s", name, strings.Join(names, "; "))
		}
	}
	return out, nil
}

func named(list []string, name string) bool {
	return slices.ContainsFunc(list, func(other string) bool { return strings.EqualFold(other, name) })
}

// requestOf is all of a quote but its cloths.
func requestOf(work *job.Work) quote.Request {
	out := work.Quote
	out.Job, out.Client, out.Currency, out.Units = work.Name, work.Client, work.Currency, unitsOf(work)
	if out.Date.IsZero() {
		out.Date = time.Now().Truncate(24 * time.Hour)
	}
	if work.ValidDays > 0 {
		out.ValidUntil = out.Date.AddDate(0, 0, work.ValidDays)
	}
	for _, made := range work.Garments {
		out.Garments = append(out.Garments, quote.Garment{Name: made.Kind, Wearer: made.Wearer, Quantity: made.Quantity, Pieces: made.Pieces})
	}
	return out
}

// clothRequests takes the cheapest offer of each cloth.
func (e *env) clothRequests(ctx context.Context, work *job.Work, cloths []job.Offer, b budget) ([]quote.ClothRequest, error) {
	ranked, err := e.rank(ctx, work, cloths, b)
	if err != nil {
		return nil, err
	}
	var out []quote.ClothRequest
	for i, cloth := range cloths {
		out = append(out, quote.ClothRequest{Cloth: cloth.Cloth.Name, Option: ranked[i][0]})
	}
	return out, nil
}

// singles are the pieces of each garment that is cut from a cloth, by itself;
// none when there is only one garment.
func singles(work *job.Work, cloth string) [][]pieces.Piece {
	var out [][]pieces.Piece
	for _, made := range work.Garments {
		var single []pieces.Piece
		for _, piece := range made.Pieces {
			if piece.Cloth == cloth {
				// Equal garments are one problem, whatever their number.
				piece.Garment = ""
				single = append(single, piece)
			}
		}
		for range made.Quantity {
			if len(single) > 0 {
				out = append(out, single)
			}
		}
	}
	if len(out) < 2 {
		return nil
	}
	return out
}
