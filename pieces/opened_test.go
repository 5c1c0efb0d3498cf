package pieces

import (
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
)

// TestOpenedAt: a square whose left side, from the upper to the lower corner,
// lies on the fold, begun anywhere, closed or not.
func TestOpenedAt(t *testing.T) {
	square := []orb.Point{{0, 0}, {10, 0}, {10, 10}, {0, 10}}
	for i := range square {
		turned := append(append([]orb.Point{}, square[i:]...), square[:i]...)
		assert.Equal(t, square, OpenedAt(turned, orb.Point{0, 10}, orb.Point{0, 0}))
		assert.Equal(t, square, OpenedAt(append(turned, turned[0]), orb.Point{0, 9}, orb.Point{0, 1}))
	}
}
