package main

import (
	"bytes"
	"context"
	"io"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/cmd/ellwand/app"
	"ellwand/testdata/sample"
)

// From the bytes of a job file to the finished reports and files: whatever they
// are, the program ends with one of its statuses, and never by its own fault.
func FuzzReports(f *testing.F) {
	sample.MinimizeBriefly()
	commands := []string{
		"estimate JOB --passes 10 --json", "marker JOB --passes 10 -o OUT/plan.svg --layout OUT/layouts",
		"draft JOB -o OUT/pieces --sheet OUT/sheet.pdf", "remnant JOB --passes 10 --length 60cm -o OUT/plan.pdf",
		"quote JOB --passes 10 --anew -o OUT/quote.pdf", "compare JOB --passes 10 --anew",
		"print JOB --passes 10 -o OUT/print.pdf",
		"marker JOB --passes 10 -o OUT/plan.pdf", "estimate JOB --passes 10 --table -o OUT/t.md -o OUT/t.csv -o OUT/t.pdf",
		"marker JOB --passes 10 --full -o OUT/full.plt", "draft JOB --sheet OUT/sheet.txt --json",
		"print JOB -o OUT/print.pdf --paper a0",
	}
	for i := range commands { // small jobs: an input is given up after seconds
		f.Add([]byte(tinyJob), uint8(i))
	}
	f.Add([]byte("job: a\nunits: cm\ntable: women\nsize: 12\ngarments: [{name: g, skirt: {}}]\ncloths: [{name: shell, "+
		"width: 140}]\n"), uint8(2))
	f.Fuzz(func(t *testing.T, text []byte, which uint8) {
		t.Setenv("XDG_CACHE_HOME", t.TempDir())
		folder := t.TempDir()
		path := filepath.Join(folder, "job.yaml")
		require.NoError(t, os.WriteFile(path, text, 0o600))
		command := commands[int(which)%len(commands)]
		var out, errs bytes.Buffer
		status := run(context.Background(),
			strings.Fields(strings.NewReplacer("JOB", path, "OUT", folder).Replace(command)), &out, &errs)
		assert.Contains(t, []int{statusDone, statusBad, statusNo}, status, errs.String())
		assert.NotContains(t, out.String()+errs.String(), "\x1b")
	})
}

// tinyJob is laid at once, and has something for every flag.
const tinyJob = `job: a
units: cm
currency: EUR
table: women
size: 12
allowances: {seams: 1}
garments: [{name: g, pieces: [{name: p, width: 9, height: 9}, {name: q, width: 5, height: 30, cut: 2}]}]
cloths: [{name: shell, width: 140, length: 100, price: 9}]
`

// ownFlags are not tried with any text: files, which could lie anywhere, what sets how
// long a search is, and what ends at once.
var ownFlags = []string{"output", "layout", "sheet", "passes", "help", "version"}

// flagged is a command line with one flag whose text is still to come.
type flagged struct {
	args []string
	flag string
}

// withText is a flag in the help whose value is named.
var withText = regexp.MustCompile(`--([a-z-]+) [a-zA-Z]+ {2,}`)

// everyFlag of every command that takes a text, with a command line that is good
// without it.
func everyFlag() []flagged {
	lines := map[string]string{
		"draft": "draft JOB -o OUT/p", "estimate": "estimate JOB --passes 1 --table -o OUT/t.pdf",
		"marker":  "marker JOB --passes 1 --full -o OUT/m.pdf",
		"remnant": "remnant JOB --passes 1 -o OUT/r.pdf", "print": "print JOB --passes 1 -o OUT/p.pdf",
		"compare": "compare JOB --passes 1", "quote": "quote JOB --passes 1 -o OUT/q.pdf",
		"convert": "convert 2m --from 115cm --to 140cm",
		"export":  "export JOB -o OUT/pieces.yaml", "show": "show JOB -o OUT/pieces.pdf",
		"project": "project JOB -o OUT/p.pdf --scale 10%",
	}
	var out []flagged
	for _, command := range newRoot(newEnv(io.Discard, io.Discard, io.Discard)).Commands() {
		line, known := lines[command.Name()]
		if !known {
			continue
		}
		for _, found := range withText.FindAllStringSubmatch(command.LocalFlags().FlagUsages(), -1) {
			if !slices.Contains(ownFlags, found[1]) {
				out = append(out, flagged{strings.Fields(line), found[1]})
			}
		}
	}
	return out
}

// Every flag of every command is read as it is written, or refused with a sentence that
// speaks no Go.
func FuzzEveryFlag(f *testing.F) {
	sample.MinimizeBriefly()
	all := everyFlag()
	require.Greater(f, len(all), 30)
	texts := []string{"5s", "NaN", "-1", "1e400", "", "a4", "600mmx900mm", "shell=140cm", "open", "1,50 m,140cm",
		"10,12", "36in"}
	for i := range all {
		f.Add(i, texts[i%len(texts)])
	}
	f.Fuzz(func(t *testing.T, which int, text string) {
		one := all[uint(which)%uint(len(all))]
		t.Setenv("XDG_CACHE_HOME", t.TempDir())
		folder := t.TempDir()
		job := filepath.Join(folder, "job.yaml")
		require.NoError(t, os.WriteFile(job, []byte(tinyJob), 0o600))
		var args []string
		for _, arg := range one.args {
			args = append(args, strings.NewReplacer("JOB", job, "OUT", folder).Replace(arg))
		}
		var out, errs bytes.Buffer
		status := run(context.Background(), append(args, "--"+one.flag+"="+text), &out, &errs)
		assert.Contains(t, []int{statusDone, statusBad, statusNo}, status, "%s: %s", one, errs.String())
		said := strings.ReplaceAll(errs.String(), text, "")
		for _, word := range []string{"strconv", "invalid syntax", "parse error", "%!", "goroutine", "<nil>", "\x1b"} {
			assert.NotContains(t, said, word, one)
		}
	})
}

// What a flag is given is read, or refused with a sentence that speaks no Go.
func FuzzFlags(f *testing.F) {
	sample.MinimizeBriefly()
	for _, text := range []string{"5s", "NaN", "-1", "1e400", "", "2m", "0x5", "１"} {
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, text string) {
		var time span
		var search app.Search
		for _, flag := range []interface{ Set(string) error }{&time, (*passes)(&search.Passes)} {
			if err := flag.Set(text); err != nil {
				assert.NotContains(t, err.Error(), "strconv")
				assert.NotContains(t, err.Error(), "time:")
			}
		}
		assert.GreaterOrEqual(t, int64(time), int64(0))
		assert.LessOrEqual(t, time, span(maxSpan))
		assert.GreaterOrEqual(t, search.Passes, 0)
	})
}
