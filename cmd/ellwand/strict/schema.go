package strict

import (
	"encoding/json"
	"io"
	"reflect"

	"github.com/invopop/jsonschema"
)

// WriteSchema writes the JSON Schema of a file that is read into a pointer to a
// struct, with which an editor completes and checks it.
func WriteSchema(w io.Writer, title string, into any) error {
	reflector := jsonschema.Reflector{
		FieldNameTag:               "yaml",
		RequiredFromJSONSchemaTags: true,
		Anonymous:                  true,
		ExpandedStruct:             true,
		Mapper:                     ChoiceSchema,
		LookupComment:              descriptionIn,
	}
	schema := reflector.Reflect(into)
	schema.Title = title
	encoder := json.NewEncoder(w)
	encoder.SetIndent("", "  ")
	encoder.SetEscapeHTML(false)
	return encoder.Encode(schema)
}

// descriptionIn a type is that of a field without one in its tag.
func descriptionIn(of reflect.Type, name string) string {
	if of.Kind() != reflect.Struct {
		return ""
	}
	field, found := of.FieldByName(name)
	if !found {
		return ""
	}
	return DescriptionOf(field)
}

// SchemaOf is the schema of the keys of a value that may be written otherwise too.
func SchemaOf(value any) *jsonschema.Schema {
	reflector := jsonschema.Reflector{
		FieldNameTag: "yaml", RequiredFromJSONSchemaTags: true, Anonymous: true, DoNotReference: true, ExpandedStruct: true,
		Mapper: ChoiceSchema, LookupComment: descriptionIn,
	}
	schema := reflector.Reflect(value)
	schema.Version = ""
	return schema
}
