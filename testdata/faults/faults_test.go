package faults

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/testdata/sample"
)

// Each fault can be put into the code as it stands: what it changes is there, once.
func TestFaultsCanBePutIn(t *testing.T) {
	list, err := Read()
	require.NoError(t, err)
	assert.GreaterOrEqual(t, len(list.Faults), 36)
	names := map[string]bool{}
	for _, fault := range list.Faults {
		assert.False(t, names[fault.Name], fault.Name)
		names[fault.Name] = true
		_, _, err := fault.changed()
		assert.NoError(t, err, fault.Name)
		assert.Contains(t, list.Jobs, fault.Job, fault.Name)
	}
}

// The program as it is does every command, and with each fault refuses it: it fails,
// says that it is to blame, and shows and writes nothing.
func TestFaultsAreRefused(t *testing.T) {
	if !sample.Long() {
		t.Skip("each takes the time of a build: make faults")
	}
	list, err := Read()
	require.NoError(t, err)
	sound := built(t, map[string][]byte{})
	t.Run("faults", func(t *testing.T) {
		for _, fault := range list.Faults {
			t.Run(fault.Name, func(t *testing.T) {
				t.Parallel()
				status, said, _ := ran(t, sound, list.Jobs[fault.Job], fault.Run)
				require.Contains(t, []int{0, 3}, status, "without the fault: %s", said)
				path, text, err := fault.changed()
				require.NoError(t, err)
				status, said, left := ran(t, built(t, map[string][]byte{path: text}), list.Jobs[fault.Job], fault.Run)
				assert.Equal(t, 1, status, said)
				assert.Contains(t, said, "not by anything you wrote")
				assert.NotContains(t, said, "foresaw", "refused, not stumbled over")
				assert.Empty(t, left, "nothing is written")
				t.Log(said)
			})
		}
	})
}

// top of the module.
const top = "../.."

// changed is the file with the fault, by its path below the top.
func (f Fault) changed() (path string, text []byte, err error) {
	files, err := filepath.Glob(filepath.Join(top, f.Package, "*.go"))
	if err != nil {
		return "", nil, err
	}
	found := 0
	for _, file := range files {
		whole, err := os.ReadFile(file)
		if err != nil {
			return "", nil, err
		}
		if n := bytes.Count(whole, []byte(f.Old)); n > 0 && !strings.HasSuffix(file, "_test.go") {
			found += n
			path, text = file, bytes.Replace(whole, []byte(f.Old), []byte(f.New), 1)
		}
	}
	if found != 1 || f.Old == f.New {
		return "", nil, fmt.Errorf("what is to be changed stands %d times in %s: %s", found, f.Package, f.Old)
	}
	return path, text, nil
}

// built is the program with files in place of others; the tree is left alone.
func built(t *testing.T, changed map[string][]byte) string {
	t.Helper()
	folder := t.TempDir()
	replace := map[string]string{}
	for path, text := range changed {
		real, err := filepath.Abs(path)
		require.NoError(t, err)
		replace[real] = filepath.Join(folder, "changed.go")
		require.NoError(t, os.WriteFile(replace[real], text, 0o600))
	}
	overlay, err := json.Marshal(map[string]any{"Replace": replace})
	require.NoError(t, err)
	require.NoError(t, os.WriteFile(filepath.Join(folder, "overlay.json"), overlay, 0o600))
	program := filepath.Join(folder, "ellwand")
	build := exec.Command("go", "build", "-overlay", filepath.Join(folder, "overlay.json"), "-o", program, "./cmd/ellwand")
	build.Dir = top
	said, err := build.CombinedOutput()
	require.NoError(t, err, "%s", said)
	return program
}

// ran is a command on a job: its exit status, what it said on both outputs, and the
// files that it wrote.
func ran(t *testing.T, program, job, command string) (status int, said string, left []string) {
	t.Helper()
	folder := t.TempDir()
	path, out := filepath.Join(folder, "job.yaml"), filepath.Join(folder, "out")
	require.NoError(t, os.WriteFile(path, []byte(job), 0o600))
	run := exec.Command(program, strings.Fields(strings.NewReplacer("JOB", path, "OUT", out).Replace(command))...)
	run.Dir, run.Env = folder, append(os.Environ(), "XDG_CACHE_HOME="+filepath.Join(folder, "cache"), "COLUMNS=1000")
	text, err := run.CombinedOutput()
	var exit *exec.ExitError
	if err != nil && !errors.As(err, &exit) {
		require.NoError(t, err)
	}
	require.NoError(t, filepath.WalkDir(out, func(path string, entry os.DirEntry, err error) error {
		if err == nil && !entry.IsDir() {
			left = append(left, path)
		}
		return nil
	}))
	return run.ProcessState.ExitCode(), string(text), left
}
