package page

import (
	"net/http"
	"time"

	"ellwand/cmd/ellwand/page/clients"
)

func (s *server) showClients(w http.ResponseWriter, r *http.Request) {
	all, err := clients.Read(s.now().folder)
	if err != nil {
		answerFault(w, r, err)
		return
	}
	answer(w, http.StatusOK, all)
}

// noteVisit notes what was measured; without a date it was today.
func (s *server) noteVisit(w http.ResponseWriter, r *http.Request) {
	var noted struct {
		Name  string            `json:"name"`
		Units string            `json:"units"`
		Date  string            `json:"date"`
		Body  map[string]string `json:"body"`
	}
	if err := asked(r, &noted); err != nil {
		answerError(w, r, http.StatusBadRequest, sentence(err.Error()))
		return
	}
	if noted.Date == "" {
		noted.Date = time.Now().Format(time.DateOnly)
	}
	visit := clients.Visit{Date: noted.Date, Body: noted.Body}
	if err := clients.Note(s.now().folder, noted.Name, noted.Units, visit); err != nil {
		answerFault(w, r, err)
		return
	}
	s.showClients(w, r)
}
