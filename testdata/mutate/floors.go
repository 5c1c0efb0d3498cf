package main

import (
	"bytes"
	"context"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"os/exec"
	"path/filepath"
	"slices"
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
}

// readFloors lists the packages of a module.
func readFloors(ctx context.Context, folder string) (*floors, error) {
	folder, err := filepath.Abs(folder)
	if err != nil {
		return nil, err
	}
	f := &floors{folder: folder}
	f.all, err = f.list(ctx, "./...")
	return f, err
}

func (p listed) tested() bool { return len(p.TestGoFiles)+len(p.XTestGoFiles) > 0 }

func (f *floors) list(ctx context.Context, pattern string) ([]listed, error) {
	text, err := f.goes(ctx, "list", "-json", pattern)
	if err != nil {
		return nil, err
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

// goes runs the go command in the module, and gives what it prints; not what it says
// beside that, such as the modules that it fetches on a new machine.
func (f *floors) goes(ctx context.Context, args ...string) ([]byte, error) {
	var beside bytes.Buffer
	cmd := exec.CommandContext(ctx, "go", args...)
	cmd.Dir = f.folder
	cmd.Stderr = &beside
	text, err := cmd.Output()
	if err != nil {
		return nil, fmt.Errorf("%w: %s", err, beside.Bytes())
	}
	return text, nil
}

// above are the packages that import one, however many others stand between, and it
// itself: by their code or by their tests.
func (f *floors) above(path string) map[string]bool {
	above := map[string]bool{path: true}
	imports := func(names []string) bool {
		return slices.ContainsFunc(names, func(name string) bool { return above[name] })
	}
	for found := true; found; {
		found = false
		for _, p := range f.all {
			if !above[p.ImportPath] && imports(p.Imports) {
				above[p.ImportPath], found = true, true
			}
		}
	}
	byTests := map[string]bool{}
	for _, p := range f.all {
		byTests[p.ImportPath] = above[p.ImportPath] || imports(p.TestImports) || imports(p.XTestImports)
	}
	return byTests
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
