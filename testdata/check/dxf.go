package check

import (
	_ "embed" // the reader
	"encoding/json"
	"errors"
	"os/exec"
	"sync"
	"testing"
)

//go:embed check_dxf.py
var dxfProgram string

// DrawnDXF is what an outside reader finds in a DXF file.
type DrawnDXF struct {
	Version string   `json:"version"`
	Errors  []string `json:"errors"`
	Style   []string `json:"style"`
	Inserts []string `json:"inserts"`
	Blocks  []struct {
		Name   string             `json:"name"`
		Texts  []string           `json:"texts"`
		Layers map[string]int     `json:"layers"` // "1 POLYLINE": 1
		Areas  map[string]float64 `json:"areas"`  // of closed polylines, by layer, mm2
	} `json:"blocks"`
}

// ReadDXF has a file read by ezdxf.
func ReadDXF(t *testing.T, path string) DrawnDXF {
	t.Helper()
	var out DrawnDXF
	runDXF(t, &out, "read", path)
	return out
}

// OutlineDXF is an outline that an outside writer has drawn: its name stands in it.
type OutlineDXF struct {
	Name string  `json:"name"`
	Area float64 `json:"area"` // mm2
}

// WriteDXF has a drawing written by ezdxf, in a version such as R2018: every kind of
// line that there is.
func WriteDXF(t *testing.T, path, version string) []OutlineDXF {
	t.Helper()
	var out []OutlineDXF
	runDXF(t, &out, "write", path, version)
	return out
}

// hasReader says that Python has ezdxf.
var hasReader = sync.OnceValue(func() bool { return exec.Command(python, "-c", "import ezdxf").Run() == nil })

// runDXF skips the test where Python has no ezdxf.
func runDXF(t *testing.T, into any, args ...string) {
	t.Helper()
	if !hasReader() {
		t.Skip("the outside reader of DXF needs Debian's python3-ezdxf, which .ci/run installs")
	}
	said, err := exec.Command(python, append([]string{"-c", dxfProgram}, args...)...).Output()
	if err != nil {
		var failed *exec.ExitError
		if errors.As(err, &failed) {
			t.Fatalf("the outside reader of DXF: %s", failed.Stderr)
		}
		t.Fatalf("the outside reader of DXF did not start: %s", err)
	}
	if err := json.Unmarshal(said, into); err != nil {
		t.Fatalf("the outside reader of DXF: %s", err)
	}
}
