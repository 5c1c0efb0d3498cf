package files

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"syscall"
)

func unwritable(path string, err error) error {
	reason := err
	var detail *fs.PathError
	var link *os.LinkError
	switch {
	case errors.As(err, &detail):
		reason = detail.Err
	case errors.As(err, &link):
		reason = link.Err
	}
	if errors.Is(err, syscall.ENOSPC) || errors.Is(err, syscall.EDQUOT) {
		return fmt.Errorf("%s cannot be written (%w); make room there, or choose another place", path, reason)
	}
	return fmt.Errorf("%s cannot be written (%w); choose another place, or change its permissions", path, reason)
}

// missing reports whether a path leads nowhere, be it through a file where a
// folder should be.
func missing(err error) bool {
	return errors.Is(err, fs.ErrNotExist) || errors.Is(err, syscall.ENOTDIR)
}
