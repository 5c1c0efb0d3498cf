package files

import (
	"bufio"
	"errors"
	"fmt"
	"io"
	"os"
	"path/filepath"

	"ellwand/cmd/ellwand/failure"
)

// Commit writes every file to a temporary one beside its place and, when all are
// whole, renames them. Nothing is left of a write that failed, nor a folder that was made
// for it. Of several files a
// journal is kept meanwhile, so that a run that is killed between two of them is
// brought to its end by the next one.
func (s *Set) Commit() error {
	made := missingFolders(s.files())
	err := s.commit()
	if err != nil {
		removeEmpty(made)
	}
	return err
}

func (s *Set) commit() error {
	moves, err := s.stage()
	defer func() {
		for _, m := range moves {
			os.Remove(m.Temporary) // those that are renamed are no longer there
		}
	}()
	if err != nil {
		return err
	}
	for _, out := range s.list {
		if out.stream {
			if err := writeStream(out); err != nil {
				return err
			}
		}
	}
	for i, out := range s.files() {
		if _, err := os.Lstat(out.final); err == nil && !s.Force {
			return fmt.Errorf("%s was written by something else meanwhile; add --force to overwrite it, or give another name",
				moves[i].Path)
		}
	}
	journal := keepJournal(moves)
	defer journal.remove()
	for _, m := range moves {
		if err := os.Rename(m.Temporary, m.Path); err != nil {
			return unwritable(m.Path, err)
		}
	}
	return nil
}

// files are those that are no streams.
func (s *Set) files() (out []file) {
	for _, f := range s.list {
		if !f.stream {
			out = append(out, f)
		}
	}
	return out
}

// stage writes the temporary files. Those that were begun are returned with an
// error, too.
func (s *Set) stage() ([]move, error) {
	var out []move
	for _, f := range s.files() {
		name, err := writeBeside(f)
		if name != "" {
			out = append(out, moveTo(name, f.final))
		}
		if err != nil {
			return out, err
		}
	}
	return out, nil
}

func writeBeside(out file) (name string, err error) {
	folder := filepath.Dir(out.final)
	if err := os.MkdirAll(folder, 0o777); err != nil {
		return "", unwritable(folder, err)
	}
	// A file that exists keeps its permissions, a new one has what the system gives
	// to new ones; one that is private is so from the first byte on.
	mode, exists := out.replaced()
	if !exists {
		mode = 0o666
	}
	temporary, err := createTemporary(folder, mode&0o666)
	if err != nil {
		return "", unwritable(folder, err)
	}
	defer temporary.Close()
	if err := fill(temporary, out); err != nil {
		return temporary.Name(), err
	}
	if exists {
		err = temporary.Chmod(mode)
	}
	if err := errors.Join(err, temporary.Sync(), temporary.Close()); err != nil {
		return temporary.Name(), unwritable(out.path, err)
	}
	return temporary.Name(), nil
}

// writeStream writes to a pipe or a device.
func writeStream(out file) error {
	stream, err := os.OpenFile(out.final, os.O_WRONLY, 0)
	if err != nil {
		return unwritable(out.path, err)
	}
	defer stream.Close()
	if err := fill(stream, out); err != nil {
		return err
	}
	if err := stream.Close(); err != nil {
		return unwritable(out.path, err)
	}
	return nil
}

// fill writes the content. A disk that is full is no fault of what makes it.
func fill(to io.Writer, out file) error {
	kept := &keeper{to: to}
	buffer := bufio.NewWriter(kept)
	err := out.write(buffer)
	if kept.err == nil && err != nil {
		return failure.Of(fmt.Errorf("%s: %w", out.path, err))
	}
	if err := errors.Join(kept.err, buffer.Flush()); err != nil {
		return unwritable(out.path, err)
	}
	return nil
}

// keeper keeps the first error of a writer.
type keeper struct {
	to  io.Writer
	err error
}

func (k *keeper) Write(data []byte) (int, error) {
	n, err := k.to.Write(data)
	if err != nil && k.err == nil {
		k.err = err
	}
	return n, err
}
