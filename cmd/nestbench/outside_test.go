package main

import (
	"bytes"
	"context"
	"os"
	"os/exec"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// The layouts of the open data are found right by a checker from outside the
// project, which computes with shapely (GEOS).
func TestOpenDataOutside(t *testing.T) {
	const checker, python = "../../../shared/tools/check_layout.py", "/usr/bin/python3"
	instances, err := filepath.Glob("../../../shared/bench/*.json")
	require.NoError(t, err)
	if _, err := os.Stat(checker); err != nil || len(instances) == 0 {
		t.Skip("the open nesting data or the layout checker (../shared) are not here")
	}
	if err := exec.Command(python, "-c", "import shapely").Run(); err != nil {
		t.Skip("the layout checker needs python3-shapely")
	}
	for _, instance := range instances {
		t.Run(filepath.Base(instance), func(t *testing.T) {
			file := filepath.Join(t.TempDir(), "layout.json")
			var out, errs bytes.Buffer
			status := run(context.Background(), []string{"lay", instance, "--passes", "40", "--layout", file}, &out, &errs)
			require.Equal(t, statusDone, status, errs.String())
			said, err := exec.Command(python, checker, "bench", instance, file).CombinedOutput()
			assert.NoError(t, err, "%s", said)
		})
	}
}
