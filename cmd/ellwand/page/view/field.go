// Package view is what the page is shown of a job, as data: the fields of its form, its
// pieces as drawings, its cloths. It decides nothing.
package view

import (
	"maps"
	"slices"

	"ellwand/cmd/ellwand/page/desk"
	"ellwand/cmd/ellwand/strict"
	"ellwand/pieces/language"
)

// Field is one single value of the form.
type Field struct {
	Path []any `json:"path"`
	// Kind is what is written there: text, measure, count, yesno, choice.
	Kind    string   `json:"kind"`
	Choices []string `json:"choices,omitempty"`
	Help    string   `json:"help,omitempty"`
	Needed  bool     `json:"needed,omitempty"`
	// Value as it is typed, be it half; empty where there is none.
	Value string `json:"value"`
	// Derived is what is used in place of a value that is not given, and Why.
	Derived string `json:"derived"`
	Why     string `json:"why,omitempty"`
	// Fault says what is wrong with a value that is half typed, FaultKind of what kind it is.
	Fault     string `json:"fault,omitempty"`
	FaultKind string `json:"fault_kind,omitempty"`
}

// Group is a place where more than a single value stands, or may: keys of their own, a
// list of entries, a list of single values.
type Group struct {
	Path []any `json:"path"`
	// Kind is keys, entries, list or several (a single value or keys).
	Kind    string `json:"kind"`
	Help    string `json:"help,omitempty"`
	Present bool   `json:"present"`
	Entries int    `json:"entries,omitempty"`
	// List of single values.
	List []string `json:"list,omitempty"`
	// Kinds that an entry may be of, where entries are told apart so.
	Kinds []string `json:"kinds,omitempty"`
}

// single values, by the words by which programs tell them; groups.
var (
	singles = map[strict.Holds]string{
		strict.HoldsText: "text", strict.HoldsLength: "measure", strict.HoldsCount: "count", strict.HoldsYesNo: "yesno",
		strict.HoldsWord: "choice",
	}
	groups = map[strict.Holds]string{
		strict.HoldsKeys: "keys", strict.HoldsEntries: "entries", strict.HoldsList: "list", strict.HoldsSeveral: "several",
	}
)

// former makes the fields of one state.
type former struct {
	state  desk.State
	reader language.Language
	fields []Field
	groups []Group
}

// formOf a state, in the order of the file's keys, those above before those below.
func formOf(state desk.State, tree any, reader language.Language) former {
	f := former{state: state, reader: reader, fields: []Field{}, groups: []Group{}}
	keys, _ := tree.(map[string]any)
	f.mapping(strict.Path{}, keys)
	return f
}

// always shown, though nothing of them stands in the file.
var always = []string{"body", "allowances"}

// mapping adds the fields of a mapping at a path.
func (f *former) mapping(path strict.Path, node map[string]any) {
	known, _ := desk.MappingAt(path)
	for _, key := range known.Keys {
		at := path.Key(key.Name)
		value, present := node[key.Name]
		if kind, is := singles[key.Holds]; is {
			f.fields = append(f.fields, f.field(at, key, kind, value))
			continue
		}
		if key.Name == "body" && len(path) == 0 && node["wearers"] != nil && !present {
			continue
		}
		f.groups = append(f.groups, groupOf(at, key, value, present))
		switch below := value.(type) {
		case map[string]any:
			f.mapping(at, below)
			if key.Keys == "" {
				f.named(at, below)
			}
		case []any:
			f.entries(at, key, below)
		case nil:
			if slices.Contains(always, key.Name) && len(path) == 0 || key.Name == "body" {
				f.mapping(at, nil)
			}
		}
	}
}

// named are the values of a mapping whose keys are names that people give.
func (f *former) named(path strict.Path, node map[string]any) {
	for _, name := range slices.Sorted(maps.Keys(node)) {
		at := path.Key(name)
		switch value := node[name].(type) {
		case string:
			f.fields = append(f.fields, f.field(at, strict.Key{Name: name}, singles[strict.HoldsLength], value))
		case []any:
			f.groups = append(f.groups, groupOf(at, strict.Key{Name: name, Holds: strict.HoldsList}, value, true))
		}
	}
}

func (f *former) entries(path strict.Path, key strict.Key, list []any) {
	if key.Keys == "" {
		return
	}
	for i, one := range list {
		if below, is := one.(map[string]any); is {
			f.mapping(path.Entry(i), below)
		}
	}
}

func (f *former) field(path strict.Path, key strict.Key, kind string, value any) Field {
	out := Field{Path: desk.Steps(path), Kind: kind, Choices: key.Words, Help: key.Text, Needed: key.Needed}
	out.Value, _ = value.(string)
	if half, is := f.state.Typed[path.String()]; is {
		out.Value, out.Fault, out.FaultKind = half.Value, half.Said.In(f.reader), half.Kind
	}
	if out.Value == "" {
		out.Derived, out.Why = derived(f.state.Work, path, f.reader)
	}
	return out
}

func groupOf(path strict.Path, key strict.Key, value any, present bool) Group {
	out := Group{Path: desk.Steps(path), Kind: groups[key.Holds], Help: key.Text, Present: present}
	out.Kinds = kindsOf(path, key)
	list, _ := value.([]any)
	out.Entries = len(list)
	for _, one := range list {
		if text, is := one.(string); is {
			out.List = append(out.List, text)
		}
	}
	return out
}

// kindsOf the entries of a list.
func kindsOf(path strict.Path, key strict.Key) []string {
	if key.Holds != strict.HoldsEntries {
		return nil
	}
	entry, _ := desk.MappingAt(path.Entry(0))
	for _, below := range entry.Keys {
		if below.Name == "kind" {
			return below.Words
		}
	}
	return nil
}
