//go:build unix

package store

import (
	"os"
	"path/filepath"
	"syscall"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/fabric/lay"
)

// Links, pipes and devices in the place of what is kept are not read, since that might
// never end, and give way to what is kept next.
func TestOnlyFilesAreRead(t *testing.T) {
	for name, put := range map[string]func(path string) error{
		"a link to a device": func(path string) error { return os.Symlink("/dev/zero", path) },
		"a link to a file":   func(path string) error { return os.Symlink("/etc/hosts", path) },
		"a pipe":             func(path string) error { return syscall.Mkfifo(path, 0o600) },
		"a folder":           func(path string) error { return os.Mkdir(path, 0o700) },
	} {
		t.Run(name, func(t *testing.T) {
			folder := t.TempDir()
			require.True(t, at(folder).Add("a", Entry{}, Found{Plans: []lay.Plan{aPlan()}}))
			for _, path := range []string{"secret", "layouts/a.json"} {
				path = filepath.Join(folder, filepath.FromSlash(path))
				require.NoError(t, os.Remove(path))
				require.NoError(t, put(path))
				again := at(folder)
				require.NotNil(t, again)
				assert.Empty(t, again.Read("a").Plans())
				require.True(t, again.Add("a", again.Read("a"), Found{Plans: []lay.Plan{aPlan()}}))
				assert.Len(t, at(folder).Read("a").Plans(), 1)
			}
			s := at(folder)
			require.NoError(t, os.MkdirAll(s.quotes(), 0o700))
			require.NoError(t, put(s.quotePath("job")))
			assert.Nil(t, s.Recall("job"))
		})
	}
}
