// Package bench finds the open nesting instances for the tests that read them.
// They are not part of the project: the environment variable BENCH_DATA names
// their folder. Without it a folder beside the checkout is looked into.
package bench

import (
	"os"
	"path/filepath"
	"testing"
)

// Folder of the open instances. It skips the test where there is none.
func Folder(t testing.TB) string {
	t.Helper()
	folder := os.Getenv("BENCH_DATA")
	if folder == "" {
		folder = besideTheCheckout()
	}
	if found, err := filepath.Glob(filepath.Join(folder, "*.json")); err != nil || len(found) == 0 {
		t.Skip("the open nesting instances are not here; BENCH_DATA may name their folder")
	}
	return folder
}

// Instances are the files of the open instances, in order.
func Instances(t testing.TB) []string {
	t.Helper()
	found, err := filepath.Glob(filepath.Join(Folder(t), "*.json"))
	if err != nil {
		t.Fatal(err)
	}
	return found
}

// besideTheCheckout goes up from the folder of the test to that of go.mod.
func besideTheCheckout() string {
	at := "."
	for range 8 {
		if _, err := os.Stat(filepath.Join(at, "go.mod")); err == nil {
			return filepath.Join(at, "..", "shared", "bench")
		}
		at = filepath.Join("..", at)
	}
	return ""
}
