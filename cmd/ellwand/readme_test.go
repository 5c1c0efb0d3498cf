package main

import (
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/cmd/ellwand/job"
	"ellwand/draft"
	"ellwand/draft/part"
)

// The README is the manual: it must name every measurement, command, part and
// seam, and its whole job must be one.
func TestReadmeIsComplete(t *testing.T) {
	text, err := os.ReadFile("../../README.md")
	require.NoError(t, err)
	readme := string(text)
	words := strings.Join(strings.Fields(readme), " ")
	names := func(name string) {
		assert.True(t, strings.Contains(words, name), "the README does not name %s", name)
	}
	for _, name := range draft.Measurements() {
		names("| `" + strings.ReplaceAll(string(name), " ", "_") + "` |")
	}
	for _, cmd := range newRoot(&env{}).Commands() {
		names("`ellwand " + cmd.Name())
	}
	for _, kind := range part.Kinds() {
		names("`" + string(kind) + "`")
	}
	for _, name := range draft.AllowanceNames() {
		names("`" + strings.ReplaceAll(name, " ", "_") + "`")
	}
	_, after, found := strings.Cut(readme, "```yaml\n")
	require.True(t, found, "the README shows a whole job")
	example, _, _ := strings.Cut(after, "```")
	assert.LessOrEqual(t, strings.Count(example, "\n"), 20, "a plain job takes under twenty lines")
	file, err := job.Parse("README.md", []byte(example))
	require.NoError(t, err)
	_, err = file.Resolve()
	require.NoError(t, err)
}
