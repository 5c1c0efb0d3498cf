// Package typed reads packages with their types, for tests that look at the code.
package typed

import (
	"bytes"
	"encoding/json"
	"fmt"
	"go/ast"
	"go/importer"
	"go/parser"
	"go/token"
	"go/types"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
)

// Package is one without its tests.
type Package struct {
	// Path by which it is imported.
	Path  string
	Files []*ast.File
	Types *types.Package
	Info  *types.Info
	// From has the types of what it imports.
	From types.Importer
}

// listed is what go list says of a package.
type listed struct {
	ImportPath, Dir, Export string
	GoFiles                 []string
	DepOnly                 bool
}

// Packages of the patterns of go list, with the places of all their files. Errors: a
// package that does not compile.
func Packages(patterns ...string) ([]Package, *token.FileSet, error) {
	return PackagesIn("", patterns)
}

// PackagesIn is Packages of the module of a folder. What they are read from knows some
// others as well.
func PackagesIn(folder string, patterns []string, others ...string) ([]Package, *token.FileSet, error) {
	packages, err := list(folder, slices.Concat(patterns, others))
	if err != nil {
		return nil, nil, err
	}
	exports := map[string]string{}
	for _, p := range packages {
		exports[p.ImportPath] = p.Export
	}
	files := token.NewFileSet()
	from := importer.ForCompiler(files, "gc", func(path string) (io.ReadCloser, error) { return os.Open(exports[path]) })
	var out []Package
	for _, p := range packages {
		if p.DepOnly || len(p.GoFiles) == 0 || slices.Contains(others, p.ImportPath) {
			continue
		}
		found, err := read(files, p, from)
		if err != nil {
			return nil, nil, err
		}
		out = append(out, found)
	}
	return out, files, nil
}

func list(folder string, patterns []string) ([]listed, error) {
	command := exec.Command("go", append([]string{"list", "-export", "-deps", "-json"}, patterns...)...)
	command.Dir = folder
	command.Stderr = os.Stderr
	text, err := command.Output()
	if err != nil {
		return nil, fmt.Errorf("go list: %w", err)
	}
	var out []listed
	for decoder := json.NewDecoder(bytes.NewReader(text)); decoder.More(); {
		var p listed
		if err := decoder.Decode(&p); err != nil {
			return nil, err
		}
		out = append(out, p)
	}
	return out, nil
}

func read(files *token.FileSet, p listed, from types.Importer) (Package, error) {
	out := Package{Path: p.ImportPath, From: from, Info: &types.Info{
		Types: map[ast.Expr]types.TypeAndValue{}, Defs: map[*ast.Ident]types.Object{}, Uses: map[*ast.Ident]types.Object{},
	}}
	for _, name := range p.GoFiles {
		file, err := parser.ParseFile(files, filepath.Join(p.Dir, name), nil, parser.SkipObjectResolution)
		if err != nil {
			return out, err
		}
		out.Files = append(out.Files, file)
	}
	checked, err := (&types.Config{Importer: from}).Check(p.ImportPath, files, out.Files, out.Info)
	out.Types = checked
	return out, err
}
