package construct

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
)

// A line that falls by 2 is met at once, a curve in a few steps.
func TestSettle(t *testing.T) {
	assert.InDelta(t, 15, Settle(0, func(x float64) float64 { return 30 - 2*x }), 1e-9)
	assert.InDelta(t, math.Sqrt(2), Settle(1, func(x float64) float64 { return 2 - x*x }), 0.001)
}
