package construct

import (
	"math"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"

	"ellwand/pieces"
)

// A quarter of a circle turns by 90 degrees: three parts, each as long, on the
// same circle. What turns little stays whole.
func TestParted(t *testing.T) {
	quarter := pieces.Path{pieces.Arc{Radius: 100, Begin: 0, Sweep: math.Pi / 2}}
	parts := Parted(quarter)
	assert.Len(t, parts, 3)
	for _, part := range parts {
		assert.InDelta(t, 50*math.Pi/3, part.Length(), 1e-3)
		assert.InDelta(t, 100, Distance(orb.Point{}, part.At(0.5)), 1e-6)
	}
	assert.Equal(t, quarter.End(), parts.End())
	gentle := Curve(orb.Point{0, 0}, Heading(0), 1./3, orb.Point{100, 20}, Heading(30), 1./3)
	assert.Equal(t, gentle, Parted(gentle))
	assert.Equal(t, Line(orb.Point{0, 0}, orb.Point{50, 0}), Parted(Line(orb.Point{0, 0}, orb.Point{50, 0})))
}
