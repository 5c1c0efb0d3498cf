package files

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
)

// target is where a file goes.
type target struct {
	// path is as it was asked for, and final where that leads: symbolic links are
	// followed, so that what they point to is replaced and they stay.
	path, final string
	// stream says that it is a pipe or a device, such as a printer or a terminal:
	// it is written to as it is, since it holds nothing that could be replaced.
	stream bool
}

func targetOf(path string) (target, error) {
	at := target{path: path, final: filepath.Clean(path)}
	info, err := os.Lstat(path)
	if err != nil {
		return at, nil // what is not there yet
	}
	if info.Mode()&fs.ModeSymlink != 0 {
		if info, err = os.Stat(path); errors.Is(err, fs.ErrNotExist) {
			to, _ := os.Readlink(path)
			return at, fmt.Errorf("%s is a link to %s, which is not there; remove the link, or give another name", path, to)
		} else if err != nil {
			return at, fmt.Errorf("%s is a link that leads nowhere; remove it, or give another name", path)
		}
	}
	if at.stream = isStream(info); at.stream {
		return at, nil // what it leads to may have no name, as the pipe behind /dev/stderr
	}
	if at.final, err = filepath.EvalSymlinks(path); err != nil {
		return at, unwritable(path, err)
	}
	return at, nil
}

func isStream(info fs.FileInfo) bool { return info.Mode()&(fs.ModeNamedPipe|fs.ModeCharDevice) != 0 }

// replaced is the mode of the file that is replaced; false of a new one.
func (p target) replaced() (mode fs.FileMode, exists bool) {
	info, err := os.Stat(p.final)
	if err != nil {
		return 0, false
	}
	return info.Mode().Perm(), true
}

// IsStream says whether a path is a pipe or a device, such as a printer.
func IsStream(path string) bool {
	at, err := targetOf(path)
	return err == nil && at.stream
}
