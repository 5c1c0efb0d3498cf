// Package rounding finds what may give other last bits on another processor:
// products that a compiler may fuse with an addition, and functions of math that
// do.
//
// Go lets x*y + z skip the rounding of the product, and on some processors it
// does; only a conversion, float64(x*y) + z, forbids it. (The specification says
// that an assignment forbids it too, but Go 1.26 fuses across assignments and
// inlined calls.) Where a search branches on the sum, its layouts then differ
// from processor to processor. Products by a power of two are exact.
package rounding

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
)

// Fault is a product that is added, or subtracted, without being rounded, or a
// function that is not the same everywhere.
type Fault struct {
	// Begin and End are its place; End is after it.
	Begin, End token.Position
	// Function is its name; a product has none.
	Function string
}

// String says what to do, for the message of a test.
func (f Fault) String() string {
	if f.Function != "" {
		return fmt.Sprintf("%v: %s differs from processor to processor; take that of nest/portable", f.Begin, f.Function)
	}
	return fmt.Sprintf("%v: round this product by a conversion, float64(a*b)", f.Begin)
}

// listed is what go list says of a package.
type listed struct {
	ImportPath, Dir, Export string
	GoFiles                 []string
	DepOnly                 bool
}

// Faults returns those of the packages, without their tests, in the order of the
// files. The patterns are those of go list. Errors: a package that does not
// compile.
func Faults(patterns ...string) ([]Fault, error) {
	packages, err := list(patterns)
	if err != nil {
		return nil, err
	}
	exports := map[string]string{}
	for _, p := range packages {
		exports[p.ImportPath] = p.Export
	}
	files := token.NewFileSet()
	from := importer.ForCompiler(files, "gc", func(path string) (io.ReadCloser, error) { return os.Open(exports[path]) })
	var out []Fault
	for _, p := range packages {
		if p.DepOnly {
			continue
		}
		found, err := inPackage(files, p, from)
		if err != nil {
			return nil, err
		}
		out = append(out, found...)
	}
	return out, nil
}

func list(patterns []string) ([]listed, error) {
	command := exec.Command("go", append([]string{"list", "-export", "-deps", "-json"}, patterns...)...)
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

func inPackage(files *token.FileSet, p listed, from types.Importer) ([]Fault, error) {
	var parsed []*ast.File
	for _, name := range p.GoFiles {
		file, err := parser.ParseFile(files, filepath.Join(p.Dir, name), nil, parser.SkipObjectResolution)
		if err != nil {
			return nil, err
		}
		parsed = append(parsed, file)
	}
	info := &types.Info{
		Types: map[ast.Expr]types.TypeAndValue{}, Defs: map[*ast.Ident]types.Object{}, Uses: map[*ast.Ident]types.Object{},
	}
	if _, err := (&types.Config{Importer: from}).Check(p.ImportPath, files, parsed, info); err != nil {
		return nil, err
	}
	return newFinder(files, info).find(parsed), nil
}
