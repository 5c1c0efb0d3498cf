package report

import (
	"bytes"
	"encoding/json"
	"fmt"
	"io"
	"reflect"

	"github.com/invopop/jsonschema"

	"ellwand/pieces/text"
)

// Version of the form of all documents. It is raised when a field goes or means
// another thing; a new field does not raise it.
const Version = 1

// kinds of document, by the names under which their schemas are asked for.
var kinds = []struct {
	name string
	of   any
}{
	{"draft", Draft{}}, {"sizes", Sizes{}}, {"estimate", Estimate{}}, {"table", Table{}}, {"marker", Plans{}},
	{"remnant", Remnant{}}, {"print", Print{}}, {"compare", Comparison{}}, {"convert", Conversion{}},
	{"quote", Quote{}}, {"pieces", Pieces{}}, {"drawing", Drawing{}}, {"new", Started{}}, {"version", Program{}},
	{"error", Error{}},
}

// Started is what new prints as JSON.
type Started struct {
	File string `json:"file"`
}

// Program is what version prints as JSON.
type Program struct {
	Version string `json:"version"`
	Commit  string `json:"commit"`
	Go      string `json:"go"`
}

// Error is printed in place of a document where there is none: nothing was done.
// Status is the exit status.
type Error struct {
	Status  int    `json:"status"`
	Message string `json:"message"`
	// Faults of a job file, each with its line.
	Faults []Fault `json:"faults"`
}

// Fault is one thing wrong in a job file. Line counts from 1; it is 0 where there
// is no file to read. Path names the value: "cloths[0].width".
type Fault struct {
	File string `json:"file"`
	Line int    `json:"line"`
	Path string `json:"path"`
	Text string `json:"text"`
}

// Names of the documents.
func Names() []string {
	out := make([]string, len(kinds))
	for i, kind := range kinds {
		out[i] = kind.name
	}
	return out
}

// Write writes one of the documents, indented, headed by the version of its form
// and its name. Any other value is an error of the program.
func Write(w io.Writer, document any) error {
	for _, kind := range kinds {
		if reflect.TypeOf(kind.of) == reflect.TypeOf(document) {
			return write(w, kind.name, document)
		}
	}
	return fmt.Errorf("%T is no document", document)
}

func write(w io.Writer, name string, document any) error {
	var fields, whole bytes.Buffer
	encoder := json.NewEncoder(&fields)
	encoder.SetEscapeHTML(false)
	if err := encoder.Encode(document); err != nil {
		return err
	}
	head := fmt.Sprintf(`{"format_version":%d,"document":%q,`, Version, name)
	rest := bytes.TrimPrefix(fields.Bytes(), []byte("{"))
	if err := json.Indent(&whole, append([]byte(head), rest...), "", "  "); err != nil {
		return err
	}
	_, err := w.Write(text.JSON(whole.Bytes()))
	return err
}

// WriteSchema writes the JSON Schema of the document of a name; it reports
// whether there is one.
func WriteSchema(w io.Writer, name string) (bool, error) {
	for _, kind := range kinds {
		if kind.name == name {
			return true, writeSchema(w, kind.name, kind.of)
		}
	}
	return false, nil
}

func writeSchema(w io.Writer, name string, document any) error {
	reflector := jsonschema.Reflector{Anonymous: true, ExpandedStruct: true}
	schema := reflector.Reflect(document)
	schema.Title = "Ellwand " + name
	schema.Properties.Set("format_version", &jsonschema.Schema{Const: Version})
	schema.Properties.Set("document", &jsonschema.Schema{Const: name})
	schema.Required = append([]string{"format_version", "document"}, schema.Required...)
	encoder := json.NewEncoder(w)
	encoder.SetIndent("", "  ")
	encoder.SetEscapeHTML(false)
	return encoder.Encode(schema)
}
