package folder

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/cmd/ellwand/limit"
)

func TestNamesThatAreNoFilesAreRefused(t *testing.T) {
	for _, name := range []string{"", ".", "..", "../x.yaml", "a/b.yaml", `a\b.yaml`, "/etc/passwd", ".hidden.yaml",
		"a.yaml ",
		"CON", "con.yaml", "nul.txt.yaml", "COM1.yaml", "lpt¹.yaml", "NUL .yaml", "a:b.yaml", "a\x00.yaml", "a\n.yaml",
		"x."} {
		assert.Error(t, Named(name), "%q", name)
	}
	for _, name := range []string{"blouse.yaml", "Kleid für Imke 2.yaml", "console.yaml", "com.yaml", "a.b.yml"} {
		assert.NoError(t, Named(name), "%q", name)
	}
}

func TestNothingOutsideIsReadOrWritten(t *testing.T) {
	outside := filepath.Join(t.TempDir(), "secret.yaml")
	require.NoError(t, os.WriteFile(outside, []byte("secret"), 0o600))
	inside := t.TempDir()
	require.NoError(t, os.Symlink(outside, filepath.Join(inside, "link.yaml")))
	require.NoError(t, os.Symlink(filepath.Dir(outside), filepath.Join(inside, "way")))
	f, err := Open(inside)
	require.NoError(t, err)
	defer f.Close()
	for _, name := range []string{"link.yaml", "way/secret.yaml", "../" + filepath.Base(filepath.Dir(outside)) +
		"/secret.yaml", outside} {
		_, err := f.Read(name, limit.JobSize)
		assert.Error(t, err, name)
		assert.Error(t, f.Write(name, []byte("x")), name)
	}
	names, err := f.Names(".yaml")
	require.NoError(t, err)
	assert.Empty(t, names)
	text, err := os.ReadFile(outside)
	require.NoError(t, err)
	assert.Equal(t, "secret", string(text))
}

func TestFilesAreWrittenWhole(t *testing.T) {
	f, err := Open(t.TempDir())
	require.NoError(t, err)
	defer f.Close()
	require.NoError(t, f.Write("a.yaml", []byte("one")))
	require.NoError(t, os.Chmod(f.PathOf("a.yaml"), 0o600))
	require.NoError(t, f.Write("a.yaml", []byte("two")))
	got, err := f.Read("a.yaml", limit.JobSize)
	require.NoError(t, err)
	assert.Equal(t, "two", string(got))
	info, err := f.Stat("a.yaml")
	require.NoError(t, err)
	assert.Equal(t, os.FileMode(0o600), info.Mode().Perm())
	require.NoError(t, os.Chmod(f.PathOf("a.yaml"), 0o400))
	assert.ErrorContains(t, f.Write("a.yaml", []byte("three")), "may not be written")
	entries, err := os.ReadDir(f.Path())
	require.NoError(t, err)
	assert.Len(t, entries, 1)
}

func TestFilesThatChangedAreLeft(t *testing.T) {
	f, err := Open(t.TempDir())
	require.NoError(t, err)
	defer f.Close()
	require.NoError(t, f.Replace("a.yaml", nil, []byte("one")))
	require.NoError(t, f.Replace("a.yaml", []byte("one"), []byte("two")))
	for _, before := range [][]byte{nil, []byte("one")} {
		require.ErrorIs(t, f.Replace("a.yaml", before, []byte("three")), ErrChanged)
	}
	require.ErrorIs(t, f.Replace("b.yaml", []byte("gone"), []byte("three")), ErrChanged)
	got, err := f.Read("a.yaml", limit.JobSize)
	require.NoError(t, err)
	assert.Equal(t, "two", string(got))
	entries, err := os.ReadDir(f.Path())
	require.NoError(t, err)
	assert.Len(t, entries, 1)
}
