//go:build unix

package trial

import (
	"bytes"
	"context"
	"fmt"
	"math/rand/v2"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"syscall"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/testdata/sample"
)

// The exit statuses of the program.
const (
	statusDone = 0
	statusBad  = 2
	statusNo   = 3
)

// What a run on a job may take.
const (
	hungAfter  = 60 * time.Second
	mostMemory = 1 << 20 // KB, 1 GB
)

// mutatedCommands are tried on every job; OUT is a folder of the run's own.
var mutatedCommands = []string{
	"draft JOB -o OUT/pieces --sheet OUT/sheet.pdf",
	"estimate JOB --passes 1 --layout OUT/layouts",
	"estimate JOB --passes 1 --table --widths 140cm -o OUT/table.pdf -o OUT/table.csv",
	"marker JOB --passes 1 -o OUT/plan.pdf",
	"marker JOB --passes 1 --full -o OUT/marker.plt",
	"remnant JOB --passes 1 --length 2m --cloth shell -o OUT/fits.pdf",
	"print JOB --passes 1 -o OUT/print.pdf",
	"compare JOB --passes 1 --anew",
	"quote JOB --passes 1 --anew -o OUT/quote.pdf",
	"estimate JOB --passes 1 --json",
}

// Whatever a job file holds, each command ends with a result or a sentence, in
// bounded time and memory, sends no escape sequences to a terminal, and writes
// nowhere but where it was asked to. The long run tries 10,000 jobs.
func TestMutatedJobs(t *testing.T) {
	program := built(t)
	jobs, err := filepath.Glob("../../../testdata/*.yaml")
	require.NoError(t, err)
	var texts [][]byte
	for _, path := range append(jobs, "../starter.yaml") {
		text, err := os.ReadFile(path)
		require.NoError(t, err)
		texts = append(texts, text)
	}
	rng := rand.New(rand.NewPCG(1, 23))
	statuses := map[int]int{}
	for i := range sample.Of(10, 10_000) {
		text := mutated(rng, texts[i%len(texts)], rng.IntN(4))
		command := mutatedCommands[(i/len(texts)+i)%len(mutatedCommands)]
		statuses[tried(t, program, text, command)]++
	}
	t.Logf("exit statuses: %v", statuses)
	all := statuses[statusDone] + statuses[statusNo] + statuses[statusBad]
	assert.GreaterOrEqual(t, 3*(statuses[statusDone]+statuses[statusNo]), all, "a third of the runs succeed")
}

// built is the program, in a process of its own: its memory is measured.
func built(t *testing.T) string {
	t.Helper()
	out := filepath.Join(t.TempDir(), "ellwand")
	said, err := exec.Command("go", "build", "-o", out, "..").CombinedOutput()
	require.NoError(t, err, "%s", said)
	return out
}

// tried runs one command on one job and returns its exit status.
func tried(t *testing.T, program string, text []byte, command string) int {
	t.Helper()
	home := t.TempDir()
	job, out := filepath.Join(home, "job.yaml"), filepath.Join(home, "out")
	require.NoError(t, os.WriteFile(job, text, 0o600))
	args := strings.Fields(strings.NewReplacer("JOB", job, "OUT", out).Replace(command))
	ctx, cancel := context.WithTimeout(context.Background(), hungAfter)
	defer cancel()
	var said bytes.Buffer
	run := exec.CommandContext(ctx, program, args...)
	run.Dir, run.Stdout, run.Stderr = home, &said, &said
	run.Env = append(os.Environ(), "XDG_CACHE_HOME="+filepath.Join(home, "cache"), "TMPDIR="+home)
	_ = run.Run() // the status says it
	status := run.ProcessState.ExitCode()
	blame := func(what string) string {
		return fmt.Sprintf("%s: %s\n%s\n---\n%s", what, command, said.String(), text)
	}
	assert.Contains(t, []int{statusDone, statusBad, statusNo}, status, blame("status"))
	assert.NoError(t, ctx.Err(), blame("hung"))
	assert.Less(t, run.ProcessState.SysUsage().(*syscall.Rusage).Maxrss, int64(mostMemory), blame("memory"))
	assert.NotContains(t, said.String(), "\x1b", blame("escape sequence"))
	entries, err := os.ReadDir(home)
	require.NoError(t, err)
	for _, entry := range entries {
		assert.Contains(t, []string{"job.yaml", "out", "cache"}, entry.Name(), blame("outside"))
	}
	left, err := os.ReadFile(job)
	require.NoError(t, err)
	assert.Equal(t, text, left, blame("the job was changed"))
	return status
}

// mutated changes a text in some places.
func mutated(rng *rand.Rand, text []byte, changes int) []byte {
	for range changes {
		text = mutations[rng.IntN(len(mutations))](rng, text)
	}
	return text
}

// hostile are values that are seldom meant.
var hostile = []string{
	"0", "-1", "1e308", "NaN", "99999999999999999999", "10000", "0.0001", "\"\\e[2J\"", "../../x", "\u202e", "", "{}", "[]",
	"*a", "~", "1 000", "16 3/8 in", "300 m",
}

var mutations = []func(*rand.Rand, []byte) []byte{
	scaledNumber, scaledNumber, scaledNumber, // so that many jobs stay good
	func(rng *rand.Rand, text []byte) []byte { // a value of another kind
		lines := strings.Split(string(text), "\n")
		at := rng.IntN(len(lines))
		if key, _, found := strings.Cut(lines[at], ": "); found {
			lines[at] = key + ": " + hostile[rng.IntN(len(hostile))]
		}
		return []byte(strings.Join(lines, "\n"))
	},
	func(rng *rand.Rand, text []byte) []byte { // a line less, or twice
		lines := strings.SplitAfter(string(text), "\n")
		lines[rng.IntN(len(lines))] = lines[rng.IntN(len(lines))]
		return []byte(strings.Join(lines, ""))
	},
	func(rng *rand.Rand, text []byte) []byte { // any byte
		if len(text) == 0 {
			return text
		}
		out := bytes.Clone(text)
		out[rng.IntN(len(out))] = byte(rng.IntN(256))
		return out
	},
}

// scaledNumber makes one digit another.
func scaledNumber(rng *rand.Rand, text []byte) []byte {
	out := bytes.Clone(text)
	for range 200 {
		at := rng.IntN(max(len(out), 1))
		if at < len(out) && out[at] >= '1' && out[at] <= '9' {
			out[at] = '1' + byte(rng.IntN(9))
			return out
		}
	}
	return out
}
