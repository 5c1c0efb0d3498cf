// Package scripts runs the scripts by which the commands are tested.
package scripts

import (
	"errors"
	"fmt"
	"maps"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"testing"

	"github.com/rogpeppe/go-internal/testscript"
)

// Command is one that scripts may use beside those of testscript.
type Command = func(script *testscript.TestScript, negated bool, args []string)

// Setting is what scripts run in.
type Setting struct {
	// Paths of files and folders, by the variables that name them to the scripts, and
	// other variables.
	Paths, Variables map[string]string
	// Commands beside status.
	Commands map[string]Command
}

// Run runs every script of testdata/script beside the test.
func Run(t *testing.T, in Setting) {
	t.Helper()
	commands := map[string]Command{"status": status}
	maps.Copy(commands, in.Commands)
	set := maps.Clone(in.Variables)
	if set == nil {
		set = map[string]string{}
	}
	for name, path := range in.Paths {
		whole, err := filepath.Abs(path)
		if err != nil {
			t.Fatal(err)
		}
		set[name] = whole
	}
	testscript.Run(t, testscript.Params{
		Dir: "testdata/script",
		Setup: func(script *testscript.Env) error {
			for name, value := range set {
				script.Setenv(name, value)
			}
			// What one script finds is nothing to another.
			script.Setenv("XDG_CACHE_HOME", filepath.Join(script.WorkDir, ".cache"))
			return nil
		},
		// Root may read and write everything, whatever the permissions.
		Condition: func(name string) (bool, error) {
			if name != "root" {
				return false, fmt.Errorf("unknown condition %q", name)
			}
			return os.Geteuid() == 0, nil
		},
		Cmds: commands,
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
