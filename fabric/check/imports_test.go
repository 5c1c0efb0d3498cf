package check_test

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

// reached adds the packages of ours that a package imports, directly or through
// others.
func reached(t *testing.T, path string, seen map[string]bool) {
	files, err := filepath.Glob(filepath.Join("../..", strings.TrimPrefix(path, "ellwand/"), "*.go"))
	require.NoError(t, err)
	require.NotEmpty(t, files, path)
	for _, name := range files {
		if strings.HasSuffix(name, "_test.go") {
			continue
		}
		text, err := os.ReadFile(name)
		require.NoError(t, err)
		file, err := parser.ParseFile(token.NewFileSet(), name, text, parser.ImportsOnly)
		require.NoError(t, err)
		for _, spec := range file.Imports {
			next, err := strconv.Unquote(spec.Path.Value)
			require.NoError(t, err)
			if strings.HasPrefix(next, "ellwand/") && !seen[next] {
				seen[next] = true
				reached(t, next, seen)
			}
		}
	}
}

// The proof of a lay reaches data only: nothing that makes plans, and none of the
// geometry or the amounts that plans are made with.
func TestProofReachesNoPlanner(t *testing.T) {
	direct, all := map[string]bool{}, map[string]bool{}
	reached(t, "ellwand/fabric/check", all)
	for path := range all {
		for _, forbidden := range []string{"fabric/rules", "fabric/plan", "fabric/bed", "fabric/purchase", "fabric/remnant",
			"nest/bound", "nest/internal"} {
			assert.NotContains(t, path, forbidden)
		}
		assert.NotEqual(t, "ellwand/nest", path)
	}
	files, err := filepath.Glob("*.go")
	require.NoError(t, err)
	for _, name := range files {
		if strings.HasSuffix(name, "_test.go") {
			continue
		}
		file, err := parser.ParseFile(token.NewFileSet(), name, nil, parser.ImportsOnly)
		require.NoError(t, err)
		for _, spec := range file.Imports {
			if next, _ := strconv.Unquote(spec.Path.Value); strings.HasPrefix(next, "ellwand/") {
				direct[next] = true
			}
		}
	}
	for path := range direct {
		assert.Contains(t, []string{"ellwand/fabric/cloth", "ellwand/fabric/lay", "ellwand/pieces", "ellwand/pieces/marks",
			"ellwand/pieces/measure", "ellwand/pieces/seams", "ellwand/nest/layout", "ellwand/nest/verify"}, path)
	}
}
