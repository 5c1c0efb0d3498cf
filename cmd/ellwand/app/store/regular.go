package store

import (
	"fmt"
	"io"
	"os"
)

// readAtMost reads a file that has no more than so many bytes. Neither a link nor a
// pipe nor a device is one: reading those may never end, and nothing here made them.
func readAtMost(path string, most int64) ([]byte, error) {
	info, err := os.Lstat(path)
	if err != nil {
		return nil, err
	}
	if !info.Mode().IsRegular() || info.Size() > most {
		return nil, fmt.Errorf("%s is none of the files that are kept", path)
	}
	file, err := os.Open(path)
	if err != nil {
		return nil, err
	}
	defer file.Close()
	return io.ReadAll(io.LimitReader(file, most))
}
