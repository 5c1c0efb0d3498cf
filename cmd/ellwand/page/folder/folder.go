// Package folder is the folder that a page has opened: nothing outside of it is read or
// written, whatever a name or a link says.
package folder

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"sync/atomic"

	"ellwand/cmd/ellwand/limit"
	"ellwand/pieces/language"
)

// Folder of jobs. It may be used by several goroutines.
type Folder struct {
	root *os.Root
	path string
}

// Open opens a folder.
func Open(path string) (*Folder, error) {
	full, err := filepath.Abs(path)
	if err != nil {
		return nil, fmt.Errorf("%s cannot be opened: %w", path, err)
	}
	root, err := os.OpenRoot(full)
	if err != nil {
		return nil, fmt.Errorf("%s is no folder that can be opened; name one that is there, and that you may read", path)
	}
	return &Folder{root: root, path: full}, nil
}

// Path of the folder, from the top.
func (f *Folder) Path() string { return f.path }

// PathOf a file in it, for messages and for what is read beside it.
func (f *Folder) PathOf(name string) string { return filepath.Join(f.path, name) }

// Close the folder.
func (f *Folder) Close() error { return f.root.Close() }

// ErrName refuses a name.
var ErrName = language.Refuse("use letters, digits, spaces, hyphens and points in the name of a file, "+
	"and no point at its beginning or end",
	"ein Dateiname besteht aus Buchstaben, Ziffern, Leerzeichen, Bindestrichen und Punkten, "+
		"ohne Punkt am Anfang oder Ende")

// Named refuses a name that is none of a plain file in the folder: one with a way in it,
// a hidden one, one that a system takes for a device.
func Named(name string) error {
	base, _, _ := strings.Cut(name, ".")
	switch {
	case len(name) > mostOfName || name == "" || !filepath.IsLocal(name) || isDevice(strings.TrimSpace(base)),
		strings.ContainsAny(name, "/\\:*?\"<>|"), strings.ContainsFunc(name, isControl),
		strings.HasPrefix(name, "."), strings.HasSuffix(name, "."), strings.TrimSpace(name) != name:
		return ErrName
	}
	return nil
}

// mostOfName is what every file system takes, in bytes, with room for an ending
// [source.OwnChoice].
const mostOfName = 180

func isControl(r rune) bool { return r < ' ' || r == 0x7f }

// isDevice says that Windows takes a name for a device, whatever its ending.
func isDevice(base string) bool {
	base = strings.ToUpper(base)
	if slices.Contains([]string{"CON", "PRN", "AUX", "NUL", "CONIN$", "CONOUT$"}, base) {
		return true
	}
	for _, port := range []string{"COM", "LPT"} {
		number, is := strings.CutPrefix(base, port)
		if is && slices.Contains(strings.Split("0123456789¹²³", ""), number) {
			return true
		}
	}
	return false
}

// Read a file of the folder, up to so many bytes.
func (f *Folder) Read(name string, most limit.Limit) ([]byte, error) {
	if err := f.plain(name); err != nil {
		return nil, err
	}
	file, err := f.root.Open(name)
	if err != nil {
		return nil, err
	}
	defer file.Close()
	data, err := io.ReadAll(io.LimitReader(file, int64(most.Most())+1))
	if err != nil {
		return nil, err
	}
	return data, most.Check(language.Name(name), len(data))
}

// plain refuses what is no file by itself: a folder, a link, a pipe.
func (f *Folder) plain(name string) error {
	info, err := f.root.Lstat(name)
	if err == nil && !info.Mode().IsRegular() {
		return fmt.Errorf("%s is a folder, a link or a device, not a file; put the file itself into the folder", name)
	}
	return err
}

// Stat of a file.
func (f *Folder) Stat(name string) (fs.FileInfo, error) { return f.root.Lstat(name) }

var temporaries atomic.Int64

// Write a file whole or not at all. One that is there keeps its permissions; one that may
// not be written is left.
func (f *Folder) Write(name string, data []byte) error {
	return f.write(name, data, func() bool { return true })
}

// ErrChanged says that a file is not any more what it was taken for.
var ErrChanged = language.Refuse("the file was changed meanwhile", "die Datei wurde inzwischen geändert")

// Replace is Write where the file still holds what it was taken for, nil where there was
// none; otherwise it is ErrChanged, and the file is left.
func (f *Folder) Replace(name string, before, data []byte) error {
	return f.write(name, data, func() bool {
		now, err := fs.ReadFile(f.root.FS(), name)
		if errors.Is(err, fs.ErrNotExist) {
			return before == nil
		}
		return err == nil && before != nil && bytes.Equal(now, before)
	})
}

// write a file whole where, all else being done, it still may be written.
func (f *Folder) write(name string, data []byte, may func() bool) error {
	mode := fs.FileMode(0o644)
	switch info, err := f.root.Lstat(name); {
	case err == nil && !info.Mode().IsRegular():
		return f.plain(name)
	case err == nil && info.Mode()&0o200 == 0:
		return fmt.Errorf("%s may not be written; change its permissions", name)
	case err == nil:
		mode = info.Mode().Perm()
	}
	temporary := fmt.Sprintf(".ellwand-page-%d-%d", os.Getpid(), temporaries.Add(1))
	if err := f.fill(temporary, data, mode); err != nil {
		_ = f.root.Remove(temporary) // what could not be written whole
		return unwritable(name, err)
	}
	if !may() {
		_ = f.root.Remove(temporary)
		return ErrChanged
	}
	if err := f.root.Rename(temporary, name); err != nil {
		_ = f.root.Remove(temporary)
		return unwritable(name, err)
	}
	return nil
}

func (f *Folder) fill(name string, data []byte, mode fs.FileMode) error {
	file, err := f.root.OpenFile(name, os.O_WRONLY|os.O_CREATE|os.O_EXCL, mode)
	if err != nil {
		return err
	}
	_, err = file.Write(data)
	return errors.Join(err, file.Sync(), file.Close())
}

func unwritable(name string, err error) error {
	return fmt.Errorf("%s could not be written, and is as it was: %w", name, err)
}

// Append opens a file to add to it, hidden ones as well, and makes it where it is missing.
func (f *Folder) Append(name string) (*os.File, error) {
	return f.root.OpenFile(name, os.O_RDWR|os.O_CREATE|os.O_APPEND, 0o600)
}

// Names of the files with one of these endings, in their order.
func (f *Folder) Names(endings ...string) ([]string, error) {
	entries, err := fs.ReadDir(f.root.FS(), ".")
	if err != nil {
		return nil, fmt.Errorf("the folder %s cannot be read: %w", f.path, err)
	}
	var out []string
	for _, entry := range entries {
		ending := strings.ToLower(filepath.Ext(entry.Name()))
		if entry.Type().IsRegular() && slices.Contains(endings, ending) && Named(entry.Name()) == nil {
			out = append(out, entry.Name())
		}
	}
	return out, nil
}
