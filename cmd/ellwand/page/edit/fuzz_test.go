package edit

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"

	"ellwand/testdata/sample"
)

// Whatever a file holds, a value that is set can be read again, one that is removed is
// gone, and what cannot be done leaves nothing half done.
func FuzzSet(f *testing.F) {
	sample.MinimizeBriefly()
	jobs, err := filepath.Glob("../../../../testdata/*.yaml")
	require.NoError(f, err)
	for _, job := range jobs {
		text, err := os.ReadFile(job)
		require.NoError(f, err)
		f.Add(string(text), "41,5 # x", "garments", 0, "name")
	}
	f.Add(handwritten, "\"", "quote", 0, "terms")
	f.Add("a: {b: [1, 'it''s', \"x\\\"y\"], c: }\n? d\n: e\n", "- z", "a", 1, "b")
	f.Add("a: &x 1\nb: *x\nc: |+\n  t\n\n", "null", "c", 0, "d")
	f.Fuzz(func(t *testing.T, text, value, key string, entry int, inner string) {
		for _, at := range [][]any{{key}, {key, inner}, {key, entry & 3}, {key, entry & 3, inner}} {
			if key == "" || inner == "" || value == "" {
				return
			}
			out, err := Set(text, path(at...), Text(value), nil)
			if err != nil {
				continue
			}
			_, found := Get(out, path(at...))
			if trimmed := read(value); trimmed != "" {
				require.True(t, found, "%q", out)
			}
			gone, err := Unset(out, path(at...))
			if err == nil && len(at) == 1 {
				_, found = Get(gone, path(at...))
				require.False(t, found, "%q", gone)
			}
		}
	})
}
