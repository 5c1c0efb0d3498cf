package seams_test

import (
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// searching are the functions that look into words.
var searching = []string{
	"Contains", "ContainsAny", "ContainsFunc", "Count", "Cut", "CutPrefix", "CutSuffix", "EqualFold", "Fields",
	"FieldsFunc",
	"HasPrefix", "HasSuffix", "Index", "IndexAny", "IndexByte", "IndexFunc", "LastIndex", "LastIndexByte", "Replace",
	"ReplaceAll", "Split", "SplitN", "SplitSeq", "FieldsSeq", "TrimPrefix", "TrimSuffix", "TrimLeft", "TrimRight",
	"Trim", "TrimFunc",
	"Match", "MatchString", "MustCompile", "Compile",
}

// readers are the files, or folders, that may look into words, each with what it reads. Names of
// edges, seams, pieces, roles and marks are compared as values everywhere else.
var readers = map[string]string{
	"draft/construct/sheet.go":              "the places of a step that lengths are set into",
	"draft/construct/words.go":              "fixed lengths in sentences, to word them in inches",
	"draft/internal/drafttest/drafttest.go": "the places of a step that lengths are set into",
	"draft/size.go":                         "the head of a size table",
	"draft/steps/nest.go":                   "a length as worded, to leave its unit out",
	"draft/steps/proof.go":                  "the steps as they are printed, to prove them",
	"fabric/check/chalked.go":               "where a table says that a piece lies, to prove it",
	"fabric/marker/proof.go":                "the table of a plan as it is printed, to prove it",
	"draft/steps/proofnest.go":              "places and lengths as worded, to prove them",
	"fabric/marker/table.go":                "a phrase of its own, to shorten it",
	"fabric/marker/words.go":                "a length as worded, to leave its unit out",
	"fabric/quote": "prices, and a quote as it is printed, to prove it; no names of " +
		"edges or marks",
	"pieces/drawing/font.go":   "words, to break them into lines",
	"pieces/drawing/pdf.go":    "what a library calls a filled area",
	"pieces/language":          "formats and numbers as worded, for the way of a language",
	"pieces/language/spoken":   "numbers as worded, to compare them",
	"pieces/marks":             "the names of marks: the one place",
	"pieces/measure/format.go": "a number as worded, to leave its zeros out",
	"pieces/measure/number.go": "numbers",
	"pieces/measure/parse.go":  "lengths",
	"pieces/paper/paper.go":    "the size of a paper",
	"pieces/dxf":               "the text of DXF files",
	"pieces/found/complete.go": "the category of a piece, as a file words it",
	"pieces/linework/given.go": "names in drawings, to tell those of people from those of programs",
	"pieces/pdfin":             "the text of PDF files",
	"pieces/svg/read.go":       "numbers in the attributes of a drawing",
	"pieces/svgin":             "the text of SVG files",
	"pieces/seams/called.go":   "the names of seams: the one place",
	"pieces/tidy":              "the labels of sheets, and names of layers in drawings",
	"pieces/text/text.go":      "any text, to make it clean",
}

// Names are values: nothing in these folders finds out what an edge, a seam, a piece
// or a mark is by looking into the words that people call it by.
func TestNamesAreNotSearched(t *testing.T) {
	found := map[string]bool{}
	for _, folder := range []string{"draft", "pieces", "fabric"} {
		require.NoError(t, fs.WalkDir(os.DirFS("../.."), folder, func(path string, entry fs.DirEntry, err error) error {
			if err != nil || entry.IsDir() || filepath.Ext(path) != ".go" || strings.HasSuffix(path, "_test.go") {
				return err
			}
			text, err := os.ReadFile(filepath.Join("../..", path))
			for _, place := range searches(t, path, string(text)) {
				reader := path
				if readers[filepath.Dir(path)] != "" {
					reader = filepath.Dir(path)
				}
				found[reader] = true
				if readers[reader] == "" {
					t.Errorf("%s looks into words: compare values, or say what it reads", place)
				}
			}
			return err
		}))
	}
	for path := range readers {
		assert.True(t, found[path], "%s reads nothing any more: strike it off", path)
	}
}

// searches are the places of a file that look into words: calls that search, and
// comparisons with words that are written there.
func searches(t *testing.T, path, text string) []string {
	files := token.NewFileSet()
	file, err := parser.ParseFile(files, path, text, 0)
	require.NoError(t, err)
	var out []string
	add := func(node ast.Node) { out = append(out, files.Position(node.Pos()).String()) }
	ast.Inspect(file, func(node ast.Node) bool {
		switch node := node.(type) {
		case *ast.SelectorExpr:
			if of, ok := node.X.(*ast.Ident); ok && (of.Name == "strings" || of.Name == "regexp") &&
				slices.Contains(searching, node.Sel.Name) {
				add(node)
			}
		case *ast.BinaryExpr:
			if (node.Op == token.EQL || node.Op == token.NEQ) && (isWords(node.X) || isWords(node.Y)) {
				add(node)
			}
		case *ast.CaseClause:
			if slices.ContainsFunc(node.List, isWords) {
				add(node)
			}
		}
		return true
	})
	return out
}

// isWords says that an expression is words written out.
func isWords(e ast.Expr) bool {
	literal, ok := e.(*ast.BasicLit)
	if !ok || literal.Kind != token.STRING {
		return false
	}
	words, err := strconv.Unquote(literal.Value)
	return err == nil && words != ""
}

func TestSearchIsFound(t *testing.T) {
	found := searches(t, "a.go", `package a

import "strings"

func a(piece Piece) bool {
	switch piece.Name {
	case "sleeve":
		return true
	case "":
		return false
	}
	return strings.HasPrefix(piece.Name, "front") || piece.Name == "yoke" || piece.Name != "" || piece.Role == role.Yoke
}
`)
	assert.Equal(t, []string{"a.go:7:2", "a.go:12:9", "a.go:12:51"}, found)
}
