package page

import (
	"encoding/json"
	"errors"
	"html/template"
	"io"
	"net/http"
	"strings"
	"unicode"
	"unicode/utf8"

	"ellwand/cmd/ellwand/failure"
	"ellwand/pieces/language"
	piecewords "ellwand/pieces/words"
)

// refuse whoever may not come in.
func refuse(w http.ResponseWriter, r *http.Request, why string) {
	answerError(w, r, http.StatusForbidden, why)
}

// errorPage is the one page that says what went wrong.
var errorPage = template.Must(template.New("error").Parse(`<!doctype html>
<html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width">
<title>Ellwand</title></head>
<body><main><h1>That did not work</h1><p>{{.}}</p></main></body></html>
`))

// answerError says in plain words why something is not done: to a program as JSON.
func answerError(w http.ResponseWriter, r *http.Request, status int, why string) {
	answerCoded(w, r, status, refusal{text: why})
}

// answerCoded is answerError with the word by which the page knows what is refused.
func answerCoded(w http.ResponseWriter, r *http.Request, status int, why refusal) {
	answerRefused(w, r, status, why)
}

// answerRefused says why something is not done in the language of the reader.
func answerRefused(w http.ResponseWriter, r *http.Request, status int, why error) {
	if strings.HasPrefix(r.URL.Path, "/api/") {
		w.Header().Set("Content-Type", "application/json; charset=utf-8")
		w.WriteHeader(status)
		_ = json.NewEncoder(w).Encode(refusedOf(r, why)) // who asks may be gone
		return
	}
	w.Header().Set("Content-Type", "text/html; charset=utf-8")
	w.WriteHeader(status)
	_ = errorPage.Execute(w, sentence(why.Error()))
}

// refusedOf is what a page is told of what cannot be: a sentence in the language of its
// reader, and the word by which it has one of its own, if it has.
func refusedOf(r *http.Request, err error) refused {
	var known refusal
	errors.As(err, &known)
	said, reader := language.OfError(piecewords.Refused(err)), readerOf(r)
	return refused{Sentence: sentence(said.In(reader)), Code: known.code,
		English: reader != language.English && said.In(reader) == said.String()}
}

// refused says what cannot be.
type refused struct {
	Sentence string `json:"sentence"`
	Code     string `json:"code"`
	// English says that the sentence is in English, which its reader does not read.
	English bool `json:"english,omitempty"`
}

// answer with a value as JSON.
func answer(w http.ResponseWriter, status int, value any) {
	data, err := json.Marshal(value)
	if err != nil {
		http.Error(w, `{"sentence":"the answer could not be written"}`, http.StatusInternalServerError)
		return
	}
	w.Header().Set("Content-Type", "application/json; charset=utf-8")
	w.WriteHeader(status)
	_, _ = w.Write(data)
}

// answerFault says what is wrong: of the program, or of what it was given.
func answerFault(w http.ResponseWriter, r *http.Request, err error) {
	status := http.StatusUnprocessableEntity
	if failure.Is(err) {
		status = http.StatusInternalServerError
	}
	if answerNarrow(w, err) {
		return
	}
	var known refusal
	if errors.As(err, &known) {
		answerCoded(w, r, status, known)
		return
	}
	answerRefused(w, r, status, err)
}

// answerNarrow answers with what is too narrow; false where that is not what is wrong.
func answerNarrow(w http.ResponseWriter, err error) bool {
	var found tooNarrow
	if !errors.As(err, &found) {
		return false
	}
	answer(w, http.StatusUnprocessableEntity, found)
	return true
}

// sentence with a capital letter and a full stop.
func sentence(text string) string {
	if text == "" {
		return text
	}
	first, size := utf8.DecodeRuneInString(text)
	text = string(unicode.ToUpper(first)) + text[size:]
	if !strings.HasSuffix(text, ".") {
		text += "."
	}
	return text
}

// asked reads the JSON of a request; what is not known in it is refused.
func asked(r *http.Request, into any) error {
	decoder := json.NewDecoder(r.Body)
	decoder.DisallowUnknownFields()
	if err := decoder.Decode(into); err != nil {
		return errNotRead
	}
	if _, err := decoder.Token(); !errors.Is(err, io.EOF) {
		return language.Refuse("this request has something behind its end; load the page again",
			"hinter dem Ende der Anfrage steht noch etwas; laden Sie die Seite neu")
	}
	return nil
}
