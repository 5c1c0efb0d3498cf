package page

import (
	"encoding/base64"
	"encoding/json"
	"net/http"
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestSecondStartFindsTheFirst(t *testing.T) {
	v := newVisit(t)
	path := filepath.Join(t.TempDir(), "ellwand", "page.json")
	_, is := Running(path, "")
	assert.False(t, is, "there is no sign")
	v.server.options.Sign = path
	takeDown := v.server.putUpSign()
	info, err := os.Stat(path)
	require.NoError(t, err)
	assert.Equal(t, os.FileMode(0o600), info.Mode().Perm())
	for _, folder := range []string{"", v.folder} {
		address, is := Running(path, folder)
		require.True(t, is)
		answer, err := v.browser.Get(address)
		require.NoError(t, err)
		answer.Body.Close()
		assert.Equal(t, http.StatusOK, answer.StatusCode)
	}
	_, is = Running(path, t.TempDir())
	assert.False(t, is, "it has another folder open")
	takeDown()
	assert.NoFileExists(t, path)
	text, err := json.Marshal(sign{Host: v.server.door.host, Secret: "guessed", Folder: v.folder})
	require.NoError(t, err)
	require.NoError(t, os.WriteFile(path, text, 0o600))
	_, is = Running(path, "")
	assert.False(t, is, "the secret is another")
	for _, host := range []string{"127.0.0.1:1", "evil.example:80", ""} {
		text, err := json.Marshal(sign{Host: host})
		require.NoError(t, err)
		require.NoError(t, os.WriteFile(path, text, 0o600))
		_, is = Running(path, "")
		assert.False(t, is, host)
	}
}

func TestFolderIsChosen(t *testing.T) {
	v := newVisit(t).enter()
	var chosen string
	v.server.options.Chosen = func(folder string) { chosen = folder }
	v.told("GET", "/api/jobs/blouse.yaml", "")
	other := t.TempDir()
	body, err := json.Marshal(map[string]string{"folder": other})
	require.NoError(t, err)
	shown := v.told("POST", "/api/folder", string(body))
	assert.Equal(t, other, shown["folder"])
	assert.Equal(t, other, chosen)
	assert.Empty(t, shown["jobs"])
	status, _ := v.ask("GET", "/api/jobs/blouse.yaml", "")
	assert.Equal(t, 404, status)
	made := v.told("POST", "/api/jobs", `{"from":"person","garment":"bag","title":"A bag: nice","units":"in",`+
		`"width":"45"}`)
	assert.Equal(t, "a-bag-nice.yaml", made["job"])
	again := v.told("POST", "/api/jobs", `{"from":"copy","of":"a-bag-nice.yaml","title":"A bag: nice"}`)
	assert.Equal(t, "a-bag-nice-2.yaml", again["job"])
	assert.FileExists(t, filepath.Join(other, "a-bag-nice.yaml"))
	for _, bad := range []string{`{"folder":"."}`, `{"folder":"/no/such/folder"}`} {
		status, _ := v.ask("POST", "/api/folder", bad)
		assert.GreaterOrEqual(t, status, 400)
	}
}

func TestDrawingIsBroughtIn(t *testing.T) {
	v := newVisit(t).enter()
	const drawing = `<svg xmlns="http://www.w3.org/2000/svg" width="400mm" height="300mm" viewBox="0 0 400 300">` +
		`<path d="M10 10 H210 V160 H10 Z"/></svg>`
	file := base64.StdEncoding.EncodeToString([]byte(drawing))
	look, err := json.Marshal(map[string]any{"name": "Pouch.svg", "base64": file,
		"answers": map[string]string{"cut": "2"}})
	require.NoError(t, err)
	seen := v.told("POST", "/api/drawing", string(look))
	assert.Equal(t, "", seen["fault"])
	assert.Equal(t, []any{map[string]any{"number": 1., "name": "pouch", "missing": []any{"grain", "allowance"},
		"optional": []any{"pair", "fold", "cloth", "size"}, "cut": 2., "pair": false, "hands": false, "fold": "none",
		"folds": []any{"top", "bottom", "left", "right", "none"}}},
		seen["pieces"])
	status, picture := v.ask("GET", "/picture/drawing/1.svg", "")
	assert.Equal(t, 200, status)
	assert.Contains(t, picture, "<svg")
	photo := base64.StdEncoding.EncodeToString([]byte("\x89PNG\r\n\x1a\n"))
	status, told := v.ask("POST", "/api/drawing", `{"name":"a.png","base64":"`+photo+`"}`)
	assert.Equal(t, 422, status)
	assert.Contains(t, told, "squares of its ground")
	body, err := json.Marshal(map[string]any{"from": "pattern", "title": "Pouch", "units": "cm", "width": "90",
		"file": map[string]any{"name": "../Pouch 1.svg", "base64": file,
			"answers": map[string]string{"cut": "2"}, "each": map[string][]string{"name": {"1=pouch side"}}}})
	require.NoError(t, err)
	made := v.told("POST", "/api/jobs", string(body))
	assert.Equal(t, "pouch.yaml", made["job"])
	text, err := os.ReadFile(filepath.Join(v.folder, "pouch-1-pieces.yaml"))
	require.NoError(t, err)
	assert.Contains(t, string(text), "# Where the drawing has no grainline")
	shown := v.told("GET", "/api/jobs/pouch.yaml", "")
	assert.Equal(t, true, shown["sound"], shown["faults"])
	assert.Len(t, shown["pieces"], 1)
	assert.Equal(t, 2., shown["pieces"].([]any)[0].(map[string]any)["cut"])
	assert.Equal(t, "pouch side", shown["pieces"].([]any)[0].(map[string]any)["name"])
	status, said := v.ask("POST", "/api/jobs", `{"from":"pattern","title":"x","file":{"name":"a.svg",`+
		`"base64":"PHN2Zy8+"}}`)
	assert.Equal(t, 422, status)
	assert.NotContains(t, said, "/tmp")
}
