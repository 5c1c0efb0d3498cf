package safety

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestCutting(t *testing.T) {
	assert.Equal(t, []string{Blades, Irons}, Cutting(Adult))
	assert.Equal(t, []string{Blades, Irons, Children}, Cutting(Child))
	assert.Equal(t, []string{Blades, Irons, PerhapsChildren}, Cutting(PerhapsChild))
}
