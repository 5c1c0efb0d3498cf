package main

import (
	"bytes"
	"context"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/testdata/check"
)

// ellwand runs one command line and returns its output; it must end well.
func ellwand(t *testing.T, args ...string) string {
	t.Helper()
	var out, errs bytes.Buffer
	status := run(context.Background(), args, &out, &errs)
	require.Equal(t, statusDone, status, "ellwand %s: %s", strings.Join(args, " "), errs.String())
	return out.String()
}

// The layouts that a command writes are found right by the outside checker.
func TestWrittenLayoutsOutside(t *testing.T) {
	folder := t.TempDir()
	ellwand(t, "estimate", "../../testdata/blouse.yaml", "--passes", "5", "--layout", folder, "--widths", "90cm,150cm")
	files, err := filepath.Glob(filepath.Join(folder, "*.json"))
	require.NoError(t, err)
	assert.GreaterOrEqual(t, len(files), 2*2, "at least the open lay of two cloths in two widths")
	check.Lays(t, files...)
}
