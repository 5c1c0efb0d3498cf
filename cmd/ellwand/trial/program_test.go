package trial

import (
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
	statusDone = 0
	statusBad  = 2
	statusNo   = 3
)

// program is where the program was built: it runs in processes of its own, whose
// memory and files are looked at.
var program string

func TestMain(m *testing.M) { os.Exit(withProgram(m.Run)) }

// withProgram builds the program once for all tests.
func withProgram(tests func() int) int {
	folder, err := os.MkdirTemp("", "ellwand-trial-*")
	if err != nil {
		fmt.Fprintln(os.Stderr, err)
		return 1
	}
	defer os.RemoveAll(folder)
	program = filepath.Join(folder, "ellwand")
	if said, err := exec.Command("go", "build", "-o", program, "..").CombinedOutput(); err != nil {
		fmt.Fprintf(os.Stderr, "%s%s\n", said, err)
		return 1
	}
	return tests()
}

// ellwand runs one command line and returns its output; it must end well.
func ellwand(t *testing.T, args ...string) string {
	t.Helper()
	run := exec.Command(program, args...)
	run.Env = append(os.Environ(), "XDG_CACHE_HOME="+t.TempDir())
	var said strings.Builder
	run.Stderr = &said
	out, err := run.Output()
	require.NoError(t, err, "ellwand %s: %s", strings.Join(args, " "), said.String())
	return string(out)
}
