package strict

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestNoIsWrittenForNone(t *testing.T) {
	for text, want := range map[string]bool{"none": true, "None": true, "no": true, "No": true, "": false, "0": false,
		"not": false} {
		assert.Equal(t, want, MeansNone(text), text)
	}
}
