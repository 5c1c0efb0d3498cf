package main

import (
	"bytes"
	"context"
	"encoding/json"
	"fmt"
	"maps"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"time"
)

// bench is where the suites are built and run: a folder with the changed files, the
// overlay that puts them in place, and what is thrown and reached.
type bench struct {
	folder  string
	overlay string
	module  string
	limit   time.Duration
	spent   time.Duration // processor time of all that was run
}

// suite is the tests of one package, built with all changes behind their switches.
type suite struct {
	listed
	binary string
	units  []*unit
	broken []string // tests that fail with nothing thrown, and so catch nothing
}

// unit is some tests of a suite that are run together: the cheap ones, or a dear one.
type unit struct {
	*suite
	tests   []string      // all where there is none
	reached map[int]bool  // numbers of the changes that they come to
	cost    time.Duration // processor time with nothing thrown
}

// files of the folder that switch.txt knows.
func (b *bench) thrown() string { return filepath.Join(b.folder, "thrown") }
func (b *bench) reach() string  { return filepath.Join(b.folder, "reached") }

// openBench writes the changed files and their overlay.
func openBench(folder, module string, limit time.Duration, texts map[string]string) (*bench, error) {
	b := &bench{folder: folder, module: module, limit: limit}
	var err error
	b.overlay, err = writeOverlay(folder, texts)
	return b, err
}

// writeOverlay writes texts into a folder, and what makes the go command take them for
// the files that they are named by.
func writeOverlay(folder string, texts map[string]string) (string, error) {
	replace := map[string]string{}
	for file, text := range texts {
		replace[file] = filepath.Join(folder, strconv.Itoa(len(replace))+".go")
		if err := os.WriteFile(replace[file], []byte(text), 0o600); err != nil {
			return "", err
		}
	}
	text, err := json.Marshal(map[string]any{"Replace": replace})
	if err != nil {
		return "", err
	}
	path := filepath.Join(folder, "overlay.json")
	return path, os.WriteFile(path, text, 0o600)
}

// open builds the tests of a package and runs each with nothing thrown, to see which
// changes it comes to. Those that fail so are left out. Errors: they do not build.
func (b *bench) open(ctx context.Context, p listed) (*suite, error) {
	s := &suite{listed: p, binary: filepath.Join(b.folder, strings.ReplaceAll(p.ImportPath, "/", "-")+".test")}
	build := exec.CommandContext(ctx, "go", "test", "-c", "-vet=off", "-ldflags=-s -w", "-overlay", b.overlay,
		"-o", s.binary, p.ImportPath)
	build.Dir = b.module
	text, err := build.CombinedOutput()
	if err != nil {
		return nil, fmt.Errorf("%w: %s", err, text)
	}
	b.spent += used(build)
	tests, err := b.list(ctx, s)
	if err != nil {
		return nil, err
	}
	cheap := &unit{suite: s, reached: map[int]bool{}}
	for _, names := range tests {
		u, passed, err := b.measure(ctx, s, names)
		switch {
		case err != nil:
			return nil, err
		case !passed:
			s.broken = append(s.broken, names...)
		case u.cost < cheapest && len(names) > 0:
			cheap.tests, cheap.cost = append(cheap.tests, names...), cheap.cost+u.cost
			maps.Copy(cheap.reached, u.reached)
		default:
			s.units = append(s.units, u)
		}
	}
	if len(cheap.tests) > 0 {
		s.units = append(s.units, cheap)
	}
	return s, nil
}

// cheapest is the processor time below which tests are run together, and above which
// what they all begin with is too dear to be done for each.
const cheapest = 400 * time.Millisecond

// list are the tests of a suite, each by itself; all in one where they begin with
// something dear, such as building the program.
func (b *bench) list(ctx context.Context, s *suite) ([][]string, error) {
	cmd := exec.CommandContext(ctx, s.binary, "-test.list", "^(Test|Fuzz|Example)")
	cmd.Dir = s.Dir
	text, err := cmd.Output()
	if err != nil {
		return nil, fmt.Errorf("%w: %s", err, text)
	}
	b.spent += used(cmd)
	if used(cmd) > cheapest {
		return [][]string{nil}, nil
	}
	var out [][]string
	for name := range strings.FieldsSeq(string(text)) {
		out = append(out, []string{name})
	}
	return out, nil
}

