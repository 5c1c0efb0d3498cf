package page

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func (v *visit) file() string {
	v.t.Helper()
	text, err := os.ReadFile(filepath.Join(v.folder, "blouse.yaml"))
	require.NoError(v.t, err)
	return string(text)
}

func TestJobIsShownAndChanged(t *testing.T) {
	v := newVisit(t).enter()
	shown := v.told("GET", "/api/jobs/blouse.yaml", "")
	assert.Equal(t, 1., shown["revision"])
	assert.Equal(t, true, shown["sound"])
	assert.NotEmpty(t, shown["pieces"])
	assert.NotEmpty(t, shown["truing"])
	changed := v.told("POST", "/api/jobs/blouse.yaml/act",
		`{"base":1,"do":[{"set":{"path":["body","bust_girth"],"value":"96,5"}}]}`)
	assert.Equal(t, 2., changed["revision"])
	assert.Equal(t, strings.Replace(blouse, "94", "96,5", 1), v.file())
	status, text := v.ask("POST", "/api/jobs/blouse.yaml/act", `{"base":1,"do":[{"undo":{}}]}`)
	assert.Equal(t, 409, status)
	assert.Contains(t, text, `"revision":2`)
	v.told("POST", "/api/jobs/blouse.yaml/act", `{"base":2,"do":[{"undo":{}}]}`)
	assert.Equal(t, blouse, v.file())
}

func TestHalfTypedValueStaysBesideTheFile(t *testing.T) {
	v := newVisit(t).enter()
	v.told("GET", "/api/jobs/blouse.yaml", "")
	v.told("POST", "/api/jobs/blouse.yaml/act",
		`{"base":1,"do":[{"set":{"path":["body","bust_girth"],"value":"9","typing":true}}]}`)
	assert.Equal(t, blouse, v.file())
	status, text := v.ask("GET", "/api/jobs/blouse.yaml", "")
	assert.Equal(t, 200, status)
	assert.Contains(t, text, `"value":"9","derived":"","fault":"the bust girth`)
	status, text = v.ask("GET", "/print/blouse.yaml/plan", "")
	assert.Equal(t, 422, status, "the plan would be of the value before")
	assert.Contains(t, text, "with its last good value")
	v.told("POST", "/api/jobs/blouse.yaml/act",
		`{"base":2,"do":[{"set":{"path":["body","bust_girth"],"value":"98","typing":true}}]}`)
	assert.Equal(t, strings.Replace(blouse, "94", "98", 1), v.file())
	v.told("POST", "/api/jobs/blouse.yaml/act", `{"base":3,"do":[{"undo":{}}]}`)
	assert.Equal(t, blouse, v.file(), "what is typed in one place is one step")
}
