package page

import (
	"bytes"
	"io/fs"
	"net/http"

	"golang.org/x/text/language"

	"ellwand/cmd/ellwand/page/site"
)

// siteRoutes are the files of the page.
func (s *server) siteRoutes(mux *http.ServeMux) {
	mux.HandleFunc("GET /{$}", s.index)
	files := http.FileServerFS(site.Files())
	mux.Handle("GET /site/", http.StripPrefix("/site/", files))
}

func (s *server) index(w http.ResponseWriter, r *http.Request) {
	text, err := fs.ReadFile(site.Files(), "index.html")
	if err != nil {
		http.Error(w, "the page is missing", http.StatusInternalServerError)
		return
	}
	w.Header().Set("Content-Type", "text/html; charset=utf-8")
	text = bytes.ReplaceAll(text, []byte("{{token}}"), []byte(s.door.token))
	text = bytes.ReplaceAll(text, []byte("{{language}}"), []byte(languageOf(r)))
	_, _ = w.Write(text)
}

// languageOf a reader: that of the cookie, or the first of the browser's that the page has
// words in.
func languageOf(r *http.Request) string {
	if cookie, err := r.Cookie("language"); err == nil && hasWords(cookie.Value) {
		return cookie.Value
	}
	tags, _, err := language.ParseAcceptLanguage(r.Header.Get("Accept-Language"))
	if err != nil {
		return "en"
	}
	for _, tag := range tags {
		if base, _ := tag.Base(); hasWords(base.String()) {
			return base.String()
		}
	}
	return "en"
}

func hasWords(name string) bool {
	_, err := fs.Stat(site.Files(), "words/"+name+".json")
	return err == nil
}
