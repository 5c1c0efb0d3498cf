package lay

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// A lay that comes down to another is shown as that one.
func TestShown(t *testing.T) {
	open := Plan{Lay: Open, Length: 800}
	assert.Equal(t, open, open.Shown())
	assert.Equal(t, open, Plan{Lay: FoldedAlong, Length: 900, Throughout: &open}.Shown())
}
