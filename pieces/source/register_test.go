package source_test

import (
	"fmt"
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// root of the project, from here.
const root = "../.."

// pages lay out paper: their figures say how a page looks, nothing of a garment
// or of a cloth.
var pages = []string{"draft/steps", "fabric/marker"}

// link is how a comment or the head of a table names an entry.
var link = regexp.MustCompile(`\[source\.(\w+)\]`)

// use is any mention of an entry, in a comment or in code.
var use = regexp.MustCompile(`\bsource\.([A-Z]\w*)`)

// Every constant of a draft or of a rule of the cloth, every table of theirs,
// names an entry of the register.
func TestEveryFigureNamesItsSource(t *testing.T) {
	entries := register(t)
	for _, folder := range []string{"draft", "fabric", "pieces/found", "pieces/linework", "pieces/tidy",
		"pieces/tracing"} {
		walk(t, folder, ".go", func(path, text string) {
			folder := filepath.ToSlash(filepath.Dir(path))
			if strings.HasSuffix(path, "_test.go") || slices.Contains(pages, folder) {
				return
			}
			for _, bare := range figuresWithoutSource(t, path, text, entries) {
				t.Errorf("%s names no entry of the register in its comment", bare)
			}
		})
		walk(t, folder, ".csv", func(path, text string) {
			assert.Regexp(t, link, text, path)
		})
	}
}

// The finder finds.
func TestFigureWithoutSourceIsFound(t *testing.T) {
	found := figuresWithoutSource(t, "a.go", `package a

// Named all together [source.OwnChoice].
const (
	first  = 1
	second = 2.5
)

const (
	third  = 3 // [source.OwnChoice]
	fourth = 4 // bare
	name   = "no figure"
)

const counted = 1 + iota

// table of what there is.
var table = []struct{ mm float64 }{{15}}

// misspelt [source.OwnChoise].
var misspelt = 5

func f() int {
	const inside = 6
	return inside
}
`, []string{"OwnChoice"})
	assert.Equal(t, []string{"a.go:11 fourth", "a.go:18 table", "a.go:21 misspelt", "a.go:24 inside"}, found)
}

// Every link leads to an entry, and every entry is named by something.
func TestEveryEntryIsUsed(t *testing.T) {
	entries := register(t)
	used := map[string]bool{}
	for _, ending := range []string{".go", ".csv"} {
		walk(t, ".", ending, func(path, text string) {
			if filepath.Dir(path) == filepath.Join("pieces", "source") {
				return
			}
			for _, found := range link.FindAllStringSubmatch(text, -1) {
				assert.Contains(t, entries, found[1], "%s names [source.%s]", path, found[1])
			}
			for _, found := range use.FindAllStringSubmatch(text, -1) {
				used[found[1]] = true
			}
		})
	}
	for _, entry := range entries {
		assert.True(t, used[entry], "nothing names source.%s", entry)
	}
}

// figuresWithoutSource lists the constants and tables of a file that hold a
// number and whose comments name no entry: "file.go:12 name".
func figuresWithoutSource(t *testing.T, path, text string, entries []string) []string {
	t.Helper()
	files := token.NewFileSet()
	file, err := parser.ParseFile(files, path, text, parser.ParseComments)
	require.NoError(t, err)
	named := func(comments ...*ast.CommentGroup) bool {
		for _, comment := range comments {
			for _, found := range link.FindAllStringSubmatch(comment.Text(), -1) {
				if slices.Contains(entries, found[1]) {
					return true
				}
			}
		}
		return false
	}
	var out []string
	ast.Inspect(file, func(node ast.Node) bool {
		group, ok := node.(*ast.GenDecl)
		if !ok || !isFigure(file, group) || named(group.Doc) {
			return true
		}
		for _, each := range group.Specs {
			spec := each.(*ast.ValueSpec)
			if holdsNumber(spec) && !named(spec.Doc, spec.Comment) {
				out = append(out, fmt.Sprintf("%s:%d %s", path, files.Position(spec.Pos()).Line, spec.Names[0].Name))
			}
		}
		return true
	})
	return out
}

// isFigure says that a declaration is of constants, or of variables of the
// package.
func isFigure(file *ast.File, group *ast.GenDecl) bool {
	return group.Tok == token.CONST || group.Tok == token.VAR && slices.Contains(file.Decls, ast.Decl(group))
}

// holdsNumber says that a constant or a table is made of figures; those that
// iota numbers are names.
func holdsNumber(spec *ast.ValueSpec) bool {
	number, counted := false, false
	for _, value := range spec.Values {
		ast.Inspect(value, func(node ast.Node) bool {
			switch node := node.(type) {
			case *ast.BasicLit:
				number = number || node.Kind == token.INT || node.Kind == token.FLOAT
			case *ast.Ident:
				counted = counted || node.Name == "iota"
			}
			return true
		})
	}
	return number && !counted
}

// register lists the names of the entries: the variables of register.go.
func register(t *testing.T) []string {
	t.Helper()
	file, err := parser.ParseFile(token.NewFileSet(), "register.go", nil, 0)
	require.NoError(t, err)
	var out []string
	for _, declared := range file.Decls {
		for _, spec := range declared.(*ast.GenDecl).Specs {
			out = append(out, spec.(*ast.ValueSpec).Names[0].Name)
		}
	}
	require.NotEmpty(t, out)
	return out
}

// walk visits the files of a folder of the project with an ending; their paths
// begin at its root.
func walk(t *testing.T, folder, ending string, visit func(path, text string)) {
	t.Helper()
	require.NoError(t, filepath.WalkDir(filepath.Join(root, folder),
		func(path string, entry fs.DirEntry, err error) error {
			if err != nil || entry.IsDir() || filepath.Ext(path) != ending {
				return err
			}
			text, err := os.ReadFile(path)
			if err != nil {
				return err
			}
			short, err := filepath.Rel(root, path)
			visit(short, string(text))
			return err
		}))
}
