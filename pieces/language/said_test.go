package language_test

import (
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// sayers take the words of a sentence in English and in German.
var sayers = []string{"Say", "Its", "Refuse", "Both"}

// ownSayers are the like of single packages.
var ownSayers = map[string][]string{
	"strict": {"fault", "Fault"}, "job": {"fault", "ask"}, "patternfile": {"Fault"}, "draft": {"warnf"},
	"words": {"always", "alwaysFaulty", "ofEdge", "ofNumber", "ofDart", "ofLength", "ofFlaw", "ofReadings",
		"callTask", "ofDrawing",
		"quoting", "sized"},
	"measure": {"ofPart", "ofNone"},
}

// Every sentence stands in both languages: other words, with the same values.
func TestEverySentenceIsSaidInBothLanguages(t *testing.T) {
	said := 0
	root := filepath.Join("..", "..")
	require.NoError(t, filepath.WalkDir(root, func(path string, entry fs.DirEntry, err error) error {
		if err != nil || entry.IsDir() || !strings.HasSuffix(path, ".go") || strings.HasSuffix(path, "_test.go") {
			return err
		}
		files := token.NewFileSet()
		file, err := parser.ParseFile(files, path, nil, 0)
		require.NoError(t, err)
		ast.Inspect(file, func(n ast.Node) bool {
			if call, is := n.(*ast.CallExpr); is && isSayer(file.Name.Name, call.Fun) {
				said += inBoth(t, files.Position(call.Pos()).String(), call)
			}
			return true
		})
		return nil
	}))
	require.Greater(t, said, 500)
}

func isSayer(home string, called ast.Expr) bool {
	of, from := "", home
	switch one := called.(type) {
	case *ast.Ident:
		of = one.Name
	case *ast.SelectorExpr:
		of = one.Sel.Name
		if name, is := one.X.(*ast.Ident); is {
			from = name.Name
		}
	}
	if from == "construct" && of == "Say" || home == "language" { // the first is for paper, in English
		return false
	}
	return slices.Contains(sayers, of) || slices.Contains(ownSayers[home], of)
}

// inBoth looks at the words of one call; it counts those that have some.
func inBoth(t *testing.T, where string, call *ast.CallExpr) int {
	at := slices.IndexFunc(call.Args, func(e ast.Expr) bool { _, is := textOf(e); return is })
	if at < 0 {
		return 0
	}
	inEnglish, _ := textOf(call.Args[at])
	if len(call.Args) == at+1 {
		assert.Fail(t, "there is no German", "%s: %q", where, inEnglish)
		return 0
	}
	inGerman, is := textOf(call.Args[at+1])
	if !assert.True(t, is, "%s: there is no German of %q", where, inEnglish) {
		return 0
	}
	if len(letters.FindAllString(verbs.ReplaceAllString(inEnglish, ""), -1)) > 3 {
		assert.NotEqual(t, inEnglish, inGerman, where)
	}
	assert.Equal(t, valuesIn(inEnglish), valuesIn(inGerman), "%s: %q and %q", where, inEnglish, inGerman)
	return 1
}

var (
	letters = regexp.MustCompile(`\pL`)
	verbs   = regexp.MustCompile(`%(?:\[(\d+)\])?[.\d*]*[a-zA-Z]`)
)

// valuesIn a format, by their numbers, each once.
func valuesIn(format string) []int {
	var out []int
	next := 1
	for _, verb := range verbs.FindAllStringSubmatch(strings.ReplaceAll(format, "%%", ""), -1) {
		if verb[1] != "" {
			next, _ = strconv.Atoi(verb[1])
		}
		out = append(out, next)
		next++
	}
	slices.Sort(out)
	return slices.Compact(out)
}

// textOf an expression of string literals alone.
func textOf(e ast.Expr) (string, bool) {
	switch one := e.(type) {
	case *ast.BasicLit:
		text, err := strconv.Unquote(one.Value)
		return text, err == nil && one.Kind == token.STRING
	case *ast.BinaryExpr:
		left, isLeft := textOf(one.X)
		right, isRight := textOf(one.Y)
		return left + right, isLeft && isRight
	}
	return "", false
}
