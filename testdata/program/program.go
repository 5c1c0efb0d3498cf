// Package program is a tool of the tests: it builds the program, so that they can run it
// in processes of its own.
package program

import (
	"errors"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// The exit statuses of the program.
const (
	Done = 0
	Bad  = 2
	No   = 3
)

// Path is where the program is built while Main runs the tests.
var Path string

// Main builds the program, runs the tests of a package, and returns their exit status.
func Main(tests func() int) int {
	folder, err := os.MkdirTemp("", "ellwand-built-*")
	if err != nil {
		fmt.Fprintln(os.Stderr, err)
		return 1
	}
	defer os.RemoveAll(folder)
	Path = filepath.Join(folder, "ellwand")
	if said, err := exec.Command("go", "build", "-o", Path, "ellwand/cmd/ellwand").CombinedOutput(); err != nil {
		fmt.Fprintf(os.Stderr, "%s%s\n", said, err)
		return 1
	}
	return tests()
}

// Ended is what a run of the program came to.
type Ended struct {
	Out, Said string
	Status    int
}

// Run runs one command line, with a folder for what the program keeps from one run to the
// next.
func Run(t *testing.T, kept string, args ...string) Ended {
	t.Helper()
	run := exec.Command(Path, args...)
	run.Env = append(os.Environ(), "XDG_CACHE_HOME="+kept)
	var out, said strings.Builder
	run.Stdout, run.Stderr = &out, &said
	if err := run.Run(); err != nil {
		var exit *exec.ExitError
		require.True(t, errors.As(err, &exit), "%v", err)
	}
	return Ended{Out: out.String(), Said: said.String(), Status: run.ProcessState.ExitCode()}
}

// Output is what one command line prints, with nothing kept from before; it must end well.
func Output(t *testing.T, args ...string) string {
	t.Helper()
	ended := Run(t, t.TempDir(), args...)
	require.Equal(t, Done, ended.Status, "ellwand %s: %s", strings.Join(args, " "), ended.Said)
	return ended.Out
}
