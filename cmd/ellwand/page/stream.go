package page

import (
	"fmt"
	"net/http"

	"ellwand/pieces/language"
)

// stream tells one page until it leaves; first what it has to know at the beginning.
func (s *server) stream(w http.ResponseWriter, r *http.Request, t *teller, first func() []event) {
	defer s.tabs.enter()()
	listener := t.listen()
	defer t.leave(listener)
	w.Header().Set("Content-Type", "text/event-stream")
	w.WriteHeader(http.StatusOK)
	control := http.NewResponseController(w)
	for _, e := range first() {
		if !send(w, e, readerOf(r)) {
			return
		}
	}
	for control.Flush() == nil {
		select {
		case <-r.Context().Done():
			return
		case e, open := <-listener:
			if !open || !send(w, e, readerOf(r)) {
				return
			}
		}
	}
}

func send(w http.ResponseWriter, e event, reader language.Language) bool {
	_, err := fmt.Fprintf(w, "event: %s\ndata: %s\n\n", e.name, e.data(reader))
	return err == nil
}
