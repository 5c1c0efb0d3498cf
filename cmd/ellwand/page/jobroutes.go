package page

import (
	"errors"
	"io/fs"
	"net/http"

	"ellwand/cmd/ellwand/page/desk"
	"ellwand/cmd/ellwand/page/folder"
	"ellwand/cmd/ellwand/page/view"
)

// withJob finds the job that a request is about.
func (s *server) withJob(do func(http.ResponseWriter, *http.Request, *opened)) http.HandlerFunc {
	return func(w http.ResponseWriter, r *http.Request) {
		one, err := s.now().jobs.named(r.PathValue("name"))
		switch {
		case errors.Is(err, fs.ErrNotExist), errors.Is(err, folder.ErrName):
			answerCoded(w, r, http.StatusNotFound, errNoJob)
		case err != nil:
			answerFault(w, r, err)
		default:
			do(w, r, one)
		}
	}
}

func showJob(w http.ResponseWriter, r *http.Request, o *opened) {
	o.look()
	answerJob(w, r, o, http.StatusOK, o.State())
}

func answerJob(w http.ResponseWriter, r *http.Request, o *opened, status int, state desk.State) {
	shown, err := view.Of(o.name, state, readerOf(r))
	if err != nil {
		answerFault(w, r, err)
		return
	}
	answer(w, status, shown)
}

// act does what a page asks, if it has seen the job as it is.
func act(w http.ResponseWriter, r *http.Request, o *opened) {
	var request struct {
		Base int           `json:"base"`
		Do   []desk.Action `json:"do"`
	}
	if err := asked(r, &request); err != nil {
		answerError(w, r, http.StatusBadRequest, sentence(err.Error()))
		return
	}
	actions, byHand, err := o.completed(request.Do)
	if err != nil {
		answerFault(w, r, err)
		return
	}
	state, err := o.Act(request.Base, actions)
	switch {
	case errors.Is(err, desk.ErrStale):
		answerJob(w, r, o, http.StatusConflict, state)
	case err != nil:
		answerFault(w, r, err)
	default:
		if state.Revision != request.Base {
			o.changed(state, byHand)
		}
		answerJob(w, r, o, http.StatusOK, state)
	}
}

func (s *server) jobEvents(w http.ResponseWriter, r *http.Request, o *opened) {
	s.stream(w, r, o.told, func() []event {
		return append([]event{eventOf("revision", map[string]int{"revision": o.State().Revision})}, o.tasks.now()...)
	})
}
