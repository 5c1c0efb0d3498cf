package desk

import (
	"maps"
	"slices"

	"ellwand/cmd/ellwand/page/edit"
	"ellwand/cmd/ellwand/strict"
	"ellwand/pieces/language"
)

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
	case a.Place != nil:
		return w.byHand(placed(string(w.now.text), *a.Place))
	case a.Lock != nil:
		return w.byHand(placed(string(w.now.text), *a.Lock))
	case a.Free != nil:
		return w.byHand(freed(string(w.now.text), *a.Free))
	case a.Units != "":
		return w.convert(a.Units)
	case a.Text != nil:
		w.kind, w.path, w.now.typed = Rewritten, "", nil
		w.take([]byte(*a.Text))
		return nil
	}
	return language.Refuse("there is nothing to do in this request", "in dieser Anfrage ist nichts zu tun")
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
	text, err := edit.Set(string(w.now.text), path, value, Order)
	if err != nil {
		return err
	}
	key := path.String()
	w.kind, w.path, w.going = Changed, key, typing
	found := read(w.desk.folder.PathOf(w.desk.name), []byte(text))
	against := found.againstValue(path)
	single := value.List == nil && value.Keys == nil
	if against == nil || !single {
		w.now.text, w.reading = []byte(text), &found
		delete(w.now.typed, key)
		w.standing()
		return nil
	}
	if w.now.typed == nil {
		w.now.typed = map[string]HalfValue{}
	}
	w.kind = HalfTyped
	w.now.typed[key] = HalfValue{Path: Steps(path), Value: value.Text, Fault: against.Said.String(),
		Said: against.Said, Kind: against.Kind.String()}
	return nil
}

// standing takes in what was half typed and stands now: a price, once there is a currency.
func (w *working) standing() {
	for _, key := range slices.Sorted(maps.Keys(w.now.typed)) {
		half := w.now.typed[key]
		path := PathOf(half.Path)
		text, err := edit.Set(string(w.now.text), path, edit.Text(half.Value), Order)
		if err != nil {
			continue
		}
		found := read(w.desk.folder.PathOf(w.desk.name), []byte(text))
		if found.againstValue(path) == nil {
			w.now.text, w.reading = []byte(text), &found
			delete(w.now.typed, key)
		}
	}
}

// unset removes a value, and what is half typed there or below.
func (w *working) unset(path strict.Path) error {
	text, err := edit.Unset(string(w.now.text), path)
	if err != nil {
		return err
	}
	w.kind, w.path = Removed, path.String()
	for key, half := range w.now.typed {
		if at := PathOf(half.Path); isWithin(at, path) {
			delete(w.now.typed, key)
		}
	}
	if text != string(w.now.text) {
		w.take([]byte(text))
	}
	return nil
}

func (w *working) convert(units string) error {
	text, err := InUnits(string(w.now.text), units)
	if err != nil {
		return err
	}
	if text != string(w.now.text) {
		w.kind, w.path, w.now.typed = Converted, "units", nil
		w.take([]byte(text))
	}
	return nil
}

// byHand takes a text in which what is laid by hand has changed.
func (w *working) byHand(text string, err error) error {
	if err != nil {
		return err
	}
	if text != string(w.now.text) {
		w.kind, w.path = Placed, ""
		w.take([]byte(text))
	}
	return nil
}
