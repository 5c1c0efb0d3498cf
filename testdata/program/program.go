// Package program is a tool of the tests: it builds the program, so that they can run it
// in processes of its own.
package program

import (
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
)

// Main builds the program, runs the tests with its path, and returns their exit status.
func Main(tests func(path string) int) int {
	folder, err := os.MkdirTemp("", "ellwand-built-*")
	if err != nil {
		fmt.Fprintln(os.Stderr, err)
		return 1
	}
	defer os.RemoveAll(folder)
	path := filepath.Join(folder, "ellwand")
	if said, err := exec.Command("go", "build", "-o", path, "ellwand/cmd/ellwand").CombinedOutput(); err != nil {
		fmt.Fprintf(os.Stderr, "%s%s\n", said, err)
		return 1
	}
	return tests(path)
}
