package desk

import (
	"bytes"
	"encoding/json"
	"fmt"

	"ellwand/cmd/ellwand/page/edit"
	"ellwand/cmd/ellwand/strict"
	"ellwand/pieces/language"
)

// Action is one thing that is done to a job: of its fields one is set.
type Action struct {
	Set   *Setting `json:"set,omitempty"`
	Unset *Place   `json:"unset,omitempty"`
	// Units that the whole job is converted into.
	Units string `json:"units,omitempty"`
	// Text that stands in the place of the whole file.
	Text *string   `json:"text,omitempty"`
	Undo *struct{} `json:"undo,omitempty"`
	Redo *struct{} `json:"redo,omitempty"`
	// Place lays a piece by hand, Lock one where it lies, and Free lets it, or all of a lay,
	// be laid by the program again.
	Place *Placing `json:"place,omitempty"`
	Lock  *Placing `json:"lock,omitempty"`
	Free  *Placing `json:"free,omitempty"`
	// Restore goes back or forth to where so many steps are made.
	Restore *Restoring `json:"restore,omitempty"`
	// Append adds an entry to a list.
	Append *Setting `json:"append,omitempty"`
	// TakeOutside says that a change from outside was noticed; KeepMine undoes it.
	TakeOutside *struct{} `json:"takeOutside,omitempty"`
	KeepMine    *struct{} `json:"keepMine,omitempty"`
}

// Setting writes a value at a path.
type Setting struct {
	Path  Path  `json:"path"`
	Value Value `json:"value"`
	// Typing says that it is typed letter by letter: with what follows in the same
	// place it is one step.
	Typing bool `json:"typing,omitempty"`
}

// Restoring names a state of the history.
type Restoring struct {
	Step int `json:"step"`
}

// Place is a path alone.
type Place struct {
	Path Path `json:"path"`
}

// Path is a path in a job as JSON: ["cloths", 0, "width"].
type Path strict.Path

// UnmarshalJSON reads keys and entries.
func (p *Path) UnmarshalJSON(data []byte) error {
	var steps []any
	if err := json.Unmarshal(data, &steps); err != nil {
		return language.Refuse("a path is a list of keys and of numbers of entries",
			"ein Pfad ist eine Liste von Schlüsseln und Nummern")
	}
	out := strict.Path{}
	for _, one := range steps {
		switch s := one.(type) {
		case string:
			if s == "" {
				return language.Refuse("a key of a path is empty", "ein Schlüssel eines Pfads ist leer")
			}
			out = out.Key(s)
		case float64:
			if s < 0 || s != float64(int(s)) {
				return fmt.Errorf("%v is no number of an entry", s)
			}
			out = out.Entry(int(s))
		default:
			return language.Refuse("a path is a list of keys and of numbers of entries",
				"ein Pfad ist eine Liste von Schlüsseln und Nummern")
		}
	}
	*p = Path(out)
	return nil
}

// Steps of a path as JSON has them.
func Steps(p strict.Path) []any {
	out := make([]any, len(p))
	for i, step := range p {
		if out[i] = step.Key; step.Key == "" {
			out[i] = step.Index
		}
	}
	return out
}

// Value is a value as JSON, its keys in the order given.
type Value struct{ edit.Value }

// UnmarshalJSON keeps numbers as they are written.
func (v *Value) UnmarshalJSON(data []byte) error {
	decoder := json.NewDecoder(bytes.NewReader(data))
	decoder.UseNumber()
	value, err := valueFrom(decoder)
	v.Value = value
	return err
}

func valueFrom(decoder *json.Decoder) (edit.Value, error) {
	token, err := decoder.Token()
	if err != nil {
		return edit.Value{}, err
	}
	switch t := token.(type) {
	case string:
		return edit.Text(t), nil
	case json.Number:
		return edit.Text(t.String()), nil
	case bool:
		if t {
			return edit.Text("yes"), nil
		}
		return edit.Text("no"), nil
	case json.Delim:
		if t == '[' {
			return listFrom(decoder)
		}
		return keysFrom(decoder)
	}
	return edit.Value{}, language.Refuse("a value is a text, a number, yes or no, a list or keys",
		"ein Wert ist ein Text, eine Zahl, ja oder nein, eine Liste oder Schlüssel")
}

func listFrom(decoder *json.Decoder) (edit.Value, error) {
	out := edit.Value{List: []edit.Value{}}
	for decoder.More() {
		one, err := valueFrom(decoder)
		if err != nil {
			return out, err
		}
		out.List = append(out.List, one)
	}
	_, err := decoder.Token()
	return out, err
}

func keysFrom(decoder *json.Decoder) (edit.Value, error) {
	out := edit.Value{Keys: []edit.Pair{}}
	for decoder.More() {
		token, err := decoder.Token()
		if err != nil {
			return out, err
		}
		key, _ := token.(string)
		value, err := valueFrom(decoder)
		if err != nil {
			return out, err
		}
		out.Keys = append(out.Keys, edit.Pair{Key: key, Value: value})
	}
	_, err := decoder.Token()
	return out, err
}
