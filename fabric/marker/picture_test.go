package marker

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// A picture is at most 190 mm across the cloth and 900 along, at the largest scale that
// people reckon with.
func TestScaleOfAPicture(t *testing.T) {
	for _, c := range []struct{ across, along, want float64 }{
		{380, 1800, 2},
		{381, 100, 2.5},
		{100, 1801, 2.5},
		{1400, 2000, 8},
		{1400, 9000, 10},
		{1400, 22500, 25},
		{38000, 100, 200},
		{100, 180000, 200},
	} {
		assert.InDelta(t, c.want, screenScale(c.across, c.along), 1e-9, "%g by %g", c.across, c.along)
	}
}
