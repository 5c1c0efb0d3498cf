// Package desk holds one job that is being worked on: the text of its file, which it
// keeps in step with the folder, what is half typed, and all steps that can be gone back.
//
// Each change is written at once: first as a line of a journal beside the job, then, where
// the value stands, into the file. So a program that is killed loses nothing that it had
// answered, and a file that somebody else changes meanwhile is taken in as a step of its
// own, never overwritten.
package desk

import (
	"bytes"
	"errors"
	"io/fs"
	"sync"
	"time"

	"ellwand/cmd/ellwand/limit"
	"ellwand/cmd/ellwand/page/edit"
	"ellwand/cmd/ellwand/page/folder"
	"ellwand/pieces/language"
)

// ErrStale says that the job has changed since the page that asks has seen it.
var ErrStale = language.Refuse("the job has changed meanwhile; here it is as it is now",
	"der Auftrag hat sich inzwischen geändert; hier steht er, wie er jetzt ist")

// Desk is one job at work. It may be used by several goroutines.
type Desk struct {
	mutex   sync.Mutex
	folder  *folder.Folder
	name    string
	journal *journal
	history *history
	// disk is what the file held when it was last read or written; nil when it is gone.
	disk     []byte
	revision int
	reading  Reading
	// emptied says that the file was found empty at the last look.
	emptied bool
	// outside says that a change from outside was taken in, until it is noticed.
	outside language.Sentence
	// Now is the time; for tests.
	now func() time.Time
}

// Open puts a job of a folder on a desk, with its journal.
func Open(f *folder.Folder, name string) (*Desk, error) {
	if err := folder.Named(name); err != nil {
		return nil, err
	}
	d := &Desk{folder: f, name: name, now: time.Now}
	var err error
	if d.disk, err = f.Read(name, limit.JobSize); err != nil {
		return nil, err
	}
	var last state
	if d.journal, d.history, last, err = openJournal(f, name); err != nil {
		return nil, err
	}
	if err := d.reconcile(last); err != nil {
		return nil, err
	}
	d.reread()
	return d, nil
}

// reconcile the file with its journal: a last step that was not written any more is
// written; any other difference came from outside.
func (d *Desk) reconcile(last state) error {
	switch {
	case d.history == nil:
		var err error
		d.history, err = d.journal.afresh(d.disk)
		return err
	case bytes.Equal(d.history.now.text, d.disk):
		return nil
	case bytes.Equal(last.text, d.disk):
		if err := d.writeFile(d.history.now.text); err != nil {
			return err
		}
		return d.journal.write(record{Written: true})
	}
	return d.takeIn(d.disk)
}

// Close the journal.
func (d *Desk) Close() error {
	d.mutex.Lock()
	defer d.mutex.Unlock()
	return d.journal.file.Close()
}

// State as it is now.
func (d *Desk) State() State {
	d.mutex.Lock()
	defer d.mutex.Unlock()
	return d.state()
}

func (d *Desk) state() State {
	return State{
		Revision: d.revision, Text: string(d.history.now.text), Typed: d.typed(),
		CanUndo: d.history.at > 0, CanRedo: d.history.at < len(d.history.steps),
		Outside: d.saidOutside(), History: d.history.list(), Reading: d.reading,
	}
}

// typed is what is half typed, with what speaks against it in every language.
func (d *Desk) typed() map[string]HalfValue {
	for key, half := range d.history.now.typed {
		if half.Said.IsEmpty() { // of a journal, which has it in English
			half.Said = d.against(half)
			d.history.now.typed[key] = half
		}
	}
	return d.history.now.typed
}

func (d *Desk) against(half HalfValue) language.Sentence {
	path := PathOf(half.Path)
	text, err := edit.Set(string(d.history.now.text), path, edit.Text(half.Value), Order)
	if err == nil {
		if fault := read(d.folder.PathOf(d.name), []byte(text)).againstValue(path); fault != nil {
			return fault.Said
		}
	}
	return language.Name(half.Fault)
}

// The sentences about what happened to the file from outside.
var (
	saidTakenIn = language.Say("the file was changed outside of this page; that change is taken in, and undo brings back "+
		"what was here", "die Datei wurde außerhalb dieser Seite geändert; die Änderung ist übernommen, und Zurücknehmen "+
		"bringt wieder, was hier war")
	saidGone = language.Say("the file was taken away or renamed; with the next change it is written anew",
		"die Datei wurde weggenommen oder umbenannt; mit der nächsten Änderung wird sie neu geschrieben")
)

func (d *Desk) saidOutside() language.Sentence {
	if d.disk == nil {
		return saidGone
	}
	return d.outside
}

// reread the text after it changed.
func (d *Desk) reread() {
	d.revision++
	d.reading = read(d.folder.PathOf(d.name), d.history.now.text)
}

// Look whether the file was changed from outside, and take that in. It reports whether
// the state changed.
func (d *Desk) Look() (bool, error) {
	d.mutex.Lock()
	defer d.mutex.Unlock()
	return d.look()
}

func (d *Desk) look() (bool, error) {
	data, err := d.folder.Read(d.name, limit.JobSize)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		gone := d.disk != nil
		d.disk = nil
		if gone {
			d.revision++
		}
		return gone, nil
	case err != nil:
		return false, err
	case bytes.Equal(data, d.disk) && d.disk != nil:
		return false, nil
	case bytes.Equal(data, d.history.now.text):
		back := d.disk == nil
		d.disk = data
		if back {
			d.revision++
		}
		return back, nil
	}
	if len(data) == 0 && len(d.disk) > 0 && !d.emptied {
		d.emptied = true // most likely somebody is about to write it; the next look tells
		return false, nil
	}
	d.disk, d.emptied = data, false
	if err := d.takeIn(data); err != nil {
		return false, err
	}
	d.reread()
	return true, nil
}

// takeIn a text from outside as a step.
func (d *Desk) takeIn(text []byte) error {
	after := state{text: text, typed: d.history.now.typed}
	s := stepBetween(d.history.now, after)
	s.Kind, s.When = TakenIn, d.now()
	if err := d.journal.write(record{Step: &s}); err != nil {
		return err
	}
	d.history.add(s)
	d.outside = saidTakenIn
	return d.journal.write(record{Written: true})
}

// writeFile writes a text into the file.
func (d *Desk) writeFile(text []byte) error {
	if bytes.Equal(text, d.disk) && d.disk != nil {
		return nil
	}
	if err := d.folder.Replace(d.name, d.disk, text); err != nil {
		return err
	}
	d.disk = text
	return nil
}
