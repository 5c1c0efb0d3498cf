package page

import (
	"bytes"
	"io/fs"
	"net/http"

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
