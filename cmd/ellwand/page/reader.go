package page

import (
	"io/fs"
	"net/http"

	tags "golang.org/x/text/language"

	"ellwand/cmd/ellwand/page/site"
	"ellwand/pieces/language"
)

// languageOf a reader: that of the cookie, or the first of the browser's that the page has
// words in.
func languageOf(r *http.Request) string {
	if cookie, err := r.Cookie("language"); err == nil && hasWords(cookie.Value) {
		return cookie.Value
	}
	tags, _, err := tags.ParseAcceptLanguage(r.Header.Get("Accept-Language"))
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

// readerOf a request is the language that its reader reads.
func readerOf(r *http.Request) language.Language { return language.Of(languageOf(r)) }

func hasWords(name string) bool {
	_, err := fs.Stat(site.Files(), "words/"+name+".json")
	return err == nil
}
