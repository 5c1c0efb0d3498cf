package main

import (
	"errors"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"testing"

	"github.com/rogpeppe/go-internal/testscript"
)

func TestMain(m *testing.M) {
	testscript.Main(m, map[string]func(){"ellwand": main})
}

// TestScripts runs every script of testdata/script. $JOBS is the folder of
// example jobs, $QUOTED a small job with all that a quote can have.
func TestScripts(t *testing.T) {
	jobs, err := filepath.Abs("../../testdata")
	if err != nil {
		t.Fatal(err)
	}
	quoted, err := filepath.Abs("testdata/quoted.yaml")
	if err != nil {
		t.Fatal(err)
	}
	testscript.Run(t, testscript.Params{
		Dir: "testdata/script",
		Setup: func(env *testscript.Env) error {
			env.Setenv("JOBS", jobs)
			env.Setenv("QUOTED", quoted)
			// So wide that no sentence is broken where a script looks for it.
			env.Setenv("COLUMNS", "1000")
			return nil
		},
		// Root may read and write everything, whatever the permissions.
		Condition: func(name string) (bool, error) {
			if name != "root" {
				return false, fmt.Errorf("unknown condition %q", name)
			}
			return os.Geteuid() == 0, nil
		},
		Cmds: map[string]func(*testscript.TestScript, bool, []string){"status": status, "samemarks": sameMarks},
	})
}

// status runs a command that must end with an exit status:
//
//	status 2 ellwand estimate missing.yaml
func status(ts *testscript.TestScript, negated bool, args []string) {
	if negated || len(args) < 2 {
		ts.Fatalf("usage: status N command [argument...]")
	}
	want, err := strconv.Atoi(args[0])
	ts.Check(err)
	got := 0
	if err := ts.Exec(args[1], args[2:]...); err != nil {
		var exit *exec.ExitError
		if !errors.As(err, &exit) {
			ts.Fatalf("%v", err)
		}
		got = exit.ExitCode()
	}
	if got != want {
		ts.Fatalf("exit status %d, want %d", got, want)
	}
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
