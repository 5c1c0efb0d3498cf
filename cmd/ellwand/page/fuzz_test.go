package page

import (
	"net/url"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"unicode/utf8"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/testdata/sample"
)

// requests that a page sends, each with a body or a query that is good. To open another
// folder is left out: a guessed one would be a folder of this machine.
var requests = []struct{ method, path, good string }{
	{"POST", "/api/jobs/blouse.yaml/act", `{"base":1,"do":[{"set":{"path":["garments",0,"pieces",0,"width"],"value":"9,` +
		`5"}}]}`},
	{"POST", "/api/jobs/blouse.yaml/act", `{"base":1,"do":[{"unset":{"path":["currency"]}},{"undo":{}}]}`},
	{"POST", "/api/jobs/blouse.yaml/act", `{"base":1,"do":[{"text":"job: a\nunits: cm\n"}]}`},
	{"POST", "/api/jobs/blouse.yaml/lay", `{"cloth":"shell","width":"1400mm","lay":"open","effort":"quick"}`},
	{"POST", "/api/jobs/blouse.yaml/look", `{"cloth":"shell","width":"1400mm","lay":"open","piece":"1","at":[400,700],` +
		`"slide":false}`},
	{"POST", "/api/jobs/blouse.yaml/stop", `{"cloth":"shell","width":"1400mm","lay":"open"}`},
	{"POST", "/api/jobs/blouse.yaml/remnant", `{"cloth":"shell","width":"140cm","length":"60cm"}`},
	{"POST", "/api/here", "{}"},
	{"POST", "/api/jobs", `{"from":"person","title":"skirt","units":"cm"}`},
	{"POST", "/api/drawing", `{"name":"a.svg","text":"<svg/>"}`},
	{"POST", "/api/question", `{"garment":"skirt","units":"cm","table":"women","size":"12","width":"140"}`},
	{"POST", "/api/clients", `{"name":"Ona","date":"2026-01-02","body":{"bust_girth":"96"}}`},
	{"GET", "/api/jobs/blouse.yaml/layout", "cloth=shell&width=1400mm&lay=open"},
	{"GET", "/print/blouse.yaml/plan", "cloth=shell&width=1400mm&lay=open"},
	{"GET", "/print/blouse.yaml/pieces", "paper=a4"},
	{"GET", "/api/size", "table=women&size=12"},
	{"GET", "/picture/garment/blouse", ""},
}

// bag is laid at once: an input is given up after seconds.
const bag = "job: bag\nunits: cm\ncurrency: EUR\ngarments:\n  - name: bag\n    pieces: [{name: side, width: 9, " +
	"height: 9}]\ncloths:\n  - {name: shell, width: 140, price: 9}\n"

// Whatever the page is sent, it is answered with what was asked for or with a sentence,
// and never by a fault of the program.
func FuzzRequests(f *testing.F) {
	sample.MinimizeBriefly()
	for i, one := range requests {
		f.Add(uint8(i), one.good)
	}
	// One folder for all that is kept: a search that was begun may keep what it has found
	// when its page is closed already.
	kept, err := os.MkdirTemp("", "kept-*")
	require.NoError(f, err)
	f.Cleanup(func() { _ = os.RemoveAll(kept) })
	f.Fuzz(func(t *testing.T, which uint8, text string) {
		one := requests[int(which)%len(requests)]
		v := newVisit(t)
		t.Setenv("XDG_CACHE_HOME", kept)
		require.NoError(t, os.WriteFile(filepath.Join(v.folder, "blouse.yaml"), []byte(bag), 0o600))
		v.enter()
		path, body := one.path, text
		if one.method == "GET" {
			path, body = path+"?"+url.PathEscape(text), ""
		}
		status, answer := v.ask(one.method, path, body)
		assert.Less(t, status, 500, "%s %s: %s", one.method, path, answer)
		if status < 400 {
			return
		}
		assert.True(t, utf8.ValidString(answer))
		for _, word := range []string{"strconv", "unmarshal", "goroutine", "%!", "<nil>"} {
			assert.NotContains(t, strings.ReplaceAll(answer, text, ""), word)
		}
	})
}
