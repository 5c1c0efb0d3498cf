package files

import (
	"errors"
	"fmt"
	"hash/fnv"
	"io/fs"
	"os"
	"path/filepath"
	"regexp"
	"strconv"
	"sync/atomic"
	"syscall"
)

// A temporary file says in its name on which machine and by which process it was
// made: what a killed run left is known by its process being no more, and what
// another machine is writing into a shared folder is left alone.
var temporaryName = regexp.MustCompile(`^\.ellwand-([0-9a-f]{8})-([0-9]+)-[0-9]+$`)

var temporaries atomic.Int64

// machine tells this machine from others.
func machine() string {
	name, _ := os.Hostname() // without a name all such machines are one
	sum := fnv.New32a()
	_, _ = sum.Write([]byte(name)) // never fails
	return fmt.Sprintf("%08x", sum.Sum32())
}

// createTemporary makes a hidden file in a folder.
func createTemporary(folder string, mode fs.FileMode) (*os.File, error) {
	for {
		name := fmt.Sprintf(".ellwand-%s-%d-%d", machine(), os.Getpid(), temporaries.Add(1))
		file, err := os.OpenFile(filepath.Join(folder, name), os.O_WRONLY|os.O_CREATE|os.O_EXCL, mode)
		if !errors.Is(err, fs.ErrExist) {
			return file, err
		}
	}
}

// isLeftOver reports whether a name is that of a temporary file whose process, on
// this machine, is no more.
func isLeftOver(name string) bool {
	parts := temporaryName.FindStringSubmatch(name)
	if parts == nil || parts[1] != machine() {
		return false
	}
	process, err := strconv.Atoi(parts[2])
	return err == nil && !isAlive(process)
}

// isAlive reports whether there is a process; where that cannot be told, there is
// one.
func isAlive(id int) bool {
	process, err := os.FindProcess(id)
	if err != nil {
		return false
	}
	err = process.Signal(syscall.Signal(0))
	return !errors.Is(err, os.ErrProcessDone) && !errors.Is(err, syscall.ESRCH)
}

// sweepFolder removes the temporary files that killed runs left in a folder.
func sweepFolder(folder string) {
	entries, err := os.ReadDir(folder)
	if err != nil {
		return
	}
	for _, entry := range entries {
		if entry.Type().IsRegular() && isLeftOver(entry.Name()) {
			os.Remove(filepath.Join(folder, entry.Name()))
		}
	}
}
