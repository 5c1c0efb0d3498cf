// Package edit changes single values of a YAML text and leaves all else as it was
// written: comments, order, blank lines, quotation marks. What it writes is read again
// and compared with what was meant; a text that came out otherwise is never returned.
package edit

import (
	"fmt"
	"slices"
	"strings"

	"go.yaml.in/yaml/v3"

	"ellwand/cmd/ellwand/strict"
)

// Set writes a value at a path. Keys above it that do not stand in the text are added;
// the entry behind the last of a list adds one. Of each mapping, keys says in which
// order its keys stand; it may be nil.
func Set(text string, path strict.Path, value Value, keys Order) (string, error) {
	if !isText(path, value) {
		return "", ErrNoPlace
	}
	d, err := parsed(text)
	if err != nil {
		return "", err
	}
	out, err := d.set(path, value, keys)
	if err != nil {
		return "", err
	}
	return out, proven(text, out, func(tree any) (any, bool) { return withValue(tree, path, value.plain()) })
}

// Edit is a value for a path that stands in the text.
type Edit struct {
	Path  strict.Path
	Value Value
}

// SetAll writes several single values over those that stand in the text, each once.
func SetAll(text string, edits []Edit) (string, error) {
	d, err := parsed(text)
	if err != nil {
		return "", err
	}
	type found struct {
		from int
		at   place
		to   Value
	}
	var all []found
	for _, one := range edits {
		at, stands := d.locate(one.Path)
		if !stands || !one.Value.isText() {
			return "", ErrNoPlace
		}
		all = append(all, found{d.begin(at.value), at, one.Value})
	}
	slices.SortFunc(all, func(a, b found) int { return b.from - a.from })
	out := text
	for _, one := range all { // from the end, so that places before stay
		out = out[:one.from] + d.scalarAt(one.at, one.to) + out[d.end(one.at.value):]
	}
	return out, proven(text, out, func(tree any) (any, bool) {
		for _, one := range edits {
			var ok bool
			if tree, ok = withValue(tree, one.Path, one.Value.plain()); !ok {
				return nil, false
			}
		}
		return tree, true
	})
}

// Unset removes a value with its key. A mapping or list that is left empty goes with
// it. Without such a value the text is returned as it is.
func Unset(text string, path strict.Path) (string, error) {
	d, err := parsed(text)
	if err != nil {
		return "", err
	}
	at, found := d.locate(path)
	if !found || len(path) == 0 {
		return text, nil
	}
	for len(path) > 1 && at.isOnly() {
		path = path[:len(path)-1]
		at, _ = d.locate(path)
	}
	out := d.remove(at)
	return out, proven(text, out, func(tree any) (any, bool) { return withoutValue(tree, path), true })
}

// Get is the text of a single value; false where there is none.
func Get(text string, path strict.Path) (string, bool) {
	d, err := parsed(text)
	if err != nil {
		return "", false
	}
	at, found := d.locate(path)
	if !found || at.value.Kind != yaml.ScalarNode || at.value.Tag == "!!null" {
		return "", false
	}
	return strings.TrimSpace(at.value.Value), true
}

// Len is the number of entries of a list; 0 where there is none.
func Len(text string, path strict.Path) int {
	d, err := parsed(text)
	if err != nil {
		return 0
	}
	at, found := d.locate(path)
	if !found || at.value.Kind != yaml.SequenceNode {
		return 0
	}
	return len(at.value.Content)
}

// proven reads a text again and compares it with what was meant.
func proven(before, after string, meant func(any) (any, bool)) error {
	var was, is any
	if err := yaml.Unmarshal([]byte(before), &was); err != nil {
		return ErrNoPlace
	}
	want, ok := meant(texts(was))
	if !ok {
		return ErrNoPlace
	}
	if err := yaml.Unmarshal([]byte(after), &is); err != nil || !same(texts(is), want) {
		return fmt.Errorf("%w (it was left as it is)", ErrNoPlace)
	}
	return nil
}
