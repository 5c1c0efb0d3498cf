//go:build unix

package files

import (
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"syscall"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func content(t *testing.T, path string) string {
	t.Helper()
	out, err := os.ReadFile(path)
	require.NoError(t, err)
	return string(out)
}

func written(t *testing.T, path, text string) error {
	t.Helper()
	set := Set{Force: true}
	if err := set.Add(path, saying(text)); err != nil {
		return err
	}
	return set.Commit()
}

// A file that is replaced keeps its permissions, a new one obeys the umask.
func TestPermissions(t *testing.T) {
	t.Setenv("XDG_CACHE_HOME", t.TempDir())
	folder := t.TempDir()
	for _, mode := range []fs.FileMode{0o600, 0o640, 0o666, 0o755} {
		path := filepath.Join(folder, mode.String())
		require.NoError(t, os.WriteFile(path, nil, 0o600))
		require.NoError(t, os.Chmod(path, mode))
		require.NoError(t, written(t, path, "new"))
		info, err := os.Stat(path)
		require.NoError(t, err)
		assert.Equal(t, mode, info.Mode().Perm())
	}
	before := syscall.Umask(0o027)
	defer syscall.Umask(before)
	path := filepath.Join(folder, "deep", "new")
	require.NoError(t, written(t, path, "new"))
	info, err := os.Stat(path)
	require.NoError(t, err)
	assert.Equal(t, fs.FileMode(0o640), info.Mode().Perm())
	info, err = os.Stat(filepath.Dir(path))
	require.NoError(t, err)
	assert.Equal(t, fs.FileMode(0o750), info.Mode().Perm())
}

// A link stays, and what it points to is replaced; one that dangles is refused.
func TestLinks(t *testing.T) {
	t.Setenv("XDG_CACHE_HOME", t.TempDir())
	folder, other := t.TempDir(), t.TempDir()
	target, link := filepath.Join(other, "target"), filepath.Join(folder, "link")
	require.NoError(t, os.WriteFile(target, []byte("old"), 0o600))
	require.NoError(t, os.Symlink(target, link))
	assert.ErrorContains(t, (&Set{}).Check(link), "exists already")
	require.NoError(t, written(t, link, "new"))
	assert.Equal(t, "new", content(t, target))
	info, err := os.Lstat(link)
	require.NoError(t, err)
	assert.NotZero(t, info.Mode()&fs.ModeSymlink, "the link is still one")
	twice := Set{Force: true}
	require.NoError(t, twice.Add(link, saying("")))
	assert.ErrorContains(t, twice.Add(target, saying("")), "two results would go to the same file")

	require.NoError(t, os.Remove(target))
	for _, force := range []bool{false, true} {
		assert.ErrorContains(t, (&Set{Force: force}).Check(link), "is a link to "+target+", which is not there")
	}
	ring := filepath.Join(folder, "ring")
	require.NoError(t, os.Symlink(ring, ring))
	assert.ErrorContains(t, (&Set{}).Check(ring), "is a link that leads nowhere")
}

// A pipe is written to, not replaced, and needs no leave to be overwritten.
func TestPipe(t *testing.T) {
	path := filepath.Join(t.TempDir(), "pipe")
	require.NoError(t, syscall.Mkfifo(path, 0o600))
	read := make(chan string)
	go func() {
		file, err := os.Open(path)
		if err != nil {
			read <- err.Error()
			return
		}
		defer file.Close()
		all, _ := io.ReadAll(file)
		read <- string(all)
	}()
	set := Set{}
	require.NoError(t, set.Add(path, saying("through")))
	require.NoError(t, set.Commit())
	assert.Equal(t, "through", <-read)
	info, err := os.Lstat(path)
	require.NoError(t, err)
	assert.NotZero(t, info.Mode()&fs.ModeNamedPipe)
}

// A device that is full says so, and none of the files beside it is written.
func TestFullDevice(t *testing.T) {
	folder := t.TempDir()
	if _, err := os.Stat("/dev/full"); err != nil {
		t.Skip("there is no /dev/full here")
	}
	set := Set{}
	require.NoError(t, set.Add(filepath.Join(folder, "a"), saying("a")))
	require.NoError(t, set.Add("/dev/full", saying("b")))
	assert.ErrorContains(t, set.Commit(), "/dev/full cannot be written (no space left on device); make room there")
	entries, err := os.ReadDir(folder)
	require.NoError(t, err)
	assert.Empty(t, entries)
}
