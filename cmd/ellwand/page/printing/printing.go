// Package printing makes what the page prints: the same papers that the commands write,
// with what they take where nothing else is asked for.
package printing

import (
	"context"
	"errors"
	"io"
	"time"

	"ellwand/cmd/ellwand/app"
	"ellwand/cmd/ellwand/job"
	"ellwand/pieces/drawing"
	"ellwand/pieces/projector"
)

// ErrUnknown is returned for a kind of paper that there is not.
var ErrUnknown = errors.New("nothing of this name can be printed")

// kinds of papers, by the word in their address.
var kinds = map[string]func(context.Context, *job.Work, Asked) (func(io.Writer) error, error){
	"plan": plan, "marker": marker, "draft": draft, "quote": quote,
}

// inSizes are kinds that show the job in several sizes.
var inSizes = map[string]func(context.Context, app.Drafted, Asked) (func(io.Writer) error, error){
	"pieces": pieces, "projector": projected,
}

// Prepare a kind of paper: plan, marker, draft, quote, or pieces and projector, which alone
// show more than the first size. What it returns writes the PDF. The error is ErrUnknown,
// or says what is wrong with the job or with what is asked.
func Prepare(ctx context.Context, kind string, drafted app.Drafted, asked Asked) (func(io.Writer) error, error) {
	if prepare, known := kinds[kind]; known {
		return prepare(ctx, drafted.First(), asked)
	}
	prepare, known := inSizes[kind]
	if !known {
		return nil, ErrUnknown
	}
	chosen, err := drafted.Only(asked.Choice)
	if err != nil {
		return nil, err
	}
	return prepare(ctx, chosen, asked)
}

func draft(_ context.Context, work *job.Work, asked Asked) (func(io.Writer) error, error) {
	sheet := app.DraftSheet{Drafted: app.Drafted{Works: []*job.Work{work}}}
	return func(w io.Writer) error { return sheet.WritePDF(w, asked.small()) }, nil
}

func pieces(ctx context.Context, drafted app.Drafted, asked Asked) (func(io.Writer) error, error) {
	sheets, called, err := asked.sheets(drafted.First())
	if err != nil {
		return nil, err
	}
	printing, err := app.PreparePrinting(drafted, asked.Seams, sheets, called)
	if err != nil {
		return nil, err
	}
	printed, err := printing.Pack(ctx, asked.Search)
	return func(w io.Writer) error { return drawing.WriteLayeredPDF(w, printed.Title, printed.Pages) }, err
}

// projected pieces, to be thrown onto the cloth from above.
func projected(_ context.Context, drafted app.Drafted, asked Asked) (func(io.Writer) error, error) {
	all := drafted.Collection()
	page, err := all.Projected(projector.Usual(all.Inches()))
	if err != nil {
		return nil, err
	}
	if max(page.Width, page.Height) > drawing.LongestPage {
		return nil, errors.New("the pieces side by side are longer than a page can be; choose fewer of them")
	}
	return func(w io.Writer) error { return drawing.WriteLayeredPDF(w, all.Title, []drawing.Page{page}) }, nil
}

// quote for the client; the maker's own figures stay off it.
func quote(ctx context.Context, work *job.Work, asked Asked) (func(io.Writer) error, error) {
	prepared, err := app.PrepareQuote(work, nil, time.Now())
	if err != nil {
		return nil, err
	}
	reckoned, err := prepared.Reckon(ctx, asked.Search, app.Watch{})
	if err != nil {
		return nil, err
	}
	return func(w io.Writer) error { return reckoned.ForClient().WritePDF(w, asked.small()) }, nil
}
