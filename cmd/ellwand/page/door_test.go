package page

import (
	"context"
	"encoding/json"
	"io"
	"net/http"
	"net/http/cookiejar"
	"net/http/httptest"
	"net/url"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/cmd/ellwand/app"
	"ellwand/cmd/ellwand/page/folder"
)

// blouse is a job that is drafted and laid quickly.
const blouse = "job: Wren # her name\nunits: cm\nbody:\n  bust_girth: 94\n  waist_girth: 76\n" +
	"  neck_base_girth: 38\n  back_neck_point_to_waist: 41\n  shoulder_length: 12.5\n  shoulder_to_wrist: 59\n" +
	"  upper_arm_girth: 30\ngarments:\n  - name: blouse\n    bodice: {}\n    sleeve: {wrist_width: 26}\n" +
	"cloths:\n  - name: shell\n    width: 140\n"

// visit is a page that is open, and the browser that looks at it.
type visit struct {
	t       *testing.T
	server  *server
	web     *httptest.Server
	browser *http.Client
	folder  string
}

func newVisit(t *testing.T) *visit {
	t.Helper()
	t.Setenv("XDG_CACHE_HOME", t.TempDir())
	path := t.TempDir()
	require.NoError(t, os.WriteFile(filepath.Join(path, "blouse.yaml"), []byte(blouse), 0o600))
	f, err := folder.Open(path)
	require.NoError(t, err)
	web := httptest.NewUnstartedServer(nil)
	s := newServer(context.Background(), f, Options{Search: app.Search{Passes: 20, Seed: 1}}, web.Listener.Addr().String())
	web.Config.Handler = s.handler()
	web.Start()
	jar, err := cookiejar.New(nil)
	require.NoError(t, err)
	v := &visit{t, s, web, &http.Client{Jar: jar}, path}
	t.Cleanup(func() { s.close(); web.Close(); f.Close() })
	return v
}

// enter opens the page by its address.
func (v *visit) enter() *visit {
	v.t.Helper()
	answer, err := v.browser.Get(v.server.door.address())
	require.NoError(v.t, err)
	answer.Body.Close()
	require.Equal(v.t, http.StatusOK, answer.StatusCode)
	require.Equal(v.t, "/", answer.Request.URL.RequestURI(), "the key is gone from the address")
	return v
}

// ask sends a request, with the token of the page if it has a body.
func (v *visit) ask(method, path, body string, more ...string) (int, string) {
	v.t.Helper()
	request, err := http.NewRequest(method, v.web.URL+path, strings.NewReader(body))
	require.NoError(v.t, err)
	if method == http.MethodPost {
		request.Header.Set(tokenHeader, v.server.door.token)
	}
	for i := 0; i < len(more); i += 2 {
		request.Header.Set(more[i], more[i+1])
		if more[i] == "Host" {
			request.Host = more[i+1]
		}
	}
	answer, err := v.browser.Do(request)
	require.NoError(v.t, err)
	defer answer.Body.Close()
	text, err := io.ReadAll(answer.Body)
	require.NoError(v.t, err)
	return answer.StatusCode, string(text)
}

// told is the answer to a request as JSON.
func (v *visit) told(method, path, body string) map[string]any {
	v.t.Helper()
	status, text := v.ask(method, path, body)
	require.Less(v.t, status, 300, text)
	var out map[string]any
	require.NoError(v.t, json.Unmarshal([]byte(text), &out))
	return out
}

