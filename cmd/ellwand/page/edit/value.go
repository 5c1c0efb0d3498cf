package edit

import "errors"

// ErrNoPlace says that the text has no place for a value: it is no YAML, or something
// else stands where the keys of the path should.
var ErrNoPlace = errors.New("the file cannot be changed at this place; open it as text and put it right there")

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
