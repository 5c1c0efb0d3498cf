// Package circles finds files of a package that refer to each other in a circle: one
// file uses what another declares, and so on back to the first.
package circles

import (
	"cmp"
	"go/ast"
	"go/parser"
	"go/token"
	"go/types"
	"os"
	"path/filepath"
	"slices"
	"strings"
)

// Of is the first circle of files in a folder, their names in order; nil where there is
// none, or no package. Files of tests are left out.
func Of(folder string) ([]string, error) {
	files, parsed, err := parse(folder)
	if err != nil || len(parsed) == 0 {
		return nil, err
	}
	uses := map[string][]string{}
	for _, use := range references(files, parsed) {
		if from, to := use[0], use[1]; from != to && !slices.Contains(uses[from], to) {
			uses[from] = append(uses[from], to)
		}
	}
	for _, to := range uses {
		slices.Sort(to)
	}
	return firstCircle(uses), nil
}

func parse(folder string) (*token.FileSet, []*ast.File, error) {
	entries, err := os.ReadDir(folder)
	if err != nil {
		return nil, nil, err
	}
	files := token.NewFileSet()
	var parsed []*ast.File
	for _, entry := range entries {
		if filepath.Ext(entry.Name()) != ".go" || strings.HasSuffix(entry.Name(), "_test.go") {
			continue
		}
		file, err := parser.ParseFile(files, filepath.Join(folder, entry.Name()), nil, parser.SkipObjectResolution)
		if err != nil {
			return nil, nil, err
		}
		parsed = append(parsed, file)
	}
	return files, parsed, nil
}

// nothing stands for what a package imports: to tell its own declarations apart, none of
// that needs to be known.
type nothing struct{}

func (nothing) Import(path string) (*types.Package, error) {
	empty := types.NewPackage(path, filepath.Base(path))
	empty.MarkComplete()
	return empty, nil
}

// references are the files that use something, each with the file that declares it.
func references(files *token.FileSet, parsed []*ast.File) [][2]string {
	info := &types.Info{Uses: map[*ast.Ident]types.Object{}}
	// What is imported is unknown, so errors are expected.
	checker := types.Config{Importer: nothing{}, Error: func(error) {}}
	of, _ := checker.Check(parsed[0].Name.Name, files, parsed, info)
	file := func(at token.Pos) string { return filepath.Base(files.Position(at).Filename) }
	var out [][2]string
	for name, object := range info.Uses {
		if object.Pkg() == of && isShared(object, of) {
			out = append(out, [2]string{file(name.Pos()), file(object.Pos())})
		}
	}
	return out
}

// isShared says that other files may use what is declared: it belongs to the package, or
// is a field or a method of a type.
func isShared(object types.Object, of *types.Package) bool {
	switch object := object.(type) {
	case *types.PkgName:
		return false
	case *types.Func:
		return true
	case *types.Var:
		return object.IsField() || object.Parent() == of.Scope()
	}
	return object.Parent() == of.Scope()
}

// firstCircle walks the uses of each file in turn, depth first.
func firstCircle(uses map[string][]string) []string {
	var path, names []string
	done := map[string]bool{}
	var walk func(file string) []string
	walk = func(file string) []string {
		if at := slices.Index(path, file); at >= 0 {
			return slices.Clone(path[at:])
		}
		if done[file] {
			return nil
		}
		path = append(path, file)
		for _, next := range uses[file] {
			if circle := walk(next); circle != nil {
				return circle
			}
		}
		path = path[:len(path)-1]
		done[file] = true
		return nil
	}
	for file := range uses {
		names = append(names, file)
	}
	slices.SortFunc(names, cmp.Compare[string])
	for _, file := range names {
		if circle := walk(file); circle != nil {
			return circle
		}
	}
	return nil
}
