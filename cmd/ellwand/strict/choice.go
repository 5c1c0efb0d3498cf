package strict

import (
	"reflect"
	"strings"

	"github.com/goccy/go-yaml/ast"
	"github.com/invopop/jsonschema"

	"ellwand/pieces/language"
)

// Worded is a type with a table of its words, in the order of its constants; the
// first is the usual one. Schema, hints and parsing come from that table.
type Worded interface{ Words() []string }

// Explained is a type that says what its words mean, in their order, "" of a word that
// says it itself. A key that holds one needs no other description.
type Explained interface {
	Worded
	Meanings() []string
}

// Choice is a word for a value of T, as it stands in the file.
type Choice[T Worded] string

// UnmarshalYAML takes the text as it stands.
func (c *Choice[T]) UnmarshalYAML(node ast.Node) error { *c = Choice[T](Written(node)); return nil }

// Words are those to choose from.
func (Choice[T]) Words() []string { return WordsOf[T]() }

// Description of the choice, where its type explains it.
func (Choice[T]) Description() string {
	var value T
	explained, is := any(value).(Explained)
	if !is {
		return ""
	}
	words, meanings := explained.Words(), explained.Meanings()
	told := make([]string, len(words))
	for i, word := range words {
		told[i] = word
		if meanings[i] != "" {
			told[i] += ": " + meanings[i]
		}
	}
	last := len(told) - 1
	told[last] = "or " + told[last]
	return strings.Join(told, "; ") + "; " + words[0] + " if not given"
}

// described is what has a description of its own.
type described interface{ Description() string }

// DescriptionOf the key that a field holds: that of its tag, or of its choice.
func DescriptionOf(field reflect.StructField) string {
	if text := field.Tag.Get("jsonschema_description"); text != "" {
		return text
	}
	if choice, is := reflect.Zero(field.Type).Interface().(described); is {
		return choice.Description()
	}
	return ""
}

// WordsOf are the words of a type.
func WordsOf[T Worded]() []string {
	var value T
	return value.Words()
}

// Chosen is the place of a word in a table; an empty one is the first. Of one that
// is not known it says so, and which there are.
func Chosen(what language.Sentence, text string, known []string) (at int, unknown language.Sentence) {
	if text == "" {
		return 0, language.Sentence{}
	}
	for i, name := range known {
		if Plain(text) == Plain(name) {
			return i, language.Sentence{}
		}
	}
	return 0, language.Say("%s is %q, which is not known; use one of: %s",
		"%s: %q ist nicht bekannt; es gibt: %s", what, text,
		strings.Join(known, ", "))
}

// ChoiceSchema is the schema of a choice; nil for any other type.
func ChoiceSchema(t reflect.Type) *jsonschema.Schema {
	choice, ok := reflect.Zero(t).Interface().(Worded)
	if !ok || t.Kind() != reflect.String {
		return nil
	}
	schema := &jsonschema.Schema{Type: "string"}
	for _, word := range choice.Words() {
		schema.Enum = append(schema.Enum, word)
	}
	return schema
}
