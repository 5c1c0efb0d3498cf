package main

import (
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// The README names every command, and is short. Its examples run in the room examples.
func TestReadmeIsComplete(t *testing.T) {
	readme, err := os.ReadFile("../../README.md")
	require.NoError(t, err)
	text := string(readme)
	for _, cmd := range newRoot(&env{}).Commands() {
		assert.Contains(t, text, "| `ellwand "+cmd.Name(), "the table of commands")
	}
	assert.Less(t, strings.Count(text, "\n"), 200, "lines of the README")
}
