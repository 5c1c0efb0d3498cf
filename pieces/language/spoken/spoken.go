// Package spoken is for tests: that a sentence is said in every language.
package spoken

import (
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"ellwand/pieces/language"
)

var number = regexp.MustCompile(`\d+(?:[.,]\d+)*`)

// figures in a text, whatever the way of the language.
func figures(text string) []string {
	out := number.FindAllString(text, -1)
	for i, one := range out {
		out[i] = strings.NewReplacer(",", "", ".", "").Replace(one)
	}
	slices.Sort(out)
	return out
}

// Both asserts that a sentence has words in every language, in each its own, with the same
// figures.
func Both(t *testing.T, what string, said language.Sentence) {
	t.Helper()
	english := said.In(language.English)
	german := said.In(language.German)
	assert.NotEmpty(t, english, what)
	assert.NotEmpty(t, german, what)
	assert.NotEqual(t, english, german, what)
	assert.NotContains(t, english+german, "%!", what)
	assert.Equal(t, figures(english), figures(german), "%s: %q and %q", what, english, german)
}
