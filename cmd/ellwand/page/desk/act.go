package desk

import (
	"errors"
	"maps"

	"ellwand/cmd/ellwand/page/edit"
	"ellwand/cmd/ellwand/strict"
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
	if err == nil && d.outside != "" {
		d.outside = ""
		d.revision++
	}
	if err != nil || r == (record{}) {
		return d.state(), err
	}
	before, size := *d.history, d.journal.size
	if err := d.journal.write(r); err != nil {
		return d.state(), err
	}
	d.carryOut(r)
	if err := d.writeFile(d.history.now.text); err != nil {
		*d.history = before
		return d.state(), errors.Join(err, d.journal.cut(size))
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
var errAlone = errors.New("going back and forth stands by itself")

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
	case a.Undo != nil, a.KeepMine != nil && d.outside != "":
		return d.history.at - 1, true
	case a.Redo != nil:
		return d.history.at + 1, true
	case a.Restore != nil:
		return a.Restore.Step, true
	}
	return 0, false
}

// working is a state while actions are done to it.
type working struct {
	desk *Desk
	now  state
	// reading of the text as it is now.
	reading *Reading
	kind    Kind
	path    string
	going   bool
}

func (w *working) do(a Action) error {
	switch {
	case a.Set != nil:
		return w.set(strict.Path(a.Set.Path), a.Set.Value.Value, a.Set.Typing)
	case a.Unset != nil:
		return w.unset(strict.Path(a.Unset.Path))
	case a.Append != nil:
		path := strict.Path(a.Append.Path)
		return w.set(path.Entry(edit.Len(string(w.now.text), path)), a.Append.Value.Value, false)
	case a.TakeOutside != nil, a.KeepMine != nil:
		return nil
	case a.Text != nil:
		w.kind, w.path, w.now.typed = Rewritten, "", nil
		w.take([]byte(*a.Text))
		return nil
	}
	return errors.New("there is nothing to do in this request")
}

// take a text that is read by itself.
func (w *working) take(text []byte) {
	read := read(w.desk.folder.PathOf(w.desk.name), text)
	w.now.text, w.reading = text, &read
}

// set a value. One that does not stand by itself is kept beside the file; an empty text
// removes what stands there.
func (w *working) set(path strict.Path, value edit.Value, typing bool) error {
	if len(path) == 0 {
		return edit.ErrNoPlace
	}
	if value.List == nil && value.Keys == nil && value.Text == "" {
		err := w.unset(path)
		w.going = typing
		return err
	}
	text, err := edit.Set(string(w.now.text), path, value, order)
	if err != nil {
		return err
	}
	key := path.String()
	w.kind, w.path, w.going = Changed, key, typing
	found := read(w.desk.folder.PathOf(w.desk.name), []byte(text))
	against := found.againstValue(path)
	single := value.List == nil && value.Keys == nil
	if against == "" || !single {
		w.now.text, w.reading = []byte(text), &found
		delete(w.now.typed, key)
		return nil
	}
	if w.now.typed == nil {
		w.now.typed = map[string]HalfValue{}
	}
	w.kind = HalfTyped
	w.now.typed[key] = HalfValue{Path: Steps(path), Value: value.Text, Fault: against}
	return nil
}

// unset removes a value, and what is half typed there or below.
func (w *working) unset(path strict.Path) error {
	text, err := edit.Unset(string(w.now.text), path)
	if err != nil {
		return err
	}
	w.kind, w.path = Removed, path.String()
	for key, half := range w.now.typed {
		if at := pathOf(half.Path); isWithin(at, path) {
			delete(w.now.typed, key)
		}
	}
	if text != string(w.now.text) {
		w.take([]byte(text))
	}
	return nil
}

// pathOf steps as JSON has them.
func pathOf(steps []any) strict.Path {
	out := strict.Path{}
	for _, one := range steps {
		switch s := one.(type) {
		case string:
			out = out.Key(s)
		case int:
			out = out.Entry(s)
		case float64:
			out = out.Entry(int(s))
		}
	}
	return out
}
