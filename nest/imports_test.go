package nest

import (
	"go/ast"
	"go/parser"
	"go/token"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

const module = "ellwand/"

// sources parses the Go files of a package of ours, tests left out.
func sources(t *testing.T, path string) []*ast.File {
	t.Helper()
	folder := filepath.Join("..", strings.TrimPrefix(path, module))
	entries, err := os.ReadDir(folder)
	require.NoError(t, err)
	var files []*ast.File
	for _, entry := range entries {
		name := entry.Name()
		if !strings.HasSuffix(name, ".go") || strings.HasSuffix(name, "_test.go") {
			continue
		}
		file, err := parser.ParseFile(token.NewFileSet(), filepath.Join(folder, name), nil, parser.SkipObjectResolution)
		require.NoError(t, err)
		files = append(files, file)
	}
	require.NotEmpty(t, files, path)
	return files
}

// reached lists the packages of ours that a package imports, directly or through
// others.
func reached(t *testing.T, path string) []string {
	t.Helper()
	seen := map[string]bool{}
	queue := []string{path}
	for len(queue) > 0 {
		at := queue[0]
		queue = queue[1:]
		for _, file := range sources(t, at) {
			for _, spec := range file.Imports {
				name, err := strconv.Unquote(spec.Path.Value)
				require.NoError(t, err)
				if strings.HasPrefix(name, module) && !seen[name] {
					seen[name] = true
					queue = append(queue, name)
				}
			}
		}
	}
	return slices.Sorted(maps.Keys(seen))
}

// A layout is judged by code that cannot reach the search, and nest knows
// nothing of cloth.
func TestImports(t *testing.T) {
	require.Empty(t, reached(t, "ellwand/nest/portable"))
	require.Equal(t, []string{"ellwand/nest/portable"}, reached(t, "ellwand/nest/layout"))
	require.Equal(t, []string{"ellwand/nest/layout", "ellwand/nest/portable"}, reached(t, "ellwand/nest/verify"))
	require.Equal(
		t,
		[]string{"ellwand/nest/bound/internal/proof", "ellwand/nest/layout", "ellwand/nest/portable"},
		reached(t, "ellwand/nest/bound"),
	)
	all := reached(t, "ellwand/nest")
	require.Contains(t, all, "ellwand/nest/internal/search")
	for _, path := range all {
		require.True(t, strings.HasPrefix(path, "ellwand/nest/"), path)
	}
}

// Of the functions and methods of nest/layout, those that decide geometry are
// used by the search or by what judges it, never by both.
func TestVerifyAndSearchShareNoGeometry(t *testing.T) {
	shared := map[string]bool{
		"Check":    true, // whether the problem makes sense, before either begins
		"ItemName": true,
	}
	judged := selected(t, "ellwand/nest/verify")
	searched := selected(t, "ellwand/nest")
	for _, path := range reached(t, "ellwand/nest") {
		if strings.HasPrefix(path, "ellwand/nest/internal/") {
			maps.Copy(searched, selected(t, path))
		}
	}
	compared := 0
	for _, file := range sources(t, "ellwand/nest/layout") {
		for _, decl := range file.Decls {
			f, ok := decl.(*ast.FuncDecl)
			if !ok || !f.Name.IsExported() || shared[f.Name.Name] || ofRegion(f) {
				continue
			}
			compared++
			name := f.Name.Name
			require.False(t, judged[name] && searched[name], "%s decides both for the search and for its proof", name)
		}
	}
	require.Greater(t, compared, 5)
	require.True(t, judged["NewRegion"])
	require.False(t, searched["NewRegion"] || searched["Region"], "the search has a geometry of its own")
}

// selected are the names after a dot in the sources of a package.
func selected(t *testing.T, path string) map[string]bool {
	t.Helper()
	names := map[string]bool{}
	for _, file := range sources(t, path) {
		ast.Inspect(file, func(n ast.Node) bool {
			if s, ok := n.(*ast.SelectorExpr); ok {
				names[s.Sel.Name] = true
			}
			return true
		})
	}
	return names
}

// ofRegion reports whether a function is a method of Region: none of those can
// be called by what cannot make one.
func ofRegion(f *ast.FuncDecl) bool {
	if f.Recv == nil {
		return false
	}
	star, ok := f.Recv.List[0].Type.(*ast.StarExpr)
	if !ok {
		return false
	}
	name, ok := star.X.(*ast.Ident)
	return ok && name.Name == "Region"
}
