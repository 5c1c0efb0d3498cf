package svgin

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/pieces/found"
	"ellwand/pieces/words"
	"ellwand/testdata/sample"
)

func TestRefuses(t *testing.T) {
	for text, want := range map[string]string{
		``:                                       "there is no drawing in it",
		`hello`:                                  "there is no drawing in it",
		`<html/>`:                                "it begins with <html>",
		`<svg><path d="M0 0h9`:                   "line 1: it is no complete SVG drawing",
		`<!DOCTYPE svg [<!ENTITY a "b">]><svg/>`: "line 1: it defines entities",
		"<svg>\n<text>&lol;</text></svg>":        "line 2: it has an entity",
		`<?xml version="1.0" encoding="UTF-16"?><svg/>`:                           "save it as UTF-8",
		inside(`<use href="#a"/>`):                                                `it uses "#a", which is not there`,
		inside(`<use href="other.svg#a"/>`):                                       "of another file",
		inside(`<g id="a"><use href="#a"/></g>`):                                  "shows itself over and over",
		inside(`<g id="a"><use href="#b"/></g><g id="b"><use href="#a"/></g>`):    "shows itself over and over",
		inside(`<g id="a"><g><use xlink:href="#a"/></g></g>`):                     "shows itself over and over",
		inside(`<g transform="scale(0)"><path d="M0 0h9"/></g>`):                  "is scaled to nothing",
		inside(`<g transform="scale(1e300) scale(1e300)"><path d="M0 0h9"/></g>`): "is scaled to nothing, or to no size",
		inside(`<g transform="turn(9)"><path d="M0 0h9"/></g>`):                   `transform "turn(9)" cannot be read`,
		inside(`<g transform="matrix(1 0 0 1)"><path d="M0 0h9"/></g>`):           `"matrix(1 0 0 1)" cannot be read`,
		inside(`<g transform="scale(1 0 0 1 0 0)"><path d="M0 0h9"/></g>`):        "cannot be read",
		inside(`<g transform="scale(NaN)"/>`):                                     "a number is missing",
		inside(`<path d="M0 0h1e9"/>`):                                            "reaches farther than 1 km",
		inside(`<path d="M0 0h1e999"/>`):                                          "is too large",
		inside(`<path d="M0 0 L 5"/>`):                                            "a number is missing",
		inside(`<path d="L0 0"/>`):                                                "a path begins with M",
		inside(`<path d="M0 0 X 5 5"/>`):                                          `"X 5 5" is no command`,
		inside(`<path d="M0 0A1 1 0 2 0 5 5"/>`):                                  "0 or 1 is missing",
		inside(`<polygon points="1 2 3"/>`):                                       "a number is missing, each point has two",
		inside(`<rect width="wide" height="1"/>`):                                 "width: a number is missing",
		inside(`<rect width="5furlong" height="1"/>`):                             "is no length",
		`<svg width="-5mm" height="5mm"/>`:                                        "width is negative",
		`<svg viewBox="0 0 0 5"/>`:                                                "viewBox",
		inside(strings.Repeat("<g>", 200) + strings.Repeat("</g>", 200)):          "there are too many levels",
	} {
		_, err := Lines([]byte(text), options)
		assert.ErrorContains(t, words.Refused(err), want, "%.80s", text)
	}
}

// A drawing that shows a thousand times what shows a thousand things is refused by
// counting, not by the clock.
func TestRefusesWhatGrows(t *testing.T) {
	text := `<g id="a0"><path d="M0 0h1"/></g>`
	for _, pair := range []string{"a0 a1", "a1 a2", "a2 a3", "a3 a4", "a4 a5", "a5 a6", "a6 a7"} {
		from, to, _ := strings.Cut(pair, " ")
		text += `<g id="` + to + `">` + strings.Repeat(`<use href="#`+from+`"/>`, 10) + "</g>"
	}
	_, err := Lines([]byte(inside(text)), options)
	assert.ErrorContains(t, err, "there are too many drawn things")
	_, err = Lines([]byte(inside(`<path d="M0 0`+strings.Repeat("h1h-1", options.Limits[found.Vertices])+`"/>`)), options)
	assert.ErrorContains(t, err, "there are too many points")
}

func FuzzLines(f *testing.F) {
	sample.MinimizeBriefly()
	for _, name := range []string{"cairo.svg", "inkscape.svg"} {
		text, err := os.ReadFile(filepath.Join("testdata", name))
		require.NoError(f, err)
		f.Add(string(text))
	}
	for _, text := range []string{
		inside(`<path d="M0 0a5 5 0 0 1 9 9q1 1 2 2t3 3s4 4 5 5z"/>`), inside(`<use href="#a"/><g id="a"/>`),
		inside(`<style>.a{stroke:red}</style><text class="a">b</text>`), `<svg width="5%"/>`,
		inside(`<g transform="rotate(5 5 5)"/>`),
	} {
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, text string) {
		found, err := Lines([]byte(text), options)
		if err != nil {
			assert.NotContains(t, err.Error(), "strconv")
			return
		}
		for _, line := range found.Lines {
			require.NotEmpty(t, line.Path)
			require.Less(t, line.Group, len(found.Groups))
		}
	})
}
