package desk

import (
	"errors"
	"maps"

	"ellwand/cmd/ellwand/page/folder"
	"ellwand/pieces/language"
)

// Act does some things to the job as one step, all of them or none. Base is the revision
// that they were meant for; where the job is another one by now it is ErrStale, with the
// state as it is.
func (d *Desk) Act(base int, actions []Action) (State, error) {
	d.mutex.Lock()
	defer d.mutex.Unlock()
	if _, err := d.look(); err != nil {
		return d.state(), err
	}
	if base != d.revision {
		return d.state(), ErrStale
	}
	r, read, err := d.plan(actions)
	noticed := err == nil && !d.outside.IsEmpty()
	if noticed {
		d.outside = language.Sentence{}
	}
	if err != nil || r == (record{}) {
		if noticed {
			d.revision++
		}
		return d.state(), err
	}
	before, size := *d.history, d.journal.size
	if err := d.journal.write(r); err != nil {
		return d.state(), err
	}
	d.carryOut(r)
	if err := d.writeFile(d.history.now.text); err != nil {
		*d.history = before
		undone := d.journal.cut(size)
		if errors.Is(err, folder.ErrChanged) && undone == nil {
			if _, err := d.look(); err != nil {
				return d.state(), err
			}
			return d.state(), ErrStale
		}
		return d.state(), errors.Join(err, undone)
	}
	if err := d.journal.write(record{Written: true}); err != nil {
		return d.state(), err
	}
	if read != nil {
		d.revision++
		d.reading = *read
	} else {
		d.reread()
	}
	return d.state(), nil
}

// carryOut a record in the history.
func (d *Desk) carryOut(r record) {
	switch {
	case r.Move != nil:
		d.history.move(*r.Move)
	case r.Amend != nil:
		d.history.amend(*r.Amend)
	case r.Step != nil:
		d.history.add(*r.Step)
	}
}

// errAlone refuses a move beside other actions.
var errAlone = language.Refuse("going back and forth stands by itself",
	"Zurückgehen und Wiederholen stehen für sich allein")

// plan says what some actions come to: a step, a move, or nothing. The reading of the
// text that comes out is given where it is known.
func (d *Desk) plan(actions []Action) (record, *Reading, error) {
	for _, action := range actions {
		to, is := d.moveOf(action)
		switch {
		case is && len(actions) > 1:
			return record{}, nil, errAlone
		case is && (to < 0 || to > len(d.history.steps) || to == d.history.at):
			return record{}, nil, nil
		case is:
			return record{Move: &to}, nil, nil
		}
	}
	w := &working{desk: d, now: state{d.history.now.text, maps.Clone(d.history.now.typed)}, reading: &d.reading}
	for _, action := range actions {
		if err := w.do(action); err != nil {
			return record{}, nil, err
		}
	}
	s := stepBetween(d.history.now, w.now)
	if s.isEmpty() {
		return record{}, nil, nil
	}
	s.Kind, s.Path, s.When, s.Going = w.kind, w.path, d.now(), w.going && len(actions) == 1
	if d.history.goesOn(s) {
		return record{Amend: &s}, w.reading, nil
	}
	return record{Step: &s}, w.reading, nil
}

// moveOf an action that goes back or forth: to where so many steps are made.
func (d *Desk) moveOf(a Action) (int, bool) {
	switch {
	case a.Undo != nil, a.KeepMine != nil && !d.outside.IsEmpty():
		return d.history.at - 1, true
	case a.Redo != nil:
		return d.history.at + 1, true
	case a.Restore != nil:
		return a.Restore.Step, true
	}
	return 0, false
}
