package drawing

import (
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
)

// TestIsFree by hand: a line, words that stand upright, and a window that
// shows a line 50 mm further.
func TestIsFree(t *testing.T) {
	box := func(x, y, width, height float64) orb.Bound {
		return orb.Bound{Min: orb.Point{x, y}, Max: orb.Point{x + width, y + height}}
	}
	p := &Picture{}
	p.Line(Pen{}, orb.Point{0, 0}, orb.Point{100, 100})
	p.Write(Text{Words: "hem", At: orb.Point{20, 80}, Points: 10 / Point, Angle: 90})
	other := &Picture{}
	other.Line(Pen{}, orb.Point{0, 10}, orb.Point{40, 10})
	p.Window(box(50, 0, 40, 20), other, orb.Point{50, 0})
	for _, c := range []struct {
		box  orb.Bound
		free bool
	}{
		{box(10, 5, 10, 10), false},  // the line
		{box(10, 30, 5, 5), true},    // beside it
		{box(14, 70, 2, 2), false},   // within the words
		{box(24, 70, 5, 5), true},    // to the right of their foot
		{box(60, 8, 10, 4), false},   // the line in the window
		{box(60, 13, 10, 4), true},   // under it
		{box(95, 5, 10, 10), true},   // beside the window
		{box(0, 100, 10, 300), true}, // far away
	} {
		assert.Equal(t, c.free, p.IsFree(c.box), "%v", c.box)
		assert.Equal(t, c.free, p.Within(c.box).IsFree(c.box), "%v", c.box)
	}
}

// TestHasRoomFor by hand: words of 10 mm that rise at 90 degrees from a point
// stand to the left of it, from it upwards.
func TestHasRoomFor(t *testing.T) {
	p := &Picture{}
	p.Line(Pen{}, orb.Point{0, 0}, orb.Point{100, 0})
	p.Write(Text{Words: "hem", At: orb.Point{50, 50}, Points: 10 / Point})
	for _, c := range []struct {
		at    orb.Point
		angle float64
		free  bool
	}{
		{orb.Point{20, 30}, 0, true},
		{orb.Point{20, 5}, 0, false},   // the line goes through them
		{orb.Point{20, 9}, 0, true},    // their heads lie 1.5 mm under it
		{orb.Point{20, 7.7}, 0, false}, // or so close that there is no air
		{orb.Point{20, 15}, 90, false}, // they rise through the line
		{orb.Point{20, 40}, 90, true},
		{orb.Point{55, 60}, 90, false}, // through the other words
		{orb.Point{45, 60}, 90, true},
	} {
		assert.Equal(t, c.free, p.HasRoomFor(Text{Words: "seam", At: c.at, Points: 10 / Point, Angle: c.angle}, 0.3),
			"%v", c)
	}
	assert.Len(t, p.Lines(), 5, "a line and a rectangle")
	// Words that rise at 30 degrees begin 1 mm beside a line, 5 mm above their feet.
	beside := &Picture{}
	beside.Line(Pen{}, orb.Point{46.63, 46.15}, orb.Point{46.5, 46.2})
	rising := Text{Words: "seam", At: orb.Point{50, 50}, Points: 10 / Point, Angle: 30}
	assert.True(t, beside.HasRoomFor(rising, 0.3))
	assert.False(t, beside.HasRoomFor(rising, 2))
}
