package main

import (
	"bytes"
	"cmp"
	"context"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
	"time"
)

// listed is what the go command says of a package.
type listed struct {
	ImportPath, Dir                    string
	GoFiles, TestGoFiles, XTestGoFiles []string
	Imports, TestImports, XTestImports []string
}

// floors are the packages of the module, and which of them import which.
type floors struct {
	folder string
	all    []listed
	chosen []listed // those to change
}

// readFloors lists the packages of a module; those to change are those of the
// patterns, all when there is none.
func readFloors(ctx context.Context, folder string, patterns []string) (*floors, error) {
	folder, err := filepath.Abs(folder)
	if err != nil {
		return nil, err
	}
	f := &floors{folder: folder}
	if f.all, err = f.list(ctx, "./..."); err != nil || len(patterns) == 0 {
		f.chosen = f.all
		return f, err
	}
	for _, pattern := range patterns {
		some, err := f.list(ctx, "./"+strings.TrimPrefix(pattern, "./"))
		if err != nil {
			return nil, err
		}
		f.chosen = append(f.chosen, some...)
	}
	return f, nil
}

func (f *floors) list(ctx context.Context, pattern string) ([]listed, error) {
	text, err := f.goes(ctx, "list", "-json", pattern)
	if err != nil {
		return nil, fmt.Errorf("%w: %s", err, text)
	}
	var out []listed
	for in := json.NewDecoder(bytes.NewReader(text)); ; {
		var p listed
		if err := in.Decode(&p); errors.Is(err, io.EOF) {
			return out, nil
		} else if err != nil {
			return nil, err
		}
		out = append(out, p)
	}
}

// goes runs the go command in the module, and gives what it prints.
func (f *floors) goes(ctx context.Context, args ...string) ([]byte, error) {
	cmd := exec.CommandContext(ctx, "go", args...)
	cmd.Dir = f.folder
	// An interrupt reaches the tests as well; what they leave open must not
	// keep this waiting.
	cmd.WaitDelay = time.Second
	return cmd.CombinedOutput()
}

// above lists the packages with tests that can see a change of one: itself
// first, then by how many imports away they are.
func (f *floors) above(path string) []string {
	away := map[string]int{path: 0}
	for changed := true; changed; {
		changed = false
		for _, p := range f.all {
			if d, ok := nearest(away, p.Imports); ok {
				if old, known := away[p.ImportPath]; !known || d+1 < old {
					away[p.ImportPath], changed = d+1, true
				}
			}
		}
	}
	steps := map[string]int{}
	var out []string
	for _, p := range f.all {
		if len(p.TestGoFiles)+len(p.XTestGoFiles) == 0 {
			continue
		}
		d, ok := away[p.ImportPath]
		if t, byTest := nearest(away, slices.Concat(p.TestImports, p.XTestImports)); byTest && (!ok || t+1 < d) {
			d, ok = t+1, true
		}
		if ok {
			steps[p.ImportPath], out = d, append(out, p.ImportPath)
		}
	}
	slices.SortStableFunc(out, func(a, b string) int { return cmp.Compare(steps[a], steps[b]) })
	return out
}

// nearest of some imports.
func nearest(away map[string]int, imports []string) (int, bool) {
	least, ok := 0, false
	for _, name := range imports {
		if d, known := away[name]; known && (!ok || d < least) {
			least, ok = d, true
		}
	}
	return least, ok
}

// outcome of a mutant.
type outcome struct {
	unbuilt  bool
	caughtBy string // package whose tests failed; empty when it survived
}

// try builds a mutant and runs the tests that can see it, until one fails.
func (f *floors) try(ctx context.Context, m mutant, limit time.Duration) (outcome, error) {
	folder, err := os.MkdirTemp("", "mutate")
	if err != nil {
		return outcome{}, err
	}
	defer os.RemoveAll(folder)
	overlay, err := m.overlay(folder)
	if err != nil {
		return outcome{}, err
	}
	if _, err := f.goes(ctx, "build", "-o", os.DevNull, "-overlay", overlay, m.of); err != nil {
		return outcome{unbuilt: true}, nil
	}
	for _, name := range f.above(m.of) {
		_, err := f.goes(ctx, "test", "-overlay", overlay, "-vet=off", "-failfast", "-timeout", limit.String(), name)
		if ctx.Err() != nil {
			return outcome{}, nil
		}
		if err != nil {
			return outcome{caughtBy: name}, nil
		}
	}
	return outcome{}, nil
}

// overlay writes the changed file and the overlay that puts it in place.
func (m mutant) overlay(folder string) (string, error) {
	source, err := os.ReadFile(m.file)
	if err != nil {
		return "", err
	}
	changed := filepath.Join(folder, filepath.Base(m.file))
	text := slices.Concat(source[:m.from], []byte(m.with), source[m.to:])
	if err := os.WriteFile(changed, text, 0o600); err != nil {
		return "", err
	}
	overlay, err := json.Marshal(map[string]any{"Replace": map[string]string{m.file: changed}})
	if err != nil {
		return "", err
	}
	path := filepath.Join(folder, "overlay.json")
	return path, os.WriteFile(path, overlay, 0o600)
}

// say a mutant: file:line and the change.
func (f *floors) say(m mutant) string {
	file, err := filepath.Rel(f.folder, m.file)
	if err != nil {
		file = m.file
	}
	if m.with == "" {
		return fmt.Sprintf("%s:%d: %s is left out", file, m.line, m.was)
	}
	return fmt.Sprintf("%s:%d: %s becomes %s", file, m.line, m.was, m.with)
}
