package app

import (
	"go/parser"
	"go/token"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// forbidden are the imports by which a room of cmd/ellwand would reach up: to
// flags, to the screen, to files.
var forbidden = map[string][]string{
	".":       {"github.com/spf13/cobra", "cmd/ellwand/screen", "cmd/ellwand/report", "cmd/ellwand/files", "go-pretty"},
	"store":   {"github.com/spf13/cobra", "cmd/ellwand/"},
	"packing": {"github.com/spf13/cobra", "cmd/ellwand/", "ellwand/fabric", "ellwand/draft"},
	"../job": {"github.com/spf13/cobra", "cmd/ellwand/app", "cmd/ellwand/words", "cmd/ellwand/report",
		"cmd/ellwand/screen",
		"cmd/ellwand/files", "cmd/ellwand/failure"}, // the limits are all that it takes from there
	"../words": {"github.com/spf13/cobra", "cmd/ellwand/screen", "cmd/ellwand/report", "cmd/ellwand/files",
		"go-pretty"},
	"../report":      {"github.com/spf13/cobra", "cmd/ellwand/screen", "cmd/ellwand/files", "go-pretty"},
	"../screen":      {"github.com/spf13/cobra", "cmd/ellwand/files"},
	"../files":       {"github.com/spf13/cobra", "cmd/ellwand/app", "cmd/ellwand/screen"},
	"../../../draft": {"ellwand/cmd", "ellwand/fabric", "ellwand/nest"},
}

// The rooms import one way: commands, then screen and report, words, app, job.
func TestImportsPointOneWay(t *testing.T) {
	for folder, names := range forbidden {
		files, err := filepath.Glob(filepath.Join(folder, "*.go"))
		require.NoError(t, err)
		require.NotEmpty(t, files, folder)
		for _, path := range files {
			if strings.HasSuffix(path, "_test.go") {
				continue
			}
			for _, imported := range importsOf(t, path) {
				for _, name := range names {
					assert.NotContains(t, imported, name, path)
				}
			}
		}
	}
}

func importsOf(t *testing.T, path string) []string {
	t.Helper()
	text, err := os.ReadFile(path)
	require.NoError(t, err)
	file, err := parser.ParseFile(token.NewFileSet(), path, text, parser.ImportsOnly)
	require.NoError(t, err)
	var out []string
	for _, spec := range file.Imports {
		name, err := strconv.Unquote(spec.Path.Value)
		require.NoError(t, err)
		out = append(out, name)
	}
	return out
}
