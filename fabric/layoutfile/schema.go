package layoutfile

import (
	"encoding/json"
	"io"

	"github.com/invopop/jsonschema"
)

// WriteSchema writes the JSON Schema of the layout file.
func WriteSchema(w io.Writer) error {
	reflector := jsonschema.Reflector{Anonymous: true, ExpandedStruct: true}
	schema := reflector.Reflect(&File{})
	schema.Title = "Ellwand layout"
	encoder := json.NewEncoder(w)
	encoder.SetIndent("", "  ")
	encoder.SetEscapeHTML(false)
	return encoder.Encode(schema)
}
