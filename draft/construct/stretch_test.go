package construct_test

import (
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"

	"ellwand/draft/construct"
)

// TestReach by Pythagoras: a line that rises 3 in 4 is 5 long.
func TestReach(t *testing.T) {
	path := construct.Line(orb.Point{10, 20}, orb.Point{50, 50})
	assert.InDelta(t, 25, construct.Reach(path, 0, 30), 1e-9)
	assert.InDelta(t, 40, construct.Reach(path, 1, 44), 1e-9)
	assert.InDelta(t, 50, construct.Reach(path, 0, 60), 1e-9, "it never comes so far")
}
