// Package files writes the files of a command: checked before the work begins,
// written together at its end, each whole or not at all.
package files

import (
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
)

// Set of the files that a command will write.
type Set struct {
	// Force overwrites what exists.
	Force bool
	// Input is the file that the command reads: it is never overwritten.
	Input string

	list  []file // in the order of adding
	swept map[string]bool
}

type file struct {
	target
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
	_, err := s.check(path)
	return err
}

// check also says what stands at the path.
func (s *Set) check(path string) (target, error) {
	at, err := targetOf(path)
	if err != nil {
		return at, err
	}
	info, err := os.Stat(at.final)
	switch {
	case err == nil && info.IsDir():
		return at, fmt.Errorf("%s is a folder; give the name of a file", path)
	case err == nil && s.isInput(info):
		return at, fmt.Errorf("%s is the file that is read; give another name to write to", path)
	case at.stream:
		return at, nil
	case err == nil && !info.Mode().IsRegular():
		return at, fmt.Errorf("%s is neither a file nor a pipe, so that nothing is written to it; give another name", path)
	case err == nil && !s.Force:
		return at, fmt.Errorf("%s exists already; add --force to overwrite it, or give another name", path)
	case err != nil && !missing(err):
		return at, unwritable(path, err)
	}
	return at, s.writableFolder(filepath.Dir(at.final))
}

func (s *Set) isInput(info fs.FileInfo) bool {
	input, err := os.Stat(s.Input)
	return err == nil && os.SameFile(info, input)
}

// writableFolder checks a folder, or the nearest one above it that exists, by
// making a file in it. What killed runs left there is put right first.
func (s *Set) writableFolder(folder string) error {
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
	s.sweep(folder)
	probe, err := createTemporary(folder, 0o600)
	if err != nil {
		return unwritable(folder, err)
	}
	probe.Close()
	return os.Remove(probe.Name())
}

// sweep a folder once: a set may have hundreds of files in it.
func (s *Set) sweep(folder string) {
	if s.swept == nil {
		s.swept = map[string]bool{}
		finishJournals()
	}
	if !s.swept[folder] {
		s.swept[folder] = true
		sweepFolder(folder)
	}
}

// Add plans a file; its content is written by Commit.
func (s *Set) Add(path string, write func(io.Writer) error) error {
	at, err := s.check(path)
	if err != nil {
		return err
	}
	for _, other := range s.list {
		if other.final == at.final {
			return fmt.Errorf("two results would go to the same file %s; give their cloths or pieces different names", path)
		}
	}
	s.list = append(s.list, file{at, write})
	return nil
}

// Extension of a path in lower case, with its point: ".pdf".
func Extension(path string) string { return strings.ToLower(filepath.Ext(path)) }
