package job

import (
	"encoding/json"
	"io"

	"github.com/invopop/jsonschema"
)

// WriteSchema writes the JSON Schema of the job file, with which an editor
// completes and checks it.
func WriteSchema(w io.Writer) error {
	reflector := jsonschema.Reflector{
		FieldNameTag:               "yaml",
		RequiredFromJSONSchemaTags: true,
		Anonymous:                  true,
		ExpandedStruct:             true,
		Mapper:                     choiceSchema,
	}
	schema := reflector.Reflect(&File{})
	schema.Title = "Ellwand job"
	encoder := json.NewEncoder(w)
	encoder.SetIndent("", "  ")
	encoder.SetEscapeHTML(false)
	return encoder.Encode(schema)
}
