package construct_test

import (
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"

	"ellwand/draft/construct"
	"ellwand/pieces"
)

// TestReach by Pythagoras: a line that rises 3 in 4 is 5 long.
func TestReach(t *testing.T) {
	path := construct.Line(orb.Point{10, 20}, orb.Point{50, 50})
	assert.InDelta(t, 25, construct.Reach(path, 0, 30), 1e-9)
	assert.InDelta(t, 40, construct.Reach(path, 1, 44), 1e-9)
	assert.InDelta(t, 50, construct.Reach(path, 0, 60), 1e-9, "it never comes so far")
}

// A cut next to a joint leaves no splinter, and runs where it did.
func TestStretchLeavesNoSplinter(t *testing.T) {
	path := construct.Through(orb.Point{0, 1}, []orb.Point{{0, 0}, {30, 40}, {70, 60}, {110, 50}}, orb.Point{1, 0})
	joint := path[0].Length()
	for _, off := range []float64{0.2, 1, 1.9} {
		for name, part := range map[string]pieces.Path{
			"at its start": construct.Stretch(path, joint-off, path.Length()),
			"at its end":   construct.Stretch(path, 0, joint+path[1].Length()+off),
		} {
			assert.Len(t, part, 2, "%s, %g off", name, off)
			from := joint - off
			if name == "at its end" {
				from = 0
			}
			for at := 0.0; at <= part.Length(); at += 5 {
				assert.InDelta(t, 0, construct.Distance(path.At(from+at), part.At(at)), 0.05, "%s, %g off, at %g", name, off, at)
			}
		}
	}
	assert.Len(t, construct.Stretch(path, joint-3, path.Length()), 3)
}
