//go:build unix

package trial

import (
	"maps"
	"math/rand/v2"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/testdata/program"
	"ellwand/testdata/sample"
)

const killedJob = `job: killed
units: cm
garments:
  - name: bag
    pieces: [{name: side, width: 38, height: 44, cut: 2}, {name: strap, width: 9, height: 70},
      {name: inside, width: 36, height: 42, cloth: lining}]
cloths: [{name: shell, width: 90}, {name: lining, width: 140}]
`

// A run that is killed at any moment leaves every file as it was or whole, and the next
// run finishes or sweeps what it left. The long run kills 200 times.
func TestKilledRunsLeaveWholeFiles(t *testing.T) {
	home := t.TempDir()
	job, out := filepath.Join(home, "job.yaml"), filepath.Join(home, "out")
	require.NoError(t, os.WriteFile(job, []byte(killedJob), 0o600))
	start := func(passes string) *exec.Cmd {
		run := exec.Command(program.Path, "marker", job, "--passes", passes, "--seed", passes, "-o",
			filepath.Join(out, "plan.pdf"), "--layout", out, "--force", "--anew", "-q", "--lay", "open")
		run.Env = append(os.Environ(), "XDG_CACHE_HOME="+filepath.Join(home, "cache"), "TMPDIR="+home)
		return run
	}
	// What two different runs write: every file must be as one of them has it.
	var sound []map[string]string
	var whole time.Duration
	for _, passes := range []string{"1", "2"} {
		began := time.Now()
		said, err := start(passes).CombinedOutput()
		require.NoError(t, err, "%s", said)
		whole = time.Since(began)
		sound = append(sound, contents(t, out))
	}
	require.Len(t, slices.Collect(maps.Keys(sound[0])), 4)
	rng := rand.New(rand.NewPCG(1, 200))
	finished, mixed := 0, 0
	for i := range sample.Of(3, 200) {
		run := start([]string{"1", "2"}[i%2])
		require.NoError(t, run.Start())
		time.Sleep(time.Duration(rng.Float64() * 1.1 * float64(whole)))
		_ = run.Process.Kill() // it may have ended
		if run.Wait() == nil {
			finished++
		}
		old, renewed := false, false
		for name, text := range contents(t, out) {
			if strings.HasPrefix(name, ".ellwand-") {
				continue
			}
			first, second := sound[0][name] == text, sound[1][name] == text
			assert.True(t, first || second, "kill %d: %s is broken", i, name)
			old, renewed = old || first && !second, renewed || second && !first
		}
		if old && renewed {
			mixed++
		}
	}
	said, err := start("1").CombinedOutput()
	require.NoError(t, err, "%s", said)
	assert.Equal(t, sound[0], contents(t, out), "nothing hidden is left")
	left, err := filepath.Glob(filepath.Join(home, "cache", "ellwand", "unfinished", "*"))
	require.NoError(t, err)
	assert.Empty(t, left, "no journal is left")
	t.Logf("%d had ended when they were to be killed; %d were between two files", finished, mixed)
}

// contents of the files of a folder, by name.
func contents(t *testing.T, folder string) map[string]string {
	t.Helper()
	out := map[string]string{}
	entries, err := os.ReadDir(folder)
	require.NoError(t, err)
	for _, entry := range entries {
		text, err := os.ReadFile(filepath.Join(folder, entry.Name()))
		require.NoError(t, err)
		out[entry.Name()] = string(text)
	}
	return out
}
