package files

import (
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// ended is the id of a process that is no more.
func ended(t *testing.T) int {
	t.Helper()
	command := exec.Command(os.Args[0], "-test.run=^$")
	require.NoError(t, command.Run())
	return command.Process.Pid
}

// leftBy writes a temporary file as a process left it.
func leftBy(t *testing.T, process int, folder, text string) string {
	t.Helper()
	path := filepath.Join(folder, fmt.Sprintf(".ellwand-%s-%d-%d", machine(), process, temporaries.Add(1)))
	require.NoError(t, os.WriteFile(path, []byte(text), 0o600))
	return path
}

// What killed runs left is swept; what may belong to a run that goes on is not.
func TestSweep(t *testing.T) {
	t.Setenv("XDG_CACHE_HOME", t.TempDir())
	folder := t.TempDir()
	gone := leftBy(t, ended(t), folder, "part")
	living := leftBy(t, os.Getpid(), folder, "part")
	elsewhere := filepath.Join(folder, fmt.Sprintf(".ellwand-00000000-%d-1", ended(t)))
	own := filepath.Join(folder, ".ellwand-notes")
	for _, path := range []string{elsewhere, own} {
		require.NoError(t, os.WriteFile(path, nil, 0o600))
	}
	require.NoError(t, written(t, filepath.Join(folder, "a"), "a"))
	assert.NoFileExists(t, gone)
	for _, path := range []string{living, elsewhere, own} {
		assert.FileExists(t, path)
	}
}

// Files that a killed run had made and not all renamed are renamed by the next
// run, but for those that something else has changed since.
func TestJournalIsFinished(t *testing.T) {
	t.Setenv("XDG_CACHE_HOME", t.TempDir())
	folder, process := t.TempDir(), ended(t)
	at := func(name string) string { return filepath.Join(folder, name) }
	require.NoError(t, os.WriteFile(at("renamed"), []byte("new"), 0o600))
	require.NoError(t, os.WriteFile(at("old"), []byte("old"), 0o600))
	require.NoError(t, os.WriteFile(at("changed"), []byte("old"), 0o600))
	moves := []move{
		moveTo(filepath.Join(folder, fmt.Sprintf(".ellwand-%s-%d-9999", machine(), process)), at("renamed")),
		moveTo(leftBy(t, process, folder, "new"), at("old")),
		moveTo(leftBy(t, process, folder, "new"), at("new")),
		moveTo(leftBy(t, process, folder, "new"), at("changed")),
		moveTo(leftBy(t, process, t.TempDir(), "new"), at("from elsewhere")),
	}
	moves[3].Before = moves[3].Before.Add(-1)
	kept := keepJournal(moves)
	require.NotEmpty(t, kept)
	require.NoError(t, os.Rename(string(kept), filepath.Join(journalFolder(),
		fmt.Sprintf(".ellwand-%s-%d-1%s", machine(), process, journalEnd))))

	require.NoError(t, written(t, at("next"), "next"))
	for name, want := range map[string]string{"renamed": "new", "old": "new", "new": "new", "changed": "old",
		"next": "next"} {
		assert.Equal(t, want, content(t, at(name)), name)
	}
	entries, err := os.ReadDir(folder)
	require.NoError(t, err)
	assert.Len(t, entries, 5, "nothing is left over, and nothing came from another folder")
	entries, err = os.ReadDir(journalFolder())
	require.NoError(t, err)
	assert.Empty(t, entries)
}

// No journal is left of a run that came to its end, nor of one that failed.
func TestNoJournalIsLeft(t *testing.T) {
	t.Setenv("XDG_CACHE_HOME", t.TempDir())
	folder := t.TempDir()
	set := Set{}
	require.NoError(t, set.Add(filepath.Join(folder, "a"), saying("a")))
	require.NoError(t, set.Add(filepath.Join(folder, "b"), saying("b")))
	require.NoError(t, set.Commit())
	entries, err := os.ReadDir(journalFolder())
	require.NoError(t, err)
	assert.Empty(t, entries)
}
