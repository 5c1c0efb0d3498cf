package page

import (
	"bytes"
	"cmp"
	"errors"
	"net/http"
	"slices"

	"ellwand/cmd/ellwand/app"
	"ellwand/cmd/ellwand/words"
	"ellwand/pieces/drawing"
	"ellwand/pieces/found"
	"ellwand/pieces/language"
)

// drawnPiece is a piece that was found in a drawing, with what is to be asked about it.
type drawnPiece struct {
	Number  int      `json:"number"`
	Name    string   `json:"name"`
	Missing []string `json:"missing"`
	// Cut is how many are cut, and Pair whether half of them are mirrored, where nobody says
	// otherwise.
	Cut int `json:"cut"`
	// Hands says that a right one and a left one differ.
	Hands bool `json:"hands"`
	Pair  bool `json:"pair"`
	// Folds are the sides that may lie on the fold, the likeliest first, then "none"; Fold is
	// that which is taken where nobody says it. None of a piece whose file says its fold.
	Folds []string `json:"folds"`
	Fold  string   `json:"fold"`
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
	lacks, answers := map[int][]string{}, u.answers()
	_, _, err = all.Collection(answers, found.Options{})
	var missing *app.Unanswered
	var fault *app.FoundFault
	told := ""
	switch {
	case errors.As(err, &fault):
		told = words.FoundFault(fault, all.Unit.System()).In(readerOf(r))
	case errors.As(err, &missing):
		for _, lack := range missing.List {
			for _, question := range lack.Questions {
				lacks[lack.Number] = append(lacks[lack.Number], questionKeys[question])
			}
		}
		grant(missing, &answers)
	case err != nil:
		told = language.OfError(err).In(readerOf(r))
	}
	out := []drawnPiece{}
	for _, f := range all.Found {
		out = append(out, drawnPieceOf(f, answers, lacks[f.Number]))
	}
	answer(w, http.StatusOK, map[string]any{"pieces": out, "fault": told, "pictured": s.draws(all, answers)})
}

// drawnPieceOf what was found, with answers to what is missing.
func drawnPieceOf(f app.Found, answers app.Answers, missing []string) drawnPiece {
	said, _ := answers.Said(f) // an answer that is none was told of already
	out := drawnPiece{Number: f.Number, Name: f.Name, Missing: append([]string{}, missing...),
		Cut: cmp.Or(said.Cut, f.Count(), 1), Pair: f.IsPair(), Folds: []string{}, Optional: []string{}}
	out.Hands = f.Fault == nil && f.HasHands(said)
	out.Pair = out.Pair || out.Hands && !f.SaysHands()
	if f.Whole != nil {
		return out
	}
	if f.Mirror == nil {
		out.Folds, out.Fold = app.FoldAnswers(f), "none"
	}
	if slices.Contains(missing, questionKeys[found.AskFold]) {
		out.Fold = out.Folds[0]
	}
	for _, question := range f.Optional(found.Said{}) {
		out.Optional = append(out.Optional, questionKeys[question])
	}
	return out
}

// draws what was found, for the page to fetch; it reports whether there is something.
func (s *server) draws(all app.Imported, answers app.Answers) bool {
	page, err := all.Picture(answers, true)
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
