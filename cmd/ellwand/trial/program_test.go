package trial

import (
	"os"
	"os/exec"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	built "ellwand/testdata/program"
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

func TestMain(m *testing.M) {
	os.Exit(built.Main(func(path string) int {
		program = path
		return m.Run()
	}))
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
