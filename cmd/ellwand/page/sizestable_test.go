package page

import (
	"bufio"
	"context"
	"encoding/json"
	"net/http"
	"net/http/httptest"
	"net/url"
	"os"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/cmd/ellwand/app"
	"ellwand/cmd/ellwand/limit"
	"ellwand/cmd/ellwand/report"
)

// sized is a job that is drafted from a table of sizes.
const sized = "job: Sizes\nunits: cm\nsize: 12\ntable: women\ngarments:\n  - name: skirt\n" +
	"    skirt: {shape: straight}\ncloths:\n  - name: shell\n    width: 140\n"

// told is an event of a stream.
type told struct{ name, data string }

// follow the stream of an address; each event is given to do, until the stream ends.
func (v *visit) follow(ctx context.Context, address string, do func(told)) {
	v.t.Helper()
	request, err := http.NewRequestWithContext(ctx, http.MethodGet, v.web.URL+address, nil)
	require.NoError(v.t, err)
	answer, err := v.browser.Do(request)
	require.NoError(v.t, err)
	defer answer.Body.Close()
	require.Equal(v.t, http.StatusOK, answer.StatusCode)
	lines := bufio.NewScanner(answer.Body)
	lines.Buffer(nil, 8<<20)
	var name string
	for lines.Scan() {
		if after, is := strings.CutPrefix(lines.Text(), "event: "); is {
			name = after
		}
		if data, is := strings.CutPrefix(lines.Text(), "data: "); is {
			do(told{name, data})
		}
	}
}

func sizedVisit(t *testing.T) *visit {
	t.Helper()
	v := newVisit(t).enter()
	require.NoError(t, os.WriteFile(filepath.Join(v.folder, "sized.yaml"), []byte(sized), 0o600))
	return v
}

// The table is the one that the command gives, and tells how far it is.
func TestTableOfSizesAndWidths(t *testing.T) {
	v := sizedVisit(t)
	assert.Contains(t, v.told("GET", "/api/jobs/sized.yaml", "")["sizes"], "12")
	var names []string
	var table report.Table
	v.follow(t.Context(), "/api/jobs/sized.yaml/sizes?word=one&size=10&size=14&width=1150&width=1500", func(one told) {
		names = append(names, one.name)
		if one.name == "table" {
			require.NoError(t, json.Unmarshal([]byte(one.data), &table))
		}
	})
	require.Equal(t, "begun", names[0])
	assert.Contains(t, names, "counted")
	require.Len(t, table.Cells, 8)
	assert.Equal(t, "10", table.Cells[0].Size)
	assert.Equal(t, "skirt", table.Cells[0].Garment)

	rows, err := app.ReadTableRows(t.Context(), filepath.Join(v.folder, "sized.yaml"), []string{"10", "14"})
	require.NoError(t, err)
	asked, err := app.TableOf(rows, []float64{1150, 1500})
	require.NoError(t, err)
	same, err := asked.Reckon(t.Context(), v.server.options.Search, app.Watch{})
	require.NoError(t, err)
	assert.Equal(t, report.TableOf(same), table)
}

// everySize of the job on seven widths, as an address asks for them.
func everySize(v *visit) string {
	v.t.Helper()
	var out strings.Builder
	for _, size := range v.told("GET", "/api/jobs/sized.yaml", "")["sizes"].([]any) {
		out.WriteString("&size=" + size.(string))
	}
	return out.String() + "&width=900&width=1000&width=1100&width=1200&width=1300&width=1400&width=1500"
}

// What is stopped is answered with what was found by then; the rest is left out.
func TestTableIsStopped(t *testing.T) {
	v := sizedVisit(t)
	var table report.Table
	v.follow(t.Context(), "/api/jobs/sized.yaml/sizes?word=two"+everySize(v), func(one told) {
		switch one.name {
		case "begun":
			v.told("POST", "/api/jobs/sized.yaml/sizes/stop", `{"word":"another"}`)
		case "counted":
			v.told("POST", "/api/jobs/sized.yaml/sizes/stop", `{"word":"two"}`)
		case "table":
			require.NoError(t, json.Unmarshal([]byte(one.data), &table))
		}
	})
	require.NotEmpty(t, table.Cells)
	assert.True(t, table.EndedEarly)
	left := 0
	for _, cell := range table.Cells {
		if cell.IsLeftOut {
			left++
		}
	}
	assert.Positive(t, left)
	assert.Less(t, left, len(table.Cells))
}

// leaver is a page that leaves when it is first told how far a table is.
type leaver struct {
	*httptest.ResponseRecorder
	leave context.CancelFunc
}

func (l leaver) Write(data []byte) (int, error) {
	if strings.Contains(string(data), "event: counted") {
		l.leave()
	}
	return l.ResponseRecorder.Write(data)
}

// A page that asks something else leaves the stream: its search ends, and answers nothing.
func TestTableThatNobodyWaitsFor(t *testing.T) {
	v := sizedVisit(t)
	v.told("GET", "/api/jobs/sized.yaml", "")
	opened, err := v.server.now().jobs.named("sized.yaml")
	require.NoError(t, err)
	ctx, leave := context.WithCancel(t.Context())
	gone := leaver{httptest.NewRecorder(), leave}
	v.server.streamTable(gone, httptest.NewRequestWithContext(ctx, "GET", "/?word=three"+everySize(v), nil), opened)
	said := gone.Body.String()
	assert.NotContains(t, said, "event: table")
	all := regexp.MustCompile(`"all":(\d+)`).FindStringSubmatch(said)[1]
	assert.NotContains(t, said, `"over":`+all)
	assert.Empty(t, opened.stops.going)
}

func TestTableThatCannotBe(t *testing.T) {
	v := sizedVisit(t)
	for address, code := range map[string]string{
		"width=0": "no width", "width=wide": "no width", "width=NaN": "no width",
	} {
		status, text := v.ask("GET", "/api/jobs/sized.yaml/sizes?word=x&"+address, "")
		assert.Equal(t, 422, status, address)
		assert.Contains(t, text, code)
	}
	var refused told
	v.follow(t.Context(), "/api/jobs/blouse.yaml/sizes?word=x&size=8", func(one told) { refused = one })
	assert.Equal(t, "refused", refused.name)
	assert.Contains(t, refused.data, "measurements of a body")
	assert.NotContains(t, refused.data, v.folder)
}

// A width that no cloth has is refused, and what is no number.
func TestWidthsOfATableAreThoseOfCloths(t *testing.T) {
	widest := limit.ClothWidth.Most()
	q, err := tableQuestionIn(url.Values{"width": {"1400", strconv.Itoa(widest)}})
	require.NoError(t, err)
	assert.Equal(t, []float64{1400, float64(widest)}, q.widths)
	for _, text := range []string{strconv.Itoa(widest + 1), "0", "-5", "NaN", "wide"} {
		_, err := tableQuestionIn(url.Values{"width": {text}})
		assert.Equal(t, errNoWidth, err, text)
	}
}
