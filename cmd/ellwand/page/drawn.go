package page

import (
	"bytes"
	"errors"
	"net/http"

	"ellwand/cmd/ellwand/app"
	"ellwand/cmd/ellwand/words"
	"ellwand/pieces/drawing"
	"ellwand/pieces/found"
)

// drawnPiece is a piece that was found in a drawing, with what is to be asked about it.
type drawnPiece struct {
	Number  int      `json:"number"`
	Name    string   `json:"name"`
	Missing []string `json:"missing"`
	// Optional are the questions that have a usual answer.
	Optional []string `json:"optional"`
}

// questionKeys are the questions by the keys of their answers.
var questionKeys = map[found.Question]string{
	found.AskName: "name", found.AskCut: "cut", found.AskGrain: "grain", found.AskAllowance: "allowance",
	found.AskPair: "pair", found.AskFold: "fold", found.AskCloth: "cloth", found.AskSize: "size",
}

// lookThrough a file that is to be brought in: what pieces it has, and what it does not say.
// Nothing is written.
func (s *server) lookThrough(w http.ResponseWriter, r *http.Request) {
	var u upload
	if err := asked(r, &u); err != nil {
		answerError(w, r, http.StatusBadRequest, sentence(err.Error()))
		return
	}
	data, err := u.data()
	if err != nil {
		answerFault(w, r, err)
		return
	}
	all, err := u.read(u.base(), data)
	if err != nil {
		answerFault(w, r, err)
		return
	}
	lacks := map[int][]string{}
	_, _, err = all.Collection(u.answers(), found.Options{})
	var missing *app.Unanswered
	var fault *app.FoundFault
	told := ""
	switch {
	case errors.As(err, &fault):
		told = words.FoundFault(fault, all.Unit.System())
	case errors.As(err, &missing):
		for _, lack := range missing.List {
			for _, question := range lack.Questions {
				lacks[lack.Number] = append(lacks[lack.Number], questionKeys[question])
			}
		}
	case err != nil:
		told = err.Error()
	}
	out := []drawnPiece{}
	for _, f := range all.Found {
		one := drawnPiece{f.Number, f.Name, append([]string{}, lacks[f.Number]...), []string{}}
		if f.Whole == nil {
			for _, question := range f.Optional(found.Said{}) {
				one.Optional = append(one.Optional, questionKeys[question])
			}
		}
		out = append(out, one)
	}
	answer(w, http.StatusOK, map[string]any{"pieces": out, "fault": told, "pictured": s.draws(all)})
}

// draws what was found, for the page to fetch; it reports whether there is something.
func (s *server) draws(all app.Imported) bool {
	page, err := all.Picture()
	if err != nil {
		return false
	}
	var out bytes.Buffer
	if drawing.WriteSVG(&out, all.Title, page) != nil {
		return false
	}
	picture := out.Bytes()
	s.drawn.Store(&picture)
	return true
}

// drawingPicture is the one of the drawing that was looked at last.
func (s *server) drawingPicture(w http.ResponseWriter, r *http.Request) {
	picture := s.drawn.Load()
	if picture == nil {
		answerError(w, r, http.StatusNotFound, "There is no picture of this name.")
		return
	}
	w.Header().Set("Content-Type", "image/svg+xml")
	_, _ = w.Write(*picture) // who asked may be gone
}
