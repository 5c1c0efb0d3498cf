// Package check lets tests have a layout checked from outside, by check_lay.py
// with shapely (GEOS), which shares nothing with the program.
package check

import (
	_ "embed" // the checker
	"errors"
	"os/exec"
	"testing"
)

//go:embed check_lay.py
var program string

// python is Debian's, for which it packs shapely.
const python = "/usr/bin/python3"

// Lays has layouts of cloth checked, and fails the test with what is wrong.
func Lays(t *testing.T, files ...string) {
	t.Helper()
	if said, ok := Run(t, append([]string{"lay"}, files...)...); !ok {
		t.Errorf("the outside checker: %s", said)
	}
}

// Bench has a layout of open nesting data checked.
func Bench(t *testing.T, instance, layout string) {
	t.Helper()
	if said, ok := Run(t, "bench", instance, layout); !ok {
		t.Errorf("the outside checker: %s", said)
	}
}

// Run starts the checker and returns what it says, and whether it found no
// fault. It skips the test where Python has no shapely.
func Run(t *testing.T, args ...string) (said string, ok bool) {
	t.Helper()
	if exec.Command(python, "-c", "import shapely").Run() != nil {
		t.Skip("the outside checker needs Debian's python3-shapely, which .ci/run installs")
	}
	out, err := exec.Command(python, append([]string{"-c", program}, args...)...).CombinedOutput()
	var status *exec.ExitError
	if err != nil && !errors.As(err, &status) {
		t.Fatalf("the outside checker did not start: %s", err)
	}
	return string(out), err == nil
}
