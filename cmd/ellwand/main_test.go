package main

import (
	"regexp"
	"slices"
	"testing"

	"github.com/rogpeppe/go-internal/testscript"

	"ellwand/testdata/scripts"
)

func TestMain(m *testing.M) {
	testscript.Main(m, map[string]func(){"ellwand": main})
}

// TestScripts runs every script of testdata/script. $JOBS is the folder of
// example jobs, $QUOTED a small job with all that a quote can have.
func TestScripts(t *testing.T) {
	scripts.Run(t, scripts.Setting{
		Paths: map[string]string{"JOBS": "../../testdata", "QUOTED": "testdata/quoted.yaml", "DATA": "testdata",
			"SHEETS": "../../pieces/tidy/testdata", "PHOTOS": "../../pieces/tracing/testdata"},
		// So wide that no sentence is broken where a script looks for it.
		Variables: map[string]string{"COLUMNS": "1000"},
		Commands:  map[string]scripts.Command{"samemarks": sameMarks},
	})
}

// sameMarks compares the marks of lays in two documents:
//
//	samemarks quote.json plan.json
func sameMarks(ts *testscript.TestScript, negated bool, args []string) {
	if negated || len(args) != 2 {
		ts.Fatalf("usage: samemarks FILE FILE")
	}
	mark := regexp.MustCompile(`"mark": "[^"]+"`)
	first, second := mark.FindAllString(ts.ReadFile(args[0]), -1), mark.FindAllString(ts.ReadFile(args[1]), -1)
	if len(first) == 0 || !slices.Equal(first, second) {
		ts.Fatalf("the marks are %q and %q", first, second)
	}
}
