// Package store keeps the layouts that were found for a problem, in the user's cache
// folder, for whatever asks about the same problem again. What it gives back is only
// where each piece lies: lengths and bounds are reckoned anew and every layout is
// verified by those who ask, so that a spoilt file can at worst be of no use.
package store

import (
	"bytes"
	"cmp"
	"io/fs"
	"os"
	"path/filepath"
	"reflect"
	"slices"
	"time"
)

// Store keeps entries in a folder. A nil Store keeps nothing.
type Store struct {
	folder string
	signer signer
}

// Open opens the store of the user; without a cache folder there is none.
func Open() *Store {
	folder, err := os.UserCacheDir()
	if err != nil {
		return nil
	}
	return at(filepath.Join(folder, "ellwand"))
}

func at(folder string) *Store {
	signer := signerIn(folder)
	if signer == nil {
		return nil
	}
	return &Store{folder: filepath.Join(folder, "layouts"), signer: signer}
}

func (s *Store) path(key string) string { return filepath.Join(s.folder, key+".json") }

// Read returns what is kept of a problem. An entry that cannot be read, or is none,
// is dropped and counts as empty.
func (s *Store) Read(key string) Entry {
	if s == nil {
		return Entry{}
	}
	data, err := readAtMost(s.path(key), mostBytes)
	if err != nil {
		s.Drop(key) // where it is there at all
		return Entry{}
	}
	entry, err := s.signer.parse(data)
	if err != nil {
		s.Drop(key)
		return Entry{}
	}
	return entry
}

// Drop an entry.
func (s *Store) Drop(key string) {
	if s != nil {
		_ = os.Remove(s.path(key)) // it is read as none, or written over, if it stays
	}
}

// Add what a search found that began from an entry, in its place. It reports false, and
// keeps nothing, where the entry is another by now: what was found must then be held
// against that one first. A store that cannot be written is no reason to fail.
func (s *Store) Add(key string, began Entry, found Found) bool {
	if s == nil || os.MkdirAll(s.folder, 0o700) != nil {
		return true
	}
	unlock, ok := s.lock(key)
	if !ok {
		return true
	}
	defer unlock()
	now := s.Read(key)
	if !reflect.DeepEqual(now, began) {
		return false
	}
	var data bytes.Buffer
	if now.with(found).write(&data, s.signer) == nil && data.Len() <= mostBytes {
		replace(s.path(key), data.Bytes())
	}
	sweep(s.folder, fullAt, emptied)
	return true
}

// replace a file as a whole.
func replace(path string, data []byte) {
	file, err := os.CreateTemp(filepath.Dir(path), ".new-*")
	if err != nil {
		return
	}
	defer os.Remove(file.Name())
	_, err = file.Write(data)
	if closed := file.Close(); err == nil && closed == nil {
		_ = os.Rename(file.Name(), path) // the next run searches again
	}
}

// Waiting for another process that writes an entry, which takes milliseconds
// [source.OwnChoice].
const (
	tries   = 100
	between = 10 * time.Millisecond
	// deserted is how old the lock of a process that was killed is at least.
	deserted = 30 * time.Second
)

// lock an entry against other processes; it reports false where another does not let go
// of it.
func (s *Store) lock(key string) (unlock func(), ok bool) {
	path := s.path(key) + ".lock"
	for range tries {
		file, err := os.OpenFile(path, os.O_CREATE|os.O_EXCL|os.O_WRONLY, 0o600)
		if err == nil {
			file.Close()
			return func() { _ = os.Remove(path) }, true
		}
		if info, err := os.Stat(path); err == nil && time.Since(info.ModTime()) > deserted {
			_ = os.Remove(path)
			continue
		}
		time.Sleep(between)
	}
	return nil, false
}

// sweep drops the oldest entries of a folder when they are so many bytes, until fewer
// are left, and what a killed process has left.
func sweep(folder string, fullAt, emptied int64) {
	listed, err := os.ReadDir(folder)
	if err != nil {
		return
	}
	var entries []fs.FileInfo
	var total int64
	for _, one := range listed {
		info, err := one.Info()
		if err != nil || !info.Mode().IsRegular() {
			continue
		}
		if filepath.Ext(info.Name()) != ".json" {
			if time.Since(info.ModTime()) > stale {
				_ = os.Remove(filepath.Join(folder, info.Name()))
			}
			continue
		}
		entries, total = append(entries, info), total+info.Size()
	}
	if total <= fullAt {
		return
	}
	slices.SortFunc(entries, func(a, b fs.FileInfo) int {
		return cmp.Or(a.ModTime().Compare(b.ModTime()), cmp.Compare(a.Name(), b.Name()))
	})
	for _, info := range entries {
		if total <= emptied {
			return
		}
		if os.Remove(filepath.Join(folder, info.Name())) == nil {
			total -= info.Size()
		}
	}
}
