package main

import (
	"bytes"
	"context"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

const aprons = `
job: Aprons
units: cm
currency: EUR
garments: [{name: apron, quantity: 2, pieces: [{name: apron, width: 58, height: 50}, {name: band, width: 8, height: 90}]}]
cloths: [{name: shell, width: 90, price: 20}]
quote: {date: 2026-03-02}
`

// A search that was ended before its time says so in every command, on the screen, in
// JSON and on paper: how long it took and how much of the work was done.
func TestEndedEarlyIsSaid(t *testing.T) {
	t.Setenv("XDG_CACHE_HOME", t.TempDir())
	folder := t.TempDir()
	path, file := filepath.Join(folder, "aprons.yaml"), filepath.Join(folder, "table.md")
	require.NoError(t, os.WriteFile(path, []byte(aprons), 0o600))
	ended, end := context.WithCancel(context.Background())
	end()
	for _, command := range [][]string{
		{"estimate", path}, {"estimate", path, "--table", "-o", file, "--force"}, {"quote", path}, {"compare", path},
		{"marker", path, "-o", filepath.Join(folder, "plan.svg"), "--force"},
		{"print", path, "-o", filepath.Join(folder, "pieces.pdf"), "--force"},
		{"remnant", "../../testdata/blouse.yaml", "--cloth", "shell", "--length", "95cm"},
	} {
		var out, errs bytes.Buffer
		run(ended, append(command, "--json"), &out, &errs)
		assert.Contains(t, out.String(), `"ended_early": true`, "%v", command)
		assert.Contains(t, out.String(), `"effort_percent": 0`, "%v", command)
		if command[0] == "remnant" {
			run(ended, command, &out, &errs)
			assert.Contains(t, unwrapped(out), "when the search was ended early at 0 % of the usual effort")
			continue
		}
		assert.Contains(t, unwrapped(errs), "0 % of the usual effort; a longer one may find", "%v", command)
	}
	written, err := os.ReadFile(file)
	require.NoError(t, err)
	assert.Contains(t, string(written), "ended early")
}

func unwrapped(text bytes.Buffer) string { return strings.Join(strings.Fields(text.String()), " ") }
