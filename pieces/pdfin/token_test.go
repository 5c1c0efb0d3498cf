package pdfin

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// A name may have any byte as two digits behind a number sign (ISO 32000-1, 7.3.5); a
// sign without them is left as it is.
func TestNameText(t *testing.T) {
	for text, want := range map[string]string{
		"Font ": "Font", "A#42C ": "ABC", "A#20B#43": "A BC", "#41": "A", "A#4": "A#4", "A#": "A#", "A#zzB": "A#zzB",
		"A#fF/": "A\xff", " ": "",
	} {
		assert.Equal(t, want, string((&lexer{data: []byte(text)}).nameText()), "%q", text)
	}
}
