package page

import (
	"net/http"
	"time"

	"ellwand/cmd/ellwand/app"
	"ellwand/cmd/ellwand/failure"
	"ellwand/cmd/ellwand/job"
	"ellwand/cmd/ellwand/report"
	"ellwand/cmd/ellwand/words"
)

// reckoning is a use case whose document is shown.
type reckoning func(*http.Request, *job.Work, app.Search) (any, error)

// reported answers with a document of the commands about a job as it stands.
func reported(of reckoning) func(http.ResponseWriter, *http.Request, *opened) {
	return func(w http.ResponseWriter, r *http.Request, o *opened) {
		work := o.State().Work
		if work == nil {
			answerFault(w, r, errFaulty)
			return
		}
		document, err := of(r, work, o.tasks.usual)
		if err != nil {
			answerFault(w, r, plainIn(work, err))
			return
		}
		answer(w, http.StatusOK, document)
	}
}

// tableOf amounts: what to buy of each cloth in each width.
func tableOf(r *http.Request, work *job.Work, search app.Search) (any, error) {
	cloths, err := app.Cloths(work, nil)
	if err != nil {
		return nil, err
	}
	found, err := app.Estimate(r.Context(), work, cloths, search, app.Watch{})
	if err != nil {
		return nil, err
	}
	return report.EstimateOf(work, found), failure.Of(words.Proven(work, found))
}

// comparisonOf the offers of every cloth that has a price.
func comparisonOf(r *http.Request, work *job.Work, search app.Search) (any, error) {
	priced, err := app.Priced(work, "")
	if err != nil {
		return nil, err
	}
	ranked, err := app.Compare(r.Context(), work, priced, search, app.Watch{})
	if err != nil {
		return nil, err
	}
	return report.ComparisonOf(work, ranked), nil
}

// quoteOf a job, as the client is handed it.
func quoteOf(r *http.Request, work *job.Work, search app.Search) (any, error) {
	prepared, err := app.PrepareQuote(work, nil, time.Now())
	if err != nil {
		return nil, err
	}
	reckoned, err := prepared.Reckon(r.Context(), search, app.Watch{})
	if err != nil {
		return nil, err
	}
	return report.QuoteOf(reckoned.ForClient()), nil
}
