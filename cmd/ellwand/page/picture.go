package page

import (
	"bytes"
	"io"
	"net/http"
	"strings"

	"ellwand/cmd/ellwand/page/illustration"
)

// pictured answers with a picture that is drawn by its name.
func pictured(draw func(io.Writer, string) error) http.HandlerFunc {
	return func(w http.ResponseWriter, r *http.Request) {
		name, _ := strings.CutSuffix(r.PathValue("name"), ".svg")
		var out bytes.Buffer
		if err := draw(&out, name); err != nil {
			answerError(w, r, http.StatusNotFound, "There is no picture of this name.")
			return
		}
		w.Header().Set("Content-Type", "image/svg+xml")
		_, _ = w.Write(out.Bytes())
	}
}

// optionPictured answers with the picture of a choice of an option.
func optionPictured(w http.ResponseWriter, r *http.Request) {
	pictured(func(out io.Writer, choice string) error {
		return illustration.Option(out, r.PathValue("option"), choice)
	})(w, r)
}
