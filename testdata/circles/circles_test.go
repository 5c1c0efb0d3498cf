package circles

import (
	"io/fs"
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// The files of every package refer one way, so that each can be read after those that it
// uses.
func TestFilesReferOneWay(t *testing.T) {
	for _, room := range []string{"cmd", "draft", "fabric", "nest", "pieces"} {
		require.NoError(t, fs.WalkDir(os.DirFS("../.."), room, func(path string, entry fs.DirEntry, err error) error {
			if err != nil || !entry.IsDir() {
				return err
			}
			if entry.Name() == "testdata" {
				return fs.SkipDir
			}
			circle, err := Of(filepath.Join("../..", path))
			assert.Empty(t, circle, "%s: these files refer to each other in a circle", path)
			return err
		}))
	}
}

func TestCircleIsFound(t *testing.T) {
	folder := t.TempDir()
	write := func(name, text string) {
		require.NoError(t, os.WriteFile(filepath.Join(folder, name), []byte("package a\n"+text), 0o600))
	}
	circle := func() []string {
		found, err := Of(folder)
		require.NoError(t, err)
		return found
	}
	assert.Empty(t, circle())
	write("a.go", "import \"b\"\ntype A struct{ first b.B }\nfunc (a A) all() int { return a.some() }")
	write("b.go", "func (a A) some() int { first := 1; return first }")
	assert.Equal(t, []string{"a.go", "b.go"}, circle())
	write("a.go", "type A struct{ first int }")
	assert.Empty(t, circle())
	write("c.go", "func c(a A) int { return a.first + d }")
	write("d.go", "var d = e()")
	write("e.go", "func e() int { return c(A{}) }")
	assert.Equal(t, []string{"c.go", "d.go", "e.go"}, circle())
	write("e.go", "func e( {")
	_, err := Of(folder)
	assert.Error(t, err)
	_, err = Of(filepath.Join(folder, "missing"))
	assert.Error(t, err)
}
