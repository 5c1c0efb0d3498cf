package page

import (
	"bytes"
	"errors"
	"io"
	"net/http"

	"ellwand/cmd/ellwand/app"
	"ellwand/cmd/ellwand/job"
	"ellwand/cmd/ellwand/limit"
	"ellwand/cmd/ellwand/page/printing"
	"ellwand/pieces/language"
)

// printed answers with a paper of a job as PDF.
func printed(w http.ResponseWriter, r *http.Request, o *opened) {
	work := o.State().Work
	if work == nil {
		answerFault(w, r, errFaulty)
		return
	}
	if len(o.State().Typed) > 0 {
		answerFault(w, r, errHalfTyped)
		return
	}
	var out bytes.Buffer
	err := o.print(r, work, &out)
	switch {
	case errors.Is(err, printing.ErrUnknown):
		answerError(w, r, http.StatusNotFound, sentence(err.Error()))
	case err != nil:
		answerFault(w, r, plainIn(work, err))
	default:
		w.Header().Set("Content-Type", "application/pdf")
		_, _ = w.Write(out.Bytes()) // who asked may be gone
	}
}

// print what a request asks for.
func (o *opened) print(r *http.Request, work *job.Work, out io.Writer) error {
	query := r.URL.Query()
	asked := printing.Asked{
		Paper: query.Get("paper"), Cloth: query.Get("cloth"), Width: query.Get("width"), Lay: query.Get("lay"),
		Choice: app.Choice{Pieces: query["piece"], Cloths: query["of"]}, Seams: query.Get("seams"), Search: o.tasks.usual,
	}
	drafted, err := o.inSizes(work, query["size"])
	if err != nil {
		return err
	}
	write, err := printing.Prepare(r.Context(), r.PathValue("kind"), drafted, asked)
	if err != nil {
		return err
	}
	return write(out)
}

// inSizes is the job as it stands drafted in sizes; without any, as it is.
func (o *opened) inSizes(work *job.Work, sizes []string) (app.Drafted, error) {
	if len(sizes) == 0 {
		return app.Drafted{Works: []*job.Work{work}}, nil
	}
	if err := limit.Sizes.Check(language.Say("the choice of sizes", "die Auswahl der Größen"),
		len(sizes)); err != nil {
		return app.Drafted{}, err
	}
	file, err := job.Parse(work.File, []byte(o.State().Text))
	if err != nil {
		return app.Drafted{}, err
	}
	return app.DraftSizes(file, work.File, sizes)
}
