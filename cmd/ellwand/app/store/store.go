// Package store keeps what was found for a problem, in the user's cache folder.
package store

import (
	"crypto/sha256"
	"encoding/hex"
	"encoding/json"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"sync"
	"time"

	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/fabric/quote"
	"ellwand/pieces"
)

// Store keeps answers. The key is the whole problem and the program itself, so
// that no answer outlives a change of either. A nil Store keeps nothing.
type Store struct {
	folder  string
	program string // digest of the running program
}

// Kept is one answer: the best found so far, and how long each seed has been
// searched.
type Kept struct {
	Found  quote.Found              `json:"found"`
	Effort map[uint64]time.Duration `json:"effort_ns"`
}

// Open opens the store; without a folder or without the program's own
// file there is none.
func Open() *Store {
	folder, err := os.UserCacheDir()
	if err != nil {
		return nil
	}
	program, err := programDigest()
	if err != nil {
		return nil
	}
	return &Store{folder: filepath.Join(folder, "ellwand", "requirements"), program: program}
}

var programDigest = sync.OnceValues(func() (string, error) {
	path, err := os.Executable()
	if err != nil {
		return "", err
	}
	file, err := os.Open(path)
	if err != nil {
		return "", err
	}
	defer file.Close()
	digest := sha256.New()
	if _, err := io.Copy(digest, file); err != nil {
		return "", err
	}
	return hex.EncodeToString(digest.Sum(nil)), nil
})

// Path of a problem's file. %#v writes every field of every part with its
// type, and floats to the last digit. More is what else the answer depends on,
// without pointers.
func (s *Store) Path(c cloth.Cloth, all []pieces.Piece, lays []lay.Kind, more ...any) string {
	if s == nil {
		return ""
	}
	digest := sha256.New()
	fmt.Fprintf(digest, "%s\n%#v\n%#v\n%#v\n", s.program, c, all, lays)
	for _, what := range more {
		fmt.Fprintf(digest, "%#v\n", what)
	}
	return filepath.Join(s.folder, hex.EncodeToString(digest.Sum(nil))+".json")
}

// Read returns what is kept; a file that cannot be read or makes no sense
// counts as none.
func (s *Store) Read(path string) (Kept, bool) {
	if s == nil {
		return Kept{}, false
	}
	data, err := os.ReadFile(path)
	if err != nil {
		return Kept{}, false
	}
	var out Kept
	if json.Unmarshal(data,
		&out) != nil || !(out.Found.Taken > 0) || out.Found.Bound > out.Found.Taken || out.Effort == nil {
		return Kept{}, false
	}
	return out, true
}

// Write keeps an answer. A store that cannot be written is no reason to fail.
func (s *Store) Write(path string, k Kept) {
	if s == nil || os.MkdirAll(s.folder, 0o755) != nil {
		return
	}
	file, err := os.CreateTemp(s.folder, ".new-*")
	if err != nil {
		return
	}
	defer os.Remove(file.Name())
	err = json.NewEncoder(file).Encode(k)
	if closed := file.Close(); err == nil && closed == nil {
		_ = os.Rename(file.Name(), path) // the next run searches again
	}
}
