package main

import (
	"bytes"
	"context"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// checker tests a layout from outside, with shapely (GEOS).
const checker = "../../../shared/tools/check_layout.py"

const python = "/usr/bin/python3"

func needChecker(t *testing.T) {
	t.Helper()
	if _, err := os.Stat(checker); err != nil {
		t.Skip("the layout checker (../shared/tools/check_layout.py) is not here")
	}
	if err := exec.Command(python, "-c", "import shapely").Run(); err != nil {
		t.Skip("the layout checker needs python3-shapely")
	}
}

// ellwand runs one command line and returns its output; it must end well.
func ellwand(t *testing.T, args ...string) string {
	t.Helper()
	var out, errs bytes.Buffer
	status := run(context.Background(), args, &out, &errs)
	require.Equal(t, statusDone, status, "ellwand %s: %s", strings.Join(args, " "), errs.String())
	return out.String()
}

// The demo's layouts at every usual width, open and folded, with and without
// nap, are found right by the outside checker.
func TestDemoLayoutsOutside(t *testing.T) {
	needChecker(t)
	text, err := os.ReadFile("../../testdata/blouse.yaml")
	require.NoError(t, err)
	for _, nap := range []string{"either way", "one way", "one way per garment"} {
		t.Run(nap, func(t *testing.T) {
			folder := t.TempDir()
			path := filepath.Join(folder, "job.yaml")
			changed := strings.Replace(string(text), "nap: either way", "nap: "+nap, 1)
			require.NoError(t, os.WriteFile(path, []byte(changed), 0o600))
			lays := filepath.Join(folder, "lays")
			ellwand(t, "estimate", path, "--time", "0.1s", "--layout", lays,
				"--widths", "90cm,100cm,110cm,120cm,130cm,140cm,150cm,160cm")
			files, err := filepath.Glob(filepath.Join(lays, "*.json"))
			require.NoError(t, err)
			assert.GreaterOrEqual(t, len(files), 2*8, "at least the open lay of two cloths in eight widths")
			for _, file := range files {
				said, err := exec.Command(python, checker, "lay", file).CombinedOutput()
				assert.NoError(t, err, "%s: %s", filepath.Base(file), said)
			}
		})
	}
}

// The checker must be able to find a fault: two pieces on one place.
func TestCheckerFindsAFault(t *testing.T) {
	needChecker(t)
	file := filepath.Join(t.TempDir(), "faulty.json")
	require.NoError(t, os.WriteFile(file, []byte(`{"length_mm": 10, "width_mm": 10, "pieces": [
		{"name": "a", "outline": [[0,0],[4,0],[4,4],[0,4],[0,0]]},
		{"name": "b", "outline": [[1,1],[5,1],[5,5],[1,5],[1,1]]}]}`), 0o600))
	assert.Error(t, exec.Command(python, checker, "lay", file).Run())
}
