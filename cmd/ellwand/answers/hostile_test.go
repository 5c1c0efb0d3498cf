package answers

import (
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"unicode"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/testdata/program"
)

// hostileJob has names that steer terminals, the direction of reading, tables and
// spreadsheets.
const hostileJob = `job: "Bl\e[2Jouse \u202egpj\a"
client: "=1+1\e]0;x\a"
units: cm
table: women
size: 12
allowances: {seams: 1.5}
garments:
  - name: "=SUM(A1)\x9b31m\u2066g [x](y)"
    bodice: {}
    pieces: [{name: "@p\e]0;x\a|\u202ep", width: 12, height: 14, cut: 2}]
currency: EUR
cloths: [{name: "-sh\e[31mell\x03\u202e", width: 140, price: 10}]
`

// What people have written goes into no file and to no terminal as it is: neither
// control characters nor what steers the direction of reading, and no formulas.
func TestHostileNamesComeOutClean(t *testing.T) {
	t.Parallel()
	folder, kept := t.TempDir(), t.TempDir()
	job := filepath.Join(folder, "job.yaml")
	require.NoError(t, os.WriteFile(job, []byte(hostileJob), 0o600))
	for _, command := range []string{
		"draft JOB -o OUT/pieces --sheet OUT/steps.txt", "draft JOB -o OUT/nested --sizes 10,12 --sheet OUT/nested.txt",
		"estimate JOB --passes 1 --json", "estimate JOB --passes 1 --table -o OUT/t.csv -o OUT/t.md",
		"marker JOB --passes 1 -o OUT/plan.svg --layout OUT/layout.json", "marker JOB --passes 1 --full -o OUT/full.plt",
		"marker JOB --passes 1 --full -o OUT/full.svg", "compare JOB --passes 1", "quote JOB --passes 1 -o OUT/quote.pdf",
		"marker JOB --lay no\x1b[2J", "estimate JOB --cl\u202eoth",
	} {
		args := strings.Fields(strings.NewReplacer("JOB", job, "OUT", folder).Replace(command))
		ended := program.Run(t, kept, args...)
		assert.Contains(t, []int{program.Done, program.Bad}, ended.Status, ended.Said)
		assertClean(t, command, []byte(ended.Out+ended.Said))
	}
	written := 0
	require.NoError(t, filepath.WalkDir(folder, func(path string, entry fs.DirEntry, err error) error {
		if err != nil || entry.IsDir() || path == job || filepath.Ext(path) == ".pdf" {
			return err
		}
		text, err := os.ReadFile(path)
		assertClean(t, path, text)
		assertClean(t, "a name", []byte(path))
		written++
		return err
	}))
	assert.Greater(t, written, 8)
	table, err := os.ReadFile(filepath.Join(folder, "t.csv"))
	require.NoError(t, err)
	assert.Contains(t, string(table), "\n'-shell,'=SUM(A1)g [x](y),")
	table, err = os.ReadFile(filepath.Join(folder, "t.md"))
	require.NoError(t, err)
	assert.Contains(t, string(table), `=SUM(A1)g \[x\](y)`)
}

func assertClean(t *testing.T, what string, text []byte) {
	t.Helper()
	for _, r := range string(text) {
		isSteering := unicode.IsControl(r) && r != '\n' && r != '\t' && r != '\r' || unicode.Is(unicode.Bidi_Control, r)
		if !assert.False(t, isSteering, "%s: %q", what, r) {
			return
		}
	}
}
