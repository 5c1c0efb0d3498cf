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
)

// ErrUnknown is returned for a kind of paper that there is not.
var ErrUnknown = errors.New("nothing of this name can be printed")

// kinds of papers, by the word in their address.
var kinds = map[string]func(context.Context, *job.Work, Asked) (func(io.Writer) error, error){
	"plan": plan, "marker": marker, "draft": draft, "pieces": pieces, "quote": quote,
}

// Prepare a kind of paper: plan, marker, draft, pieces, quote. What it returns writes the
// PDF. The error is ErrUnknown, or says what is wrong with the job or with what is asked.
func Prepare(ctx context.Context, kind string, work *job.Work, asked Asked) (func(io.Writer) error, error) {
	prepare, known := kinds[kind]
	if !known {
		return nil, ErrUnknown
	}
	return prepare(ctx, work, asked)
}

func draft(_ context.Context, work *job.Work, asked Asked) (func(io.Writer) error, error) {
	sheet := app.DraftSheet{Drafted: app.Drafted{Works: []*job.Work{work}}}
	return func(w io.Writer) error { return sheet.WritePDF(w, asked.small()) }, nil
}

func pieces(ctx context.Context, work *job.Work, asked Asked) (func(io.Writer) error, error) {
	sheets, called, err := asked.sheets(work)
	if err != nil {
		return nil, err
	}
	printing, err := app.PreparePrinting(app.Drafted{Works: []*job.Work{work}}, "", sheets, called)
	if err != nil {
		return nil, err
	}
	printed, err := printing.Pack(ctx, asked.Search)
	return func(w io.Writer) error { return drawing.WriteLayeredPDF(w, printed.Title, printed.Pages) }, err
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
