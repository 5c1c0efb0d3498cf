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

// In a room of 80 by 40 mm with a wall across at 50 mm, a box twice as wide as high has
// the most room in the middle of the larger part; where all places are as good, in
// the middle of the whole.
func TestRoomByHand(t *testing.T) {
	ring := orb.Ring{{0, 0}, {80, 0}, {80, 40}, {0, 40}, {0, 0}}
	wall := [][2]orb.Point{{{50, 0}, {50, 40}}}
	at, scale := Room(ring, wall, orb.Point{10, 5}, 100)
	assert.InDelta(t, 2.5, scale, 0.26)
	assert.InDelta(t, 25, at[0], 3)
	at, scale = Room(ring, nil, orb.Point{10, 5}, 0.5)
	assert.InDelta(t, 0.5, scale, 1e-12)
	assert.InDelta(t, 40, at[0], 1e-9)
	assert.InDelta(t, 20, at[1], 1e-9)
}
