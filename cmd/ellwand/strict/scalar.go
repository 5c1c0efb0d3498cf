package strict

import (
	"strings"

	"github.com/goccy/go-yaml/ast"
	"github.com/invopop/jsonschema"
)

// The scalars keep the text of the file. The YAML reader would make 1 of 1.5
// for a whole number and 8 of 010, without a word.

// Text is any text.
type Text string

// Measure is a length: a number in the units of the file, or with its own unit.
type Measure string

// Count is a whole number, 1 or more.
type Count string

// YesNo is true, false, yes or no.
type YesNo string

// Written is the text of a scalar as it stands in the file.
func Written(node ast.Node) string {
	if block, ok := node.(*ast.LiteralNode); ok {
		node = block.Value
	}
	return strings.TrimSpace(node.GetToken().Value)
}

// None is the word that switches something off.
const None = "none"

// Optional marks keys in whose place None may stand.
type Optional interface{ MayBeNone() }

// MeansNone says that a text is that word, or no, which is written for it.
func MeansNone(text string) bool {
	return strings.EqualFold(text, None) || strings.EqualFold(text, "no")
}

// IsNone says that a node is that word.
func IsNone(node ast.Node) bool {
	_, isText := node.(*ast.StringNode)
	return isText && MeansNone(Written(node))
}

// UnmarshalYAML takes the text as it stands.
func (t *Text) UnmarshalYAML(node ast.Node) error { *t = Text(Written(node)); return nil }

// UnmarshalYAML takes the text as it stands.
func (m *Measure) UnmarshalYAML(node ast.Node) error { *m = Measure(Written(node)); return nil }

// UnmarshalYAML takes the text as it stands.
func (c *Count) UnmarshalYAML(node ast.Node) error { *c = Count(Written(node)); return nil }

// UnmarshalYAML takes the text as it stands.
func (y *YesNo) UnmarshalYAML(node ast.Node) error { *y = YesNo(Written(node)); return nil }

// JSONSchema lets an editor accept a number where a text is asked: size: 12.
func (Text) JSONSchema() *jsonschema.Schema {
	return &jsonschema.Schema{OneOf: []*jsonschema.Schema{{Type: "string"}, {Type: "number"}}}
}

// JSONSchema accepts 41.5, "41,5 cm", 16 3/8 and 2 1/8 yd.
func (Measure) JSONSchema() *jsonschema.Schema {
	return &jsonschema.Schema{OneOf: []*jsonschema.Schema{
		{Type: "number"},
		{Type: "string", Pattern: `^[0-9][0-9 .,/]*("|[a-z]+)?$`},
	}}
}

// JSONSchema accepts whole numbers from 1.
func (Count) JSONSchema() *jsonschema.Schema {
	return &jsonschema.Schema{Type: "integer", Minimum: "1"}
}

// JSONSchema accepts true and false, yes and no.
func (YesNo) JSONSchema() *jsonschema.Schema {
	return &jsonschema.Schema{Enum: []any{true, false, "yes", "no"}}
}
