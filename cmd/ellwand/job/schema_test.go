package job

import (
	"bytes"
	"os"
	"path/filepath"
	"testing"

	"github.com/goccy/go-yaml"
	"github.com/santhosh-tekuri/jsonschema/v6"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func compiled(t *testing.T) *jsonschema.Schema {
	t.Helper()
	var text bytes.Buffer
	require.NoError(t, WriteSchema(&text))
	document, err := jsonschema.UnmarshalJSON(&text)
	require.NoError(t, err)
	compiler := jsonschema.NewCompiler()
	require.NoError(t, compiler.AddResource("job.schema.json", document))
	schema, err := compiler.Compile("job.schema.json")
	require.NoError(t, err)
	return schema
}

func instanceOf(t *testing.T, text []byte) any {
	t.Helper()
	asJSON, err := yaml.YAMLToJSON(text)
	require.NoError(t, err)
	value, err := jsonschema.UnmarshalJSON(bytes.NewReader(asJSON))
	require.NoError(t, err)
	return value
}

// The schema is checked by a reader that is not ours.
func TestSchemaAcceptsJobs(t *testing.T) {
	schema := compiled(t)
	assert.NoError(t, schema.Validate(instanceOf(t, []byte(plainJob))))
	jobs, err := filepath.Glob("../../../testdata/*.yaml")
	require.NoError(t, err)
	for _, path := range append(jobs, "../starter.yaml") {
		text, err := os.ReadFile(path)
		require.NoError(t, err)
		assert.NoError(t, schema.Validate(instanceOf(t, text)), path)
	}
}

func TestSchemaRefuses(t *testing.T) {
	schema := compiled(t)
	tests := []struct{ name, text string }{
		{"an unknown key", plainJob + "clothes: []\n"},
		{"no cloths", "job: a\nunits: cm\ngarments: [{name: b}]\n"},
		{"an unknown measurement", plainJob + "body: {bust: 92}\n"},
		{"words for a length", plainJob + "allowances: {seams: about a thumb}\n"},
		{"an unknown nap", "job: a\nunits: cm\ngarments: [{name: b}]\ncloths: [{name: c, width: 90, nap: up}]\n"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			assert.Error(t, schema.Validate(instanceOf(t, []byte(tt.text))))
		})
	}
}
