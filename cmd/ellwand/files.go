package main

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
)

// outputs are the files that a command will write: checked before the work
// begins, written together at its end, each whole or not at all.
type outputs struct {
	force bool     // overwrite what exists
	input string   // the file that the command reads, never overwritten
	list  []output // in the order of adding
}

type output struct {
	path  string
	write func(io.Writer) error
}

// paths of the files in the order of adding.
func (o *outputs) paths() []string {
	out := make([]string, len(o.list))
	for i, file := range o.list {
		out[i] = file.path
	}
	return out
}

// check refuses a path that cannot be written, before any work is done.
func (o *outputs) check(path string) error {
	info, err := os.Stat(path)
	switch {
	case err == nil && info.IsDir():
		return fmt.Errorf("%s is a folder; give the name of a file", path)
	case err == nil && o.isInput(info):
		return fmt.Errorf("%s is the file that is read; give another name to write to", path)
	case err == nil && !o.force:
		return fmt.Errorf("%s exists already; add --force to overwrite it, or give another name", path)
	case err != nil && !missing(err):
		return unwritable(path, err)
	}
	return writableFolder(filepath.Dir(path))
}

func (o *outputs) isInput(info fs.FileInfo) bool {
	input, err := os.Stat(o.input)
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

// add plans a file; its content is written by commit.
func (o *outputs) add(path string, write func(io.Writer) error) error {
	for _, other := range o.list {
		if other.path == path {
			return fmt.Errorf("two results would go to the same file %s; give their cloths or pieces different names", path)
		}
	}
	if err := o.check(path); err != nil {
		return err
	}
	o.list = append(o.list, output{path, write})
	return nil
}

// commit writes every file to a temporary one beside it and, when all are
// whole, renames them. Nothing is left of a write that failed.
func (o *outputs) commit() error {
	temporary := make([]string, 0, len(o.list))
	defer func() {
		for _, name := range temporary {
			os.Remove(name)
		}
	}()
	for _, out := range o.list {
		name, err := writeBeside(out)
		if name != "" {
			temporary = append(temporary, name)
		}
		if err != nil {
			return err
		}
	}
	for i, out := range o.list {
		if err := os.Rename(temporary[i], out.path); err != nil {
			return unwritable(out.path, err)
		}
	}
	temporary = nil
	return nil
}

func writeBeside(out output) (name string, err error) {
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
		return file.Name(), &failed{fmt.Errorf("%s: %w", out.path, err)}
	}
	if err := errors.Join(buffer.Flush(), file.Chmod(0o644), file.Sync(), file.Close()); err != nil {
		return file.Name(), unwritable(out.path, err)
	}
	return file.Name(), nil
}

// extension of a path in lower case, with its point: ".pdf".
func extension(path string) string { return strings.ToLower(filepath.Ext(path)) }
