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
