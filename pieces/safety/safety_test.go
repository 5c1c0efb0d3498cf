package safety

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestCutting(t *testing.T) {
	assert.Equal(t, []string{Blades, Irons}, Cutting(false))
	assert.Equal(t, []string{Blades, Irons, Children}, Cutting(true))
}
