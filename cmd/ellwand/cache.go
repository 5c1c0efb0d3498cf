package main

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

	"ellwand/fabric"
	"ellwand/fabric/quote"
	"ellwand/pieces"
)

// cache keeps what was found for a problem, in the user's cache folder. The
// key is the whole problem and the program itself, so that no answer outlives
// a change of either. A nil cache keeps nothing.
type cache struct {
	folder  string
	program string // digest of the running program
}

// kept is one file of the cache: the best found so far, and how long each
// seed has been searched.
type kept struct {
	Found  quote.Found              `json:"found"`
	Effort map[uint64]time.Duration `json:"effort_ns"`
}

// openCache opens the cache; without a folder or without the program's own
// file there is none.
func openCache() *cache {
	folder, err := os.UserCacheDir()
	if err != nil {
		return nil
	}
	program, err := programDigest()
	if err != nil {
		return nil
	}
	return &cache{folder: filepath.Join(folder, "ellwand", "requirements"), program: program}
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

// path of a problem's file. %#v writes every field of every part with its
// type, and floats to the last digit.
func (c *cache) path(cloth fabric.Cloth, all []pieces.Piece, lays []fabric.Lay) string {
	digest := sha256.New()
	fmt.Fprintf(digest, "%s\n%#v\n%#v\n%#v\n", c.program, cloth, all, lays)
	return filepath.Join(c.folder, hex.EncodeToString(digest.Sum(nil))+".json")
}

// read returns what is kept; a file that cannot be read or makes no sense
// counts as none.
func (c *cache) read(path string) (kept, bool) {
	if c == nil {
		return kept{}, false
	}
	data, err := os.ReadFile(path)
	if err != nil {
		return kept{}, false
	}
	var out kept
	if json.Unmarshal(data, &out) != nil || !(out.Found.Taken > 0) || out.Found.Bound > out.Found.Taken || out.Effort == nil {
		return kept{}, false
	}
	return out, true
}

// write keeps an answer. A cache that cannot be written is no reason to fail.
func (c *cache) write(path string, k kept) {
	if c == nil || os.MkdirAll(c.folder, 0o755) != nil {
		return
	}
	file, err := os.CreateTemp(c.folder, ".new-*")
	if err != nil {
		return
	}
	defer os.Remove(file.Name())
	err = json.NewEncoder(file).Encode(k)
	if closed := file.Close(); err == nil && closed == nil {
		_ = os.Rename(file.Name(), path) // the next run searches again
	}
}
