// Package answers runs the program and looks at what it answers: one answer from every
// command, documents that keep their schemas, papers that say their cautions. Tests only.
package answers

import (
	"os"
	"testing"

	built "ellwand/testdata/program"
)

// The exit statuses of the program.
const (
	statusDone = 0
	statusBad  = 2
	statusNo   = 3
)

// program is where it was built.
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
	return built.Output(t, program, args...)
}
