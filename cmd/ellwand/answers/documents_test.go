package answers

import (
	"encoding/json"
	"slices"
	"strings"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v6"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/cmd/ellwand/report"
	"ellwand/testdata/program"
)

// Every document that --json prints keeps the schema that the program prints for
// it, as a reader that is not ours finds; an error is a document too.
func TestDocumentsKeepTheirSchemas(t *testing.T) {
	const blouse, skirts = "../../../testdata/blouse.yaml", "../testdata/quoted.yaml"
	t.Parallel()
	out, kept := t.TempDir(), t.TempDir()
	tests := []struct {
		document, command string
		status            int
	}{
		{"draft", "draft " + blouse + " -o " + out + "/pieces", program.Done},
		{"sizes", "draft ../../../testdata/velvet.yaml --sizes 8,12 -o " + out + "/sizes", program.Done},
		{"estimate", "estimate " + blouse + " --passes 1", program.Done},
		{"table", "estimate ../../../testdata/velvet.yaml --table --passes 1", program.Done},
		{"marker", "marker " + blouse + " --passes 1 -o " + out + "/plan.pdf", program.Done},
		{"remnant", "remnant ../../../testdata/velvet.yaml --passes 1", program.No},
		{"remnant", "remnant " + blouse + " --cloth shell --length 3m --passes 1", program.Done},
		{"print", "print " + blouse + " --passes 1 -o " + out + "/pieces.pdf", program.Done},
		{"compare", "compare " + skirts + " --passes 1", program.Done},
		{"convert", "convert 2m --from 115cm --to 150cm", program.Done},
		{"quote", "quote " + skirts + " --passes 1", program.Done},
		{"pieces", "show ../../../testdata/paperskirt.yaml", program.Done},
		{"pieces", "export " + blouse + " -o " + out + "/blouse.yaml", program.Done},
		{"drawing", "import ../testdata/pocket.dxf --picture " + out + "/found.svg", program.Done},
		{"new", "new " + out + "/new.yaml", program.Done},
		{"version", "version", program.Done},
		{"error", "estimate nothing.yaml", program.Bad},
		{"error", "estimate " + blouse + " --unknown", program.Bad},
	}
	var seen []string
	for _, tt := range tests {
		t.Run(tt.document+" "+tt.command[:7], func(t *testing.T) {
			seen = append(seen, tt.document)
			ended := program.Run(t, kept, append(strings.Fields(tt.command), "--json")...)
			require.Equal(t, tt.status, ended.Status, ended.Said)
			var head struct {
				Version  int    `json:"format_version"`
				Document string `json:"document"`
			}
			require.NoError(t, json.Unmarshal([]byte(ended.Out), &head))
			assert.Equal(t, report.Version, head.Version)
			assert.Equal(t, tt.document, head.Document)
			document, err := jsonschema.UnmarshalJSON(strings.NewReader(ended.Out))
			require.NoError(t, err)
			assert.NoError(t, schemaOf(t, tt.document).Validate(document))
		})
	}
	slices.Sort(seen)
	names := report.Names()
	slices.Sort(names)
	assert.Equal(t, names, slices.Compact(seen), "a document that no command here prints")
}

func schemaOf(t *testing.T, name string) *jsonschema.Schema {
	t.Helper()
	document, err := jsonschema.UnmarshalJSON(strings.NewReader(program.Output(t, "schema", name)))
	require.NoError(t, err)
	compiler := jsonschema.NewCompiler()
	require.NoError(t, compiler.AddResource(name+".json", document))
	schema, err := compiler.Compile(name + ".json")
	require.NoError(t, err)
	return schema
}
