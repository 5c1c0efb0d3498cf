package main

import (
	"strings"
	"testing"
	"unicode/utf8"

	"github.com/stretchr/testify/assert"
)

// Help is read on a terminal of 80 columns, where a line that is longer would break in
// the middle of its paragraph.
func TestHelpFitsEightyColumns(t *testing.T) {
	for _, cmd := range newRoot(&env{}).Commands() {
		assert.LessOrEqual(t, len("  completion  ")+utf8.RuneCountInString(cmd.Short), 80, "the line of %s", cmd.Name())
		for line := range strings.Lines(cmd.Long) {
			isList := strings.HasPrefix(line, "  ")
			assert.True(t, isList || utf8.RuneCountInString(strings.TrimSuffix(line, "\n")) <= 80, "%s: %s", cmd.Name(), line)
		}
	}
}
