package strict

import (
	"reflect"
	"strings"

	"github.com/goccy/go-yaml/ast"
	"github.com/invopop/jsonschema"
)

// Worded is a type with a table of its words, in the order of its constants; the
// first is the usual one. Schema, hints and parsing come from that table.
type Worded interface{ Words() []string }

// Choice is a word for a value of T, as it stands in the file.
type Choice[T Worded] string

// UnmarshalYAML takes the text as it stands.
func (c *Choice[T]) UnmarshalYAML(node ast.Node) error { *c = Choice[T](Written(node)); return nil }

// Words are those to choose from.
func (Choice[T]) Words() []string { return WordsOf[T]() }

// WordsOf are the words of a type.
func WordsOf[T Worded]() []string {
	var value T
	return value.Words()
}

// Chosen is the place of a word in a table; an empty one is the first. Of one that
// is not known it says so, and which there are.
func Chosen(what, text string, known []string) (at int, unknown string) {
	if text == "" {
		return 0, ""
	}
	for i, name := range known {
		if Plain(text) == Plain(name) {
			return i, ""
		}
	}
	return 0, what + " is \"" + text + "\", which is not known; use one of: " + strings.Join(known, ", ")
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
