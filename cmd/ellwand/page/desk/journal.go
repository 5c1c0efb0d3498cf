package desk

import (
	"bytes"
	"encoding/json"
	"fmt"
	"io"
	"os"

	"ellwand/cmd/ellwand/page/folder"
)

// record is a line of the journal: how it begins, a step, or a move to where so many
// steps are made.
type record struct {
	Begin *beginning `json:"begin,omitempty"`
	Step  *step      `json:"step,omitempty"`
	Amend *step      `json:"amend,omitempty"`
	Move  *int       `json:"move,omitempty"`
	// Written says that the file holds what the records before come to.
	Written bool `json:"written,omitempty"`
}

type beginning struct {
	Form int    `json:"form"`
	Text []byte `json:"text"`
}

// form of the journal; another one is not read.
const form = 1

// journal keeps the history of a job beside it, a line for each change, so that nothing
// of it is lost when the program is.
type journal struct {
	file *os.File
	size int64
}

// journalName is the file beside a job that its journal stands in.
func journalName(job string) string { return "." + job + ".journal" }

// openJournal opens the journal of a job and reads it. The history is empty where there
// is none that can be used; last says what the file of the job held before the last
// record, in case that was not written any more.
func openJournal(f *folder.Folder, name string) (j *journal, h *history, last state, err error) {
	file, err := f.Append(journalName(name))
	if err != nil {
		return nil, nil, last, fmt.Errorf("the journal of %s cannot be opened: %w", name, err)
	}
	data, err := io.ReadAll(io.LimitReader(file, mostOfJournal))
	if err != nil {
		return nil, nil, last, fmt.Errorf("the journal of %s cannot be read: %w", name, err)
	}
	j = &journal{file: file}
	for len(data) > 0 {
		line, rest, whole := bytes.Cut(data, []byte("\n"))
		if !whole {
			break
		}
		before := state{}
		if h != nil {
			before = h.now
		}
		next, ok := replayed(h, line)
		if !ok {
			break
		}
		if h, last = next, before; string(line) == writtenLine {
			last = h.now
		}
		j.size += int64(len(line)) + 1
		data = rest
	}
	return j, h, last, j.cut(j.size)
}

// mostOfJournal is read, in bytes; what follows is forgotten [source.OwnChoice].
const mostOfJournal = 64 << 20

// replayed makes one record again.
func replayed(h *history, line []byte) (*history, bool) {
	var r record
	if json.Unmarshal(line, &r) != nil {
		return h, false
	}
	switch {
	case r.Begin != nil && r.Begin.Form == form:
		begin := state{text: r.Begin.Text}
		return &history{begin: begin, now: begin}, true
	case h == nil:
		return nil, false
	case r.Step != nil:
		return h, h.add(*r.Step)
	case r.Amend != nil:
		return h, h.amend(*r.Amend)
	case r.Move != nil:
		return h, h.move(*r.Move)
	}
	return h, r.Written
}

// writtenLine is the record that the file was written.
const writtenLine = `{"written":true}`

// write a record behind the others.
func (j *journal) write(r record) error {
	line, err := json.Marshal(r)
	if err != nil {
		return err
	}
	line = append(line, '\n')
	if _, err := j.file.Write(line); err != nil {
		_ = j.cut(j.size) // so that no half line stays; the error of writing is the one that counts
		return fmt.Errorf("the journal could not be written, so that nothing was changed: %w", err)
	}
	j.size += int64(len(line))
	return nil
}

// cut what is behind a size.
func (j *journal) cut(size int64) error {
	if err := j.file.Truncate(size); err != nil {
		return err
	}
	j.size = size
	return nil
}

// afresh begins the journal anew with a text.
func (j *journal) afresh(text []byte) (*history, error) {
	if err := j.cut(0); err != nil {
		return nil, err
	}
	begin := state{text: text}
	return &history{begin: begin, now: begin}, j.write(record{Begin: &beginning{form, text}})
}
