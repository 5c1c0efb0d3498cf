package files

import (
	"errors"
	"io"
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func saying(s string) func(io.Writer) error {
	return func(w io.Writer) error { _, err := io.WriteString(w, s); return err }
}

// When one file cannot be made, none is: neither new ones, nor parts, nor
// temporary files, and what was there stays.
func TestSetWriteAllOrNothing(t *testing.T) {
	folder := t.TempDir()
	kept := filepath.Join(folder, "kept.pdf")
	require.NoError(t, os.WriteFile(kept, []byte("before"), 0o600))
	files := Set{Force: true}
	require.NoError(t, files.Add(kept, saying("after")))
	require.NoError(t, files.Add(filepath.Join(folder, "new.pdf"), func(io.Writer) error { return errors.New("no ink") }))
	assert.ErrorContains(t, files.Commit(), "no ink")
	names, err := os.ReadDir(folder)
	require.NoError(t, err)
	require.Len(t, names, 1)
	content, err := os.ReadFile(kept)
	require.NoError(t, err)
	assert.Equal(t, "before", string(content))
}

// Of the folders that were made for files that could not be written nothing stays; one
// that was there does, and so does what else is in one.
func TestFoldersOfAFailedWriteAreRemoved(t *testing.T) {
	folder := t.TempDir()
	require.NoError(t, os.Mkdir(filepath.Join(folder, "there"), 0o700))
	files := Set{}
	require.NoError(t, files.Add(filepath.Join(folder, "new", "deep", "a.svg"), saying("a")))
	require.NoError(t, files.Add(filepath.Join(folder, "there", "new", "b.svg"), saying("b")))
	require.NoError(t, files.Add(filepath.Join(folder, "other", "c.svg"), func(io.Writer) error {
		require.NoError(t, os.WriteFile(filepath.Join(folder, "other", "hers.txt"), nil, 0o600))
		return errors.New("no ink")
	}))
	require.ErrorContains(t, files.Commit(), "no ink")
	assert.NoDirExists(t, filepath.Join(folder, "new"))
	assert.NoDirExists(t, filepath.Join(folder, "there", "new"))
	assert.DirExists(t, filepath.Join(folder, "there"))
	assert.FileExists(t, filepath.Join(folder, "other", "hers.txt"))
}

func TestSetCommit(t *testing.T) {
	folder := t.TempDir()
	files := Set{}
	path := filepath.Join(folder, "deep", "er", "a.txt")
	require.NoError(t, files.Add(path, saying("a")))
	require.NoError(t, files.Commit())
	content, err := os.ReadFile(path)
	require.NoError(t, err)
	assert.Equal(t, "a", string(content))
}

func TestSetRefuse(t *testing.T) {
	folder := t.TempDir()
	there := filepath.Join(folder, "there.txt")
	require.NoError(t, os.WriteFile(there, nil, 0o600))
	assert.ErrorContains(t, (&Set{}).Check(there), "add --force")
	assert.NoError(t, (&Set{Force: true}).Check(there))
	assert.ErrorContains(t, (&Set{Force: true, Input: there}).Check(there), "is the file that is read")
	assert.ErrorContains(t, (&Set{Force: true}).Check(folder), "is a folder")
	assert.ErrorContains(t, (&Set{}).Check(filepath.Join(there, "x")), "is a file, not a folder")
	twice := Set{}
	require.NoError(t, twice.Add(filepath.Join(folder, "a"), saying("")))
	assert.ErrorContains(t, twice.Add(filepath.Join(folder, "a"), saying("")), "two results would go to the same file")
}
