package drawing

import (
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
)

func TestBoxScale(t *testing.T) {
	half := orb.Point{2, 1}
	assert.InDelta(t, 3, boxScale(orb.Point{6, -9}, orb.Point{6, 9}, half), 1e-12)
	assert.InDelta(t, 3, boxScale(orb.Point{-9, 3}, orb.Point{9, 3}, half), 1e-12)
	assert.InDelta(t, 2, boxScale(orb.Point{0, 4}, orb.Point{8, 0}, half), 1e-12)
	assert.InDelta(t, 0, boxScale(orb.Point{-1, -1}, orb.Point{1, 1}, half), 1e-12)
}
