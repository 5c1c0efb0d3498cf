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
garments: [{name: apron, quantity: 2, pieces: [{name: apron, width: 58, height: 50},
  {name: band, width: 8, height: 90}]}]
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

// Where the time is over, or the command ended, when not all garments are drafted, no
// command gives an amount or a plan for some of them: it says that there is no answer, how
// far it came and what to do, and writes nothing.
func TestEndedWhileDraftingIsNoAnswer(t *testing.T) {
	t.Setenv("XDG_CACHE_HOME", t.TempDir())
	const guests = `
job: Guests
units: cm
currency: EUR
wearers:
  - {name: Ona, size: 10, table: women}
  - {name: Ilo, size: 14, table: women}
  - {name: Una, size: 12, table: women}
garments: [{name: skirt, skirt: {length: 60}}]
cloths: [{name: shell, width: 140, price: 20, length: 9 m}]
quote: {date: 2026-03-02}
`
	ended, end := context.WithCancel(context.Background())
	end()
	past, end := context.WithTimeout(context.Background(), 0)
	defer end()
	for _, command := range []string{"estimate", "estimate --table -o out/table.md", "quote -o out/quote.pdf", "compare",
		"marker -o out/plan.svg", "print -o out/pieces.pdf", "remnant -o out/plan.pdf", "draft -o out"} {
		for ctx, why := range map[context.Context]string{
			ended: "you ended it before there was any answer, when 1 of 3 garments were drafted; nothing was laid and " +
				"nothing written; start it again for an answer",
			past: "the time that you gave was over before there was any answer, when 1 of 3 garments were drafted; " +
				"nothing was laid and nothing written; give it more time, or fewer wearers at once",
		} {
			t.Chdir(t.TempDir())
			require.NoError(t, os.WriteFile("guests.yaml", []byte(guests), 0o600))
			words := strings.Fields(command)
			var out, errs bytes.Buffer
			status := run(ctx, append([]string{words[0], "guests.yaml"}, words[1:]...), &out, &errs)
			assert.Equal(t, statusBad, status, command)
			assert.Contains(t, unwrapped(errs), why, command)
			assert.Empty(t, out.String(), command)
			assert.NoDirExists(t, "out", command)
		}
	}
}

func unwrapped(text bytes.Buffer) string { return strings.Join(strings.Fields(text.String()), " ") }
