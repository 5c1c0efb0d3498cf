package page

import (
	"context"
	"errors"
	"net/http"
	"net/url"
	"strconv"
	"time"

	"ellwand/cmd/ellwand/app"
	"ellwand/cmd/ellwand/job"
	"ellwand/cmd/ellwand/limit"
	"ellwand/cmd/ellwand/report"
	"ellwand/pieces/language"
)

// tableQuestion is a table of requirements that a page asks for.
type tableQuestion struct {
	// sizes of the job's table; none for the job as it stands.
	sizes []string
	// widths of every cloth, mm; none for those of the job.
	widths []float64
	// word by which the page stops its search.
	word string
}

// tableQuestionIn an address.
func tableQuestionIn(values url.Values) (tableQuestion, error) {
	q := tableQuestion{sizes: values["size"], word: values.Get("word")}
	for _, text := range values["width"] {
		width, err := strconv.ParseFloat(text, 64)
		if most := float64(limit.ClothWidth.Most()); err != nil || !(width > 0 && width <= most) { // nor what is no number
			return q, errNoWidth
		}
		q.widths = append(q.widths, width)
	}
	return q, errors.Join(limit.Sizes.Check(language.Say("this table", "diese Tabelle"), len(q.sizes)),
		limit.Widths.Check(language.Say("this table", "diese Tabelle"), len(q.widths)))
}

// streamTable lays every size on every width, as estimate --table does, and tells how far it
// is, until it is done, stopped, or nobody listens any more.
func (s *server) streamTable(w http.ResponseWriter, r *http.Request, o *opened) {
	q, err := tableQuestionIn(r.URL.Query())
	if err != nil {
		answerFault(w, r, err)
		return
	}
	w.Header().Set("Content-Type", "text/event-stream")
	w.WriteHeader(http.StatusOK)
	tell := func(e event) {
		if send(w, e, readerOf(r)) {
			_ = http.NewResponseController(w).Flush() // who listened may be gone
		}
	}
	ctx, end := o.stops.begin(r.Context(), q.word)
	defer end()
	tell(eventOf("begun", struct{}{}))
	table, err := o.sizesTable(ctx, s.now().folder.PathOf(o.name), q, app.Watch{
		Counted: func(over, all int, _ time.Duration) { tell(eventOf("counted", counted{over, all})) },
	}, readerOf(r))
	var ended *job.Ended
	switch {
	case r.Context().Err() != nil:
	case errors.As(err, &ended):
		tell(eventOf("refused", refusedOf(r, errStopped)))
	case err != nil:
		tell(eventOf("refused", refusedOf(r, plainIn(o.State().Work, err))))
	default:
		tell(eventOf("table", table))
	}
}

// counted says how many of the searches of a table are over.
type counted struct {
	Over int `json:"over"`
	All  int `json:"all"`
}

func (o *opened) sizesTable(ctx context.Context, path string, q tableQuestion, watch app.Watch,
	reader language.Language) (report.Table, error) {
	state := o.State()
	if state.Work == nil {
		return report.Table{}, errFaulty
	}
	file, err := job.Parse(path, []byte(state.Text))
	if err != nil {
		return report.Table{}, err
	}
	rows, err := app.TableRowsOf(file.Within(ctx), q.sizes)
	if err != nil {
		return report.Table{}, err
	}
	asked, err := app.TableOf(rows, q.widths)
	if err != nil {
		return report.Table{}, err
	}
	table, err := asked.Reckon(ctx, o.tasks.usual, watch)
	if err != nil {
		return report.Table{}, err
	}
	return report.TableIn(table, reader), nil
}

// stopTable ends the search of a table; what it has found by then is shown.
func stopTable(w http.ResponseWriter, r *http.Request, o *opened) {
	var request struct {
		Word string `json:"word"`
	}
	if err := asked(r, &request); err != nil {
		answerError(w, r, http.StatusBadRequest, sentence(err.Error()))
		return
	}
	o.stops.end(request.Word)
	answer(w, http.StatusAccepted, struct{}{})
}