func TestWhoMayComeIn(t *testing.T) {
	v := newVisit(t)
	status, text := v.ask("GET", "/", "")
	assert.Equal(t, 403, status, "without the cookie")
	assert.Contains(t, text, "Start Ellwand again")
	status, _ = v.ask("GET", "/?key=guessed", "")
	assert.Equal(t, 403, status)
	v.enter()
	for name, test := range map[string]struct {
		status             int
		method, path, body string
		more               []string
	}{
		"the page itself":                 {200, "GET", "/", "", nil},
		"its data":                        {200, "GET", "/api/folder", "", nil},
		"by the name of this machine":     {403, "GET", "/", "", []string{"Host", "localhost:1"}},
		"by a rebound name":               {403, "GET", "/", "", []string{"Host", "evil.example:80"}},
		"from a foreign page":             {403, "GET", "/api/folder", "", []string{"Origin", "https://evil.example"}},
		"from another port":               {403, "GET", "/api/folder", "", []string{"Sec-Fetch-Site", "same-site"}},
		"from a page that hides":          {403, "POST", "/api/jobs/blouse.yaml/act", "{}", []string{"Origin", "null"}},
		"a script of a foreign page":      {403, "GET", "/site/words/en.json", "", []string{"Sec-Fetch-Site", "cross-site"}},
		"a change without the token":      {403, "POST", "/api/jobs/blouse.yaml/act", "{}", []string{tokenHeader, ""}},
		"a change by the wrong token":     {403, "POST", "/api/jobs/blouse.yaml/act", "{}", []string{tokenHeader, "guess"}},
		"a change by another method":      {405, "DELETE", "/api/jobs/blouse.yaml", "", nil},
		"a change as if it were a look":   {404, "GET", "/api/jobs/blouse.yaml/act", "", nil},
		"a job above the folder":          {404, "GET", "/api/jobs/..%2Fblouse.yaml", "", nil},
		"a job elsewhere":                 {404, "GET", "/api/jobs/%2Fetc%2Fpasswd", "", nil},
		"a device":                        {404, "GET", "/api/jobs/CON", "", nil},
		"a job that is not there":         {404, "GET", "/api/jobs/coat.yaml", "", nil},
		"a way out of the files":          {404, "GET", "/site/%2e%2e/site.go", "", nil},
		"a body that is no request":       {400, "POST", "/api/jobs/blouse.yaml/act", "[", nil},
		"a request with an unknown field": {400, "POST", "/api/jobs/blouse.yaml/act", `{"base":1,"do":[],"by":7}`, nil},
	} {
		t.Run(name, func(t *testing.T) {
			status, text := v.ask(test.method, test.path, test.body, test.more...)
			assert.Equal(t, test.status, status, text)
			assert.NotContains(t, text, "goroutine")
		})
	}
}

func TestKeyIsGoodForOnce(t *testing.T) {
	v := newVisit(t)
	address := v.server.door.address()
	for i, want := range []int{303, 403} {
		answer := httptest.NewRecorder()
		request := httptest.NewRequest("GET", address, nil)
		v.server.handler().ServeHTTP(answer, request)
		assert.Equal(t, want, answer.Code, i)
	}
}

func TestHeadersKeepOthersOut(t *testing.T) {
	v := newVisit(t).enter()
	answer, err := v.browser.Get(v.web.URL + "/")
	require.NoError(t, err)
	defer answer.Body.Close()
	policy := answer.Header.Get("Content-Security-Policy")
	assert.NotContains(t, policy, "unsafe")
	for _, one := range []string{"default-src 'none'", "script-src 'self'", "frame-ancestors 'none'"} {
		assert.Contains(t, policy, one)
	}
	page, err := url.Parse(v.web.URL)
	require.NoError(t, err)
	for _, cookie := range v.browser.Jar.Cookies(page) {
		assert.Contains(t, cookie.Name, page.Port())
	}
	text, err := io.ReadAll(answer.Body)
	require.NoError(t, err)
	assert.Contains(t, string(text), v.server.door.token)
	assert.NotContains(t, string(text), "{{")
}

func TestBodiesAreLimited(t *testing.T) {
	v := newVisit(t).enter()
	status, text := v.ask("POST", "/api/jobs/blouse.yaml/act", `{"do":[{"text":"`+strings.Repeat("a", mostOfBody)+`"}]}`)
	assert.Equal(t, 400, status)
	assert.Contains(t, text, "cannot be read")
}
