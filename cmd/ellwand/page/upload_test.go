package page

import (
	"encoding/base64"
	"encoding/json"
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Two pieces with their words: one with a right and a left, and a half that lies on the fold
// by one of its two straight sides.
const wordedDrawing = `<svg xmlns="http://www.w3.org/2000/svg" width="600mm" height="500mm" viewBox="0 0 600 500">
<g id="back"><path d="M20 20 H200 L170 400 H20 Z"/>
<text x="60" y="200" font-size="9">cut 2</text></g>
<g id="yoke"><path d="M300 20 H380 L340 220 H300 Z"/>
<text x="302" y="100" font-size="7">cut 1 on fold</text></g></svg>`

// brought is a request with a file and answers.
func brought(t *testing.T, name, data string, each map[string][]string) (look, make string) {
	file := map[string]any{"name": name, "base64": base64.StdEncoding.EncodeToString([]byte(data)), "each": each}
	looked, err := json.Marshal(file)
	require.NoError(t, err)
	made, err := json.Marshal(map[string]any{"from": "pattern", "title": "Drawn", "units": "cm", "width": "140",
		"file": file})
	require.NoError(t, err)
	return string(looked), string(made)
}

func TestCutTwoAndOnFoldAreRead(t *testing.T) {
	v := newVisit(t).enter()
	look, begin := brought(t, "skirt.svg", wordedDrawing, nil)
	seen := v.told("POST", "/api/drawing", look)
	require.Len(t, seen["pieces"], 2)
	back, yoke := seen["pieces"].([]any)[0].(map[string]any), seen["pieces"].([]any)[1].(map[string]any)
	assert.Equal(t, []any{2., true, true, "none"}, []any{back["cut"], back["pair"], back["hands"], back["fold"]})
	assert.Equal(t, []any{1., "left"}, []any{yoke["cut"], yoke["fold"]})
	assert.Equal(t, []any{"left", "top", "bottom", "none"}, yoke["folds"])
	assert.Contains(t, yoke["missing"], "fold")

	text := v.pieces(begin, "skirt-pieces.yaml")
	assert.Regexp(t, `name: back\n +cut: 2\n +pair: yes`, text)
	assert.Regexp(t, `name: yoke\n +cut: 1\n +fold: `, text)
	assert.Contains(t, text, "half of them are cut mirrored")
	job, err := os.ReadFile(filepath.Join(v.folder, "drawn.yaml"))
	require.NoError(t, err)
	assert.Contains(t, string(job), "- name: skirt\n")
	_, begin = brought(t, "skirt.svg", wordedDrawing, map[string][]string{"pair": {"1=no"}, "fold": {"2=none"}})
	text = v.pieces(begin, "skirt-pieces-2.yaml")
	assert.NotContains(t, text, "pair: yes")
	assert.NotContains(t, text, "fold: ")
}

// pieces are the file of pieces that is made with a job.
func (v *visit) pieces(begin, name string) string {
	v.t.Helper()
	made := v.told("POST", "/api/jobs", begin)
	shown := v.told("GET", "/api/jobs/"+made["job"].(string), "")
	assert.Equal(v.t, true, shown["sound"], shown["faults"])
	text, err := os.ReadFile(filepath.Join(v.folder, name))
	require.NoError(v.t, err)
	return string(text)
}

// A file is what is in it, whatever it is named; of an empty one it is said.
func TestFilesAreReadByContent(t *testing.T) {
	v := newVisit(t).enter()
	for name, c := range map[string]struct{ data, told string }{
		"photo.svg": {"\x89PNG\r\n\x1a\n", "of a known size"},
		"empty.svg": {"", "file is empty"},
		"note.pdf":  {"cut 2", "is no drawing"},
	} {
		look, _ := brought(t, name, c.data, nil)
		status, told := v.ask("POST", "/api/drawing", look)
		assert.Equal(t, 422, status)
		assert.Contains(t, told, c.told)
	}
}
