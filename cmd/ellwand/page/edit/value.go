package edit

import (
	"strings"
	"unicode"
	"unicode/utf8"

	"ellwand/cmd/ellwand/strict"
	"ellwand/pieces/language"
)

// ErrNoPlace says that the text has no place for a value: it is no YAML, or something
// else stands where the keys of the path should.
var ErrNoPlace = language.Refuse("the file cannot be changed at this place; open it as text and put it right there",
	"an dieser Stelle lässt sich die Datei nicht ändern; öffnen Sie sie als Text, und "+
		"berichtigen Sie sie dort")

// Value is what is written at a path: a text, a list or keys with values.
type Value struct {
	Text string
	List []Value
	Keys []Pair
}

// Pair is a key with its value.
type Pair struct {
	Key   string
	Value Value
}

// Text is a single value.
func Text(text string) Value { return Value{Text: text} }

// isText says that a value is a single one.
func (v Value) isText() bool { return v.List == nil && v.Keys == nil }

// isText says that all that is to be written is text, which a file can hold.
func isText(path strict.Path, value Value) bool {
	for _, step := range path {
		if !isPrintable(step.Key) {
			return false
		}
	}
	for _, one := range value.List {
		if !isText(nil, one) {
			return false
		}
	}
	for _, pair := range value.Keys {
		if !isPrintable(pair.Key) || !isText(nil, pair.Value) {
			return false
		}
	}
	return isPrintable(value.Text)
}

func isPrintable(text string) bool {
	isControl := func(r rune) bool { return unicode.IsControl(r) && r != '\n' && r != '\t' }
	return utf8.ValidString(text) && !strings.ContainsFunc(text, isControl)
}
