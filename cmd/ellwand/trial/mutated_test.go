//go:build unix

package trial

import (
	"bytes"
	"cmp"
	"context"
	"fmt"
	"math/rand/v2"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
	"sync"
	"syscall"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/testdata/program"
	"ellwand/testdata/sample"
)

// What a run on a job may take.
const (
	hungAfter  = 60 * time.Second // of processors: what else a machine does is not counted
	endedAfter = 10 * hungAfter
	mostMemory = 1 << 20 // KB, 1 GB
)

// mutatedCommand is tried on jobs, or, where it takes none, with its own words
// changed. JOB is the job, OUT a folder of the run's own.
type mutatedCommand struct {
	line string
	// takesMoney says that the job must have prices.
	takesMoney bool
}

var mutatedCommands = []mutatedCommand{
	{line: "draft JOB -o OUT/pieces --sheet OUT/sheet.pdf"},
	{line: "draft JOB --sheet OUT/sheet.txt --json"},
	{line: "draft JOB -o OUT/pieces --sizes 10,14 --sheet OUT/sizes.pdf"},
	{line: "estimate JOB --passes 1 --layout OUT/layouts"},
	{line: "estimate JOB --passes 1 --json"},
	{line: "estimate JOB --passes 1 --table --widths 140cm -o OUT/table.pdf -o OUT/table.csv -o OUT/table.md"},
	{line: "marker JOB --passes 1 -o OUT/plan.pdf --layout OUT/layouts"},
	{line: "marker JOB --passes 1 --full -o OUT/marker.plt"},
	{line: "marker JOB --passes 1 -o OUT/plan.png"},
	{line: "remnant JOB --passes 1 --length 2m --cloth shell -o OUT/fits.pdf"},
	{line: "print JOB --passes 1 -o OUT/print.pdf"},
	{line: "compare JOB --passes 1 --anew", takesMoney: true},
	{line: "compare JOB --passes 1 --json", takesMoney: true},
	{line: "quote JOB --passes 1 --anew -o OUT/quote.pdf", takesMoney: true},
	{line: "quote JOB --passes 1 --json", takesMoney: true},
	{line: "export JOB -o OUT/pieces.yaml"},
	{line: "show JOB -o OUT/pieces.svg"},
	{line: "new OUT/new.yaml --force"},
	{line: "convert 2.4m --from 115cm --to 150cm --step 10cm --nap"},
	{line: "schema estimate"},
	{line: "version --json"},
	{line: "help cloth"},
}

// Whatever a job file or a command line holds, each command ends with a result or a
// sentence, in bounded time and memory, sends no escape sequences to a terminal, and
// writes nowhere but where it was asked to. The long run tries 10,000, as many at a
// time as -parallel says; the number of one that fails tries it again:
// -run TestMutatedJobs/jobs/1234.
func TestMutatedJobs(t *testing.T) {
	texts := jobTexts(t)
	var all tallies
	t.Run("jobs", func(t *testing.T) {
		for i := range sample.Of(3*len(mutatedCommands), 10_000) {
			t.Run(fmt.Sprint(i), func(t *testing.T) {
				t.Parallel()
				rng := rand.New(rand.NewPCG(uint64(i), 23))
				command := mutatedCommands[i%len(mutatedCommands)]
				text := drawn(rng, texts, command.takesMoney)
				words := strings.Fields(command.line)
				if strings.Contains(command.line, "JOB") {
					text = mutated(rng, text, rng.IntN(4))
				} else {
					mutateWords(rng, words, rng.IntN(3))
				}
				run := tried(t, text, words)
				run.number, run.takesMoney = i, command.takesMoney
				all.add(run)
			})
		}
	})
	all.report(t)
}

// slowJob takes minutes of a processor in some commands: it is left to the long run,
// the small quoted job having all its keys.
const slowJob = "bridesmaids.yaml"

// jobTexts are the example jobs, the quoted one and the starter.
func jobTexts(t *testing.T) [][]byte {
	t.Helper()
	jobs, err := filepath.Glob("../../../testdata/*.yaml")
	require.NoError(t, err)
	var texts [][]byte
	for _, path := range append(jobs, "../testdata/quoted.yaml", "../starter.yaml") {
		if filepath.Base(path) == slowJob && !sample.Long() {
			continue
		}
		text, err := os.ReadFile(path)
		require.NoError(t, err)
		texts = append(texts, text)
	}
	return texts
}

