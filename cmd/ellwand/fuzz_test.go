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

	"ellwand/cmd/ellwand/app"
	"ellwand/testdata/sample"
)

// From the bytes of a job file to the finished reports and files: whatever they
// are, the program ends with one of its statuses, and never by its own fault.
func FuzzReports(f *testing.F) {
	sample.MinimizeBriefly()
	f.Add([]byte(starter), uint8(0))
	f.Add([]byte("job: a\nunits: cm\ngarments: [{name: g, pieces: [{name: p, width: 9, height: 9}]}]\n"+
		"currency: EUR\ncloths: [{name: shell, width: 140, length: 100, price: 9}]\n"), uint8(3))
	commands := []string{
		"estimate JOB --passes 2 --json", "marker JOB --passes 2 -o OUT/plan.svg", "draft JOB -o OUT/pieces",
		"remnant JOB --passes 2 --length 60cm -o OUT/plan.pdf", "quote JOB --passes 2 --anew -o OUT/quote.pdf",
		"compare JOB --passes 2 --anew", "print JOB --passes 2 -o OUT/print.pdf",
	}
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
