// Package examples runs what the README and the pages of help show: tests only.
package examples

import (
	"os"
	"os/exec"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/cmd/ellwand/manual"
	"ellwand/testdata/program"
)

func TestMain(m *testing.M) { os.Exit(program.Main(m.Run)) }

// ellwand runs one command line.
func ellwand(args ...string) (out, said string, status int) {
	var stdout, stderr strings.Builder
	run := exec.Command(program.Path, args...)
	run.Stdout, run.Stderr = &stdout, &stderr
	if err := run.Run(); err != nil {
		status = run.ProcessState.ExitCode()
	}
	return stdout.String(), stderr.String(), status
}

func readme(t *testing.T) string {
	t.Helper()
	text, err := os.ReadFile("../../../README.md")
	require.NoError(t, err)
	return string(text)
}

// blocks are what stands between ```yaml and ```.
func blocks(text string) []string {
	var out []string
	for _, found := range regexp.MustCompile("(?s)```yaml\n(.*?)```").FindAllStringSubmatch(text, -1) {
		out = append(out, found[1])
	}
	return out
}

// pasted puts the top-level keys of a part in place of those of a job, as the
// texts around the examples say to.
func pasted(whole, part string) string {
	key := regexp.MustCompile(`(?m)^(\w+):`)
	var out strings.Builder
	for _, section := range sections(whole) {
		if name := key.FindStringSubmatch(section); name != nil && regexp.MustCompile(`(?m)^`+name[1]+`:`).MatchString(part) {
			continue
		}
		out.WriteString(section)
	}
	return out.String() + part
}

// sections of a job file: each a key at the top and what stands below it.
func sections(text string) []string {
	var out []string
	for _, line := range strings.SplitAfter(text, "\n") {
		if len(out) == 0 || line != "" && line[0] != ' ' && line[0] != '\n' {
			out = append(out, "")
		}
		out[len(out)-1] += line
	}
	return out
}

// The README is read from top to bottom, as somebody who tries it would: every
// example is saved or pasted into the job before it, every command is run.
func TestReadmeExamplesRun(t *testing.T) {
	text := readme(t)
	t.Chdir(t.TempDir())
	t.Setenv("XDG_CACHE_HOME", t.TempDir())
	lines := strings.Split(text, "\n")
	job, ran := "", 0
	for i := 0; i < len(lines); i++ {
		line := lines[i]
		switch {
		case line == "```yaml":
			end := i + slices.Index(lines[i:], "```")
			block := strings.Join(lines[i+1:end], "\n") + "\n"
			if job == "" {
				assert.LessOrEqual(t, end-i-1, 20, "a plain job takes under twenty lines")
			}
			job, i = pasted(job, block), end
			require.NoError(t, os.WriteFile("market.yaml", []byte(job), 0o600))
		case strings.HasPrefix(line, "    ellwand "):
			runAsWritten(t, line)
			ran++
		}
	}
	assert.GreaterOrEqual(t, ran, 10)
}

// runAsWritten runs a command line of the README, with a short search; it must
// give an answer.
func runAsWritten(t *testing.T, line string) {
	t.Helper()
	args := strings.Fields(line)[1:]
	help, _, status := ellwand("help", args[0])
	require.Zero(t, status, line)
	if strings.Contains(help, "--passes") {
		args = append(args, "--passes", "1")
	}
	out, said, status := ellwand(args...)
	assert.Contains(t, []int{program.Done, program.No}, status, "%s: %s", line, said)
	assert.NotEmpty(t, out, line)
}

// The examples of the manual, pasted into the README's job, can be laid.
func TestManualExamplesRun(t *testing.T) {
	whole := blocks(readme(t))[0]
	t.Chdir(t.TempDir())
	t.Setenv("XDG_CACHE_HOME", t.TempDir())
	examples := 0
	for _, topic := range manual.Topics() {
		for _, example := range strings.Split(topic.Page(200), "An example;")[1:] {
			examples++
			job := pasted(whole, indented(example))
			require.NoError(t, os.WriteFile("job.yaml", []byte(job), 0o600))
			_, said, status := ellwand("estimate", "job.yaml", "--passes", "1", "-q")
			assert.Equal(t, program.Done, status, "%s: %s\n%s", topic.Name, said, job)
		}
	}
	assert.Equal(t, 3, examples)
}

// indented is the first block of a page that is indented, without its indent.
func indented(page string) string {
	var out strings.Builder
	for _, line := range strings.Split(page, "\n")[2:] {
		if line == "" {
			break
		}
		out.WriteString(strings.TrimPrefix(line, "  ") + "\n")
	}
	return out.String()
}
