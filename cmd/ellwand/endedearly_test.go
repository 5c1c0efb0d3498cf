package main

import (
	"bytes"
	"context"
	"testing"

	"github.com/stretchr/testify/assert"
)

// A search that was ended before its time says so, and never that it took it.
func TestEndedEarlyIsSaid(t *testing.T) {
	ended, end := context.WithCancel(context.Background())
	end()
	for _, json := range []bool{false, true} {
		args := []string{"remnant", "../../testdata/blouse.yaml", "--cloth", "shell", "--length", "95cm", "--time", "20s"}
		want := "when the search was ended early"
		if json {
			args, want = append(args, "--json"), `"ended_early": true`
		}
		var out, errs bytes.Buffer
		assert.Equal(t, statusNo, run(ended, args, &out, &errs))
		assert.Contains(t, out.String(), want)
		assert.NotContains(t, out.String(), "20 s")
	}
}