// measure runs tests with nothing thrown; what fails is run once more.
func (b *bench) measure(ctx context.Context, s *suite, tests []string) (*unit, bool, error) {
	u := &unit{suite: s, tests: tests, reached: map[int]bool{}}
	if err := os.WriteFile(b.reach(), nil, 0o600); err != nil {
		return nil, false, err
	}
	before := b.spent
	end := b.run(ctx, u, nil, tests)
	cost := b.spent - before
	if !end.passed {
		end = b.run(ctx, u, nil, tests)
	}
	u.cost = cost
	numbers, err := os.ReadFile(b.reach())
	if err != nil {
		return nil, false, err
	}
	for word := range strings.FieldsSeq(string(numbers)) {
		number, err := strconv.Atoi(word)
		if err != nil {
			return nil, false, err
		}
		u.reached[number] = true
	}
	return u, end.passed, os.Remove(b.reach())
}

// ending is how a run of tests ended.
type ending struct {
	passed bool
	failed []string // tests, with their subtests: t/sub
	said   string
}

// failure is the line of a test that failed.
var failure = regexp.MustCompile(`(?m)^ *--- FAIL: (\S+) \(`)

// run runs tests of a unit with some switches thrown: all where none is named. They
// fail as well where they take four times as long as with nothing thrown: an
// endless loop is seen, whatever else the machine does.
func (b *bench) run(ctx context.Context, u *unit, thrown []*drawn, tests []string) ending {
	var numbers strings.Builder
	for _, d := range thrown {
		fmt.Fprintln(&numbers, d.number)
	}
	if err := os.WriteFile(b.thrown(), []byte(numbers.String()), 0o600); err != nil {
		return ending{said: err.Error()}
	}
	limit := b.limit
	if u.cost > 0 {
		limit = 4*u.cost + 5*time.Second
	}
	args := []string{"-c", fmt.Sprintf(`ulimit -t %.0f; exec "$@"`, limit.Seconds()), "sh", u.binary,
		"-test.timeout", b.limit.String()}
	if len(thrown) == 1 {
		args = append(args, "-test.failfast")
	}
	if len(tests) > 0 {
		args = append(args, "-test.run", pattern(tests))
	}
	cmd := exec.CommandContext(ctx, "sh", args...)
	cmd.Dir = u.Dir
	// What the tests build themselves is changed as well.
	cmd.Env = append(os.Environ(), "GOFLAGS="+os.Getenv("GOFLAGS")+" -overlay="+b.overlay)
	cmd.WaitDelay = time.Second
	var out bytes.Buffer
	cmd.Stdout, cmd.Stderr = &out, &out
	// What a test leaves open is no failure: only the status counts.
	if err := cmd.Run(); cmd.ProcessState == nil {
		return ending{said: err.Error()}
	}
	b.spent += used(cmd)
	end := ending{passed: cmd.ProcessState.Success(), said: out.String()}
	for _, found := range failure.FindAllStringSubmatch(end.said, -1) {
		end.failed = append(end.failed, found[1])
	}
	// A test that failed by its subtests is named by them.
	end.failed = slices.DeleteFunc(end.failed, func(test string) bool {
		return slices.ContainsFunc(end.failed, func(other string) bool { return strings.HasPrefix(other, test+"/") })
	})
	return end
}

// pattern of the tests and subtests with some names.
func pattern(tests []string) string {
	var out []string
	for _, test := range tests {
		var levels []string
		for _, level := range strings.Split(test, "/") {
			levels = append(levels, "^"+regexp.QuoteMeta(level)+"$")
		}
		out = append(out, strings.Join(levels, "/"))
	}
	return strings.Join(out, "|")
}

// used is the processor time of a command and of what it started.
func used(cmd *exec.Cmd) time.Duration {
	return cmd.ProcessState.UserTime() + cmd.ProcessState.SystemTime()
}
