package plan

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"ellwand/fabric/lay"
)

// Only what lies on a side that is folded lies on a fold.
func TestSidesThatAreFolds(t *testing.T) {
	for _, c := range []struct {
		low, high     bool
		y             float64
		lower, higher bool
	}{
		{true, false, 100, true, false},
		{false, true, 100, false, true},
		{true, true, 100, true, true},
		{false, false, 100, false, false},
	} {
		part := lay.Bed{Y: 100, Width: 500, FoldLow: c.low, FoldHigh: c.high}
		assert.Equal(t, c.lower, isFold(part, 100), "low, %+v", c)
		assert.Equal(t, c.higher, isFold(part, 600), "high, %+v", c)
		assert.False(t, isFold(part, 300), "%+v", c)
	}
}
