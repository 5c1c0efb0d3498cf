package strict

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
)

// Many entries one after the other are not deep.
func TestLongIsNotDeep(t *testing.T) {
	assert.Zero(t, tooDeep([]byte("terms: see [1, [2]]\n"+strings.Repeat("a:\n  - b: [1]\n", 1000))))
}