// drawn is one of the texts; one with prices, where money is asked for.
func drawn(rng *rand.Rand, texts [][]byte, takesMoney bool) []byte {
	for {
		text := texts[rng.IntN(len(texts))]
		if !takesMoney {
			return text
		}
		if !bytes.Contains(text, []byte("price:")) {
			text = bytes.Replace(text, []byte("units: cm"), []byte("units: cm\ncurrency: EUR"), 1)
			text = bytes.ReplaceAll(text, []byte("{name: shell,"), []byte("{name: shell, price: 12.50,"))
		}
		if bytes.Contains(text, []byte("price:")) {
			return text
		}
	}
}

// tally is what one run came to.
type tally struct {
	number, status int
	takesMoney     bool
	took           time.Duration // of processors
	memory         int64         // KB
}

func (r tally) isAnswer() bool { return r.status == program.Done || r.status == program.No }

// tallies of all runs.
type tallies struct {
	mutex sync.Mutex
	runs  []tally
}

func (a *tallies) add(run tally) {
	a.mutex.Lock()
	defer a.mutex.Unlock()
	a.runs = append(a.runs, run)
}

// report says what the runs came to, and asks for enough answers.
func (a *tallies) report(t *testing.T) {
	statuses, money, answers, most := map[int]int{}, 0, 0, int64(0)
	for _, run := range a.runs {
		statuses[run.status]++
		most = max(most, run.memory)
		if run.takesMoney {
			money++
			if run.isAnswer() {
				answers++
			}
		}
	}
	slices.SortFunc(a.runs, func(x, y tally) int { return cmp.Compare(y.took, x.took) })
	for _, run := range a.runs[:min(5, len(a.runs))] {
		t.Logf("number %d took %s of processors", run.number, run.took.Round(10*time.Millisecond))
	}
	t.Logf("exit statuses: %v; of %d about money, %d gave an answer; at most %d MB", statuses, money, answers, most>>10)
	if len(a.runs) > 1 { // not when one is tried again
		assert.GreaterOrEqual(t, 3*(statuses[program.Done]+statuses[program.No]), len(a.runs),
			"a third of the runs succeed")
		assert.GreaterOrEqual(t, 3*answers, money, "a third of the runs about money succeed")
	}
}

// tried runs one command on one job.
func tried(t *testing.T, text []byte, words []string) tally {
	t.Helper()
	home := t.TempDir()
	job, out := filepath.Join(home, "job.yaml"), filepath.Join(home, "out")
	require.NoError(t, os.WriteFile(job, text, 0o600))
	args := make([]string, len(words))
	for i, word := range words {
		args[i] = strings.NewReplacer("JOB", job, "OUT", out).Replace(word)
	}
	ctx, cancel := context.WithTimeout(context.Background(), endedAfter)
	defer cancel()
	var said bytes.Buffer
	run := exec.CommandContext(ctx, program.Path, args...)
	run.Dir, run.Stdout, run.Stderr = home, &said, &said
	run.Env = append(os.Environ(), "XDG_CACHE_HOME="+filepath.Join(home, "cache"), "TMPDIR="+home)
	_ = run.Run() // the status says it
	usage := run.ProcessState.SysUsage().(*syscall.Rusage)
	result := tally{status: run.ProcessState.ExitCode(),
		took: run.ProcessState.UserTime() + run.ProcessState.SystemTime(), memory: usage.Maxrss}
	blame := func(what string) string {
		return fmt.Sprintf("%s: %q\n%s\n---\n%s", what, words, said.String(), text)
	}
	assert.Contains(t, []int{program.Done, program.Bad, program.No}, result.status, blame("status"))
	assert.NoError(t, ctx.Err(), blame("hung"))
	assert.Less(t, result.took, hungAfter, blame("hung"))
	assert.Less(t, result.memory, int64(mostMemory), blame("memory"))
	assert.NotContains(t, said.String(), "\x1b", blame("escape sequence"))
	entries, err := os.ReadDir(home)
	require.NoError(t, err)
	for _, entry := range entries {
		assert.Contains(t, []string{"job.yaml", "out", "cache"}, entry.Name(), blame("outside"))
	}
	left, err := os.ReadFile(job)
	require.NoError(t, err)
	assert.Equal(t, text, left, blame("the job was changed"))
	return result
}
