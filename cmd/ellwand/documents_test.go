package main

import (
	"bytes"
	"context"
	"encoding/json"
	"slices"
	"strings"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v6"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/cmd/ellwand/report"
)

// Every document that --json prints keeps the schema that the program prints for
// it, as a reader that is not ours finds; an error is a document too.
func TestDocumentsKeepTheirSchemas(t *testing.T) {
	const blouse, skirts = "../../testdata/blouse.yaml", "testdata/quoted.yaml"
	out := t.TempDir()
	t.Setenv("XDG_CACHE_HOME", t.TempDir())
	tests := []struct {
		document, command string
		status            int
	}{
		{"draft", "draft " + blouse + " -o " + out + "/pieces", statusDone},
		{"sizes", "draft ../../testdata/velvet.yaml --sizes 8,12 -o " + out + "/sizes", statusDone},
		{"estimate", "estimate " + blouse + " --passes 1", statusDone},
		{"table", "estimate ../../testdata/velvet.yaml --table --passes 1", statusDone},
		{"marker", "marker " + blouse + " --passes 1 -o " + out + "/plan.pdf", statusDone},
		{"remnant", "remnant ../../testdata/velvet.yaml --passes 1", statusNo},
		{"remnant", "remnant " + blouse + " --cloth shell --length 3m --passes 1", statusDone},
		{"print", "print " + blouse + " --passes 1 -o " + out + "/pieces.pdf", statusDone},
		{"compare", "compare " + skirts + " --passes 1", statusDone},
		{"convert", "convert 2m --from 115cm --to 150cm", statusDone},
		{"quote", "quote " + skirts + " --passes 1", statusDone},
		{"pieces", "show ../../testdata/paperskirt.yaml", statusDone},
		{"pieces", "export " + blouse + " -o " + out + "/blouse.yaml", statusDone},
		{"drawing", "import testdata/pocket.dxf --picture " + out + "/found.svg", statusDone},
		{"new", "new " + out + "/new.yaml", statusDone},
		{"version", "version", statusDone},
		{"error", "estimate nothing.yaml", statusBad},
		{"error", "estimate " + blouse + " --unknown", statusBad},
	}
	var seen []string
	for _, tt := range tests {
		t.Run(tt.document+" "+tt.command[:7], func(t *testing.T) {
			seen = append(seen, tt.document)
			var out, said bytes.Buffer
			status := run(context.Background(), append(strings.Fields(tt.command), "--json"), &out, &said)
			require.Equal(t, tt.status, status, said.String())
			var head struct {
				Version  int    `json:"format_version"`
				Document string `json:"document"`
			}
			require.NoError(t, json.Unmarshal(out.Bytes(), &head))
			assert.Equal(t, report.Version, head.Version)
			assert.Equal(t, tt.document, head.Document)
			document, err := jsonschema.UnmarshalJSON(&out)
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
	var out, said bytes.Buffer
	require.Equal(t, statusDone, run(context.Background(), []string{"schema", name}, &out, &said), said.String())
	document, err := jsonschema.UnmarshalJSON(&out)
	require.NoError(t, err)
	compiler := jsonschema.NewCompiler()
	require.NoError(t, compiler.AddResource(name+".json", document))
	schema, err := compiler.Compile(name + ".json")
	require.NoError(t, err)
	return schema
}
