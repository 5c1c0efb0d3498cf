package files

import (
	"encoding/json"
	"io"
	"os"
	"path/filepath"
	"time"
)

// move is one rename.
type move struct {
	Temporary string `json:"temporary"` // in full
	Path      string `json:"path"`
	// Before is when the file that is replaced was last changed; the zero time
	// when there is none.
	Before time.Time `json:"before"`
}

func moveTo(temporary, path string) move {
	out := move{Temporary: temporary, Path: path, Before: changed(path)}
	if full, err := filepath.Abs(temporary); err == nil {
		out.Temporary = full
	}
	if full, err := filepath.Abs(path); err == nil {
		out.Path = full
	}
	return out
}

// changed is when a file was last changed, or the zero time.
func changed(path string) time.Time {
	info, err := os.Stat(path)
	if err != nil {
		return time.Time{}
	}
	return info.ModTime().UTC()
}

// journal is a file that lists what is being renamed; empty when there is none.
type journal string

// keepJournal writes a journal of several moves into the user's cache folder: in
// the folders of the files themselves it could come from someone else. Where
// there is no such folder, there is none.
func keepJournal(moves []move) journal {
	folder := journalFolder()
	if len(moves) < 2 || folder == "" || os.MkdirAll(folder, 0o700) != nil {
		return ""
	}
	file, err := createTemporary(folder, 0o600)
	if err != nil {
		return ""
	}
	err = json.NewEncoder(file).Encode(moves)
	if synced, closed := file.Sync(), file.Close(); err != nil || synced != nil || closed != nil {
		os.Remove(file.Name())
		return ""
	}
	// Only a journal that is whole has the name of one.
	name := file.Name() + journalEnd
	if os.Rename(file.Name(), name) != nil {
		os.Remove(file.Name())
		return ""
	}
	return journal(name)
}

func (j journal) remove() {
	if j != "" {
		os.Remove(string(j))
	}
}

const (
	journalEnd = ".json"
	// mostJournal is far above the journal of any command.
	mostJournal = 16 << 20
)

func journalFolder() string {
	folder, err := os.UserCacheDir()
	if err != nil {
		return ""
	}
	return filepath.Join(folder, "ellwand", "unfinished")
}

// finishJournals brings to their end the runs that were killed while they renamed
// their files.
func finishJournals() {
	folder := journalFolder()
	if folder == "" {
		return
	}
	entries, err := os.ReadDir(folder)
	if err != nil {
		return
	}
	for _, entry := range entries {
		name := entry.Name()
		if base := name[:max(0, len(name)-len(journalEnd))]; base+journalEnd == name && isLeftOver(base) {
			finish(filepath.Join(folder, name))
		}
	}
	sweepFolder(folder)
}

// finish renames what is left of a journal, but for files that were changed
// meanwhile by something else.
func finish(path string) {
	if info, err := os.Lstat(path); err != nil || !info.Mode().IsRegular() {
		return
	}
	file, err := os.Open(path)
	if err != nil {
		return
	}
	defer os.Remove(path)
	defer file.Close()
	var moves []move
	if json.NewDecoder(io.LimitReader(file, mostJournal)).Decode(&moves) != nil {
		return
	}
	for _, m := range moves {
		if !isLeftOver(filepath.Base(m.Temporary)) || filepath.Dir(m.Temporary) != filepath.Dir(m.Path) {
			continue
		}
		if changed(m.Path).Equal(m.Before) {
			_ = os.Rename(m.Temporary, m.Path) // one that is not there was renamed already
		}
		os.Remove(m.Temporary)
	}
}
