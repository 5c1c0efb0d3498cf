// Package files writes the files of a command: checked before the work begins,
// written together at its end, each whole or not at all.
package files

import (
	"bufio"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"syscall"

	"ellwand/cmd/ellwand/failure"
)

// Set of the files that a command will write.
type Set struct {
	// Force overwrites what exists.
	Force bool
	// Input is the file that the command reads: it is never overwritten.
	Input string
	list  []file // in the order of adding
}

type file struct {
	path  string
	write func(io.Writer) error
}

// Paths of the files in the order of adding.
func (s *Set) Paths() []string {
	out := make([]string, len(s.list))
	for i, f := range s.list {
		out[i] = f.path
	}
	return out
}

// Check refuses a path that cannot be written, before any work is done.
func (s *Set) Check(path string) error {
	info, err := os.Stat(path)
	switch {
	case err == nil && info.IsDir():
		return fmt.Errorf("%s is a folder; give the name of a file", path)
	case err == nil && s.isInput(info):
		return fmt.Errorf("%s is the file that is read; give another name to write to", path)
	case err == nil && !s.Force:
		return fmt.Errorf("%s exists already; add --force to overwrite it, or give another name", path)
	case err != nil && !missing(err):
		return unwritable(path, err)
	}
	return writableFolder(filepath.Dir(path))
}

func (s *Set) isInput(info fs.FileInfo) bool {
	input, err := os.Stat(s.Input)
	return err == nil && os.SameFile(info, input)
}

// writableFolder checks a folder, or the nearest one above it that exists, by
// making a file in it.
func writableFolder(folder string) error {
	for {
		info, err := os.Stat(folder)
		if err == nil && !info.IsDir() {
			return fmt.Errorf("%s is a file, not a folder; give another place to write to", folder)
		}
		if err == nil {
			break
		}
		if !missing(err) || folder == filepath.Dir(folder) {
			return unwritable(folder, err)
		}
		folder = filepath.Dir(folder)
	}
	probe, err := os.CreateTemp(folder, ".ellwand-*")
	if err != nil {
		return unwritable(folder, err)
	}
	probe.Close()
	return os.Remove(probe.Name())
}

// missing reports whether a path leads nowhere, be it through a file where a
// folder should be.
func missing(err error) bool {
	return errors.Is(err, fs.ErrNotExist) || errors.Is(err, syscall.ENOTDIR)
}

func unwritable(path string, err error) error {
	reason := err
	var detail *fs.PathError
	if errors.As(err, &detail) {
		reason = detail.Err
	}
	return fmt.Errorf("%s cannot be written (%w); choose another place, or change its permissions", path, reason)
}

// Add plans a file; its content is written by Commit.
func (s *Set) Add(path string, write func(io.Writer) error) error {
	for _, other := range s.list {
		if other.path == path {
			return fmt.Errorf("two results would go to the same file %s; give their cloths or pieces different names", path)
		}
	}
	if err := s.Check(path); err != nil {
		return err
	}
	s.list = append(s.list, file{path, write})
	return nil
}

// Commit writes every file to a temporary one beside it and, when all are
// whole, renames them. Nothing is left of a write that failed.
func (s *Set) Commit() error {
	temporary := make([]string, 0, len(s.list))
	defer func() {
		for _, name := range temporary {
			os.Remove(name)
		}
	}()
	for _, out := range s.list {
		name, err := writeBeside(out)
		if name != "" {
			temporary = append(temporary, name)
		}
		if err != nil {
			return err
		}
	}
	for i, out := range s.list {
		if err := os.Rename(temporary[i], out.path); err != nil {
			return unwritable(out.path, err)
		}
	}
	temporary = nil
	return nil
}

func writeBeside(out file) (name string, err error) {
	folder := filepath.Dir(out.path)
	if err := os.MkdirAll(folder, 0o755); err != nil {
		return "", unwritable(folder, err)
	}
	file, err := os.CreateTemp(folder, ".ellwand-*")
	if err != nil {
		return "", unwritable(folder, err)
	}
	defer file.Close()
	buffer := bufio.NewWriter(file)
	if err := out.write(buffer); err != nil {
		return file.Name(), failure.Of(fmt.Errorf("%s: %w", out.path, err))
	}
	if err := errors.Join(buffer.Flush(), file.Chmod(0o644), file.Sync(), file.Close()); err != nil {
		return file.Name(), unwritable(out.path, err)
	}
	return file.Name(), nil
}

// Extension of a path in lower case, with its point: ".pdf".
func Extension(path string) string { return strings.ToLower(filepath.Ext(path)) }
