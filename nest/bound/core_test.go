package bound

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"ellwand/nest/layout"
)

// Bounds and proofs rest on what an item surely covers, not on the outline that is
// drawn about it.
func TestBoundRestsOnTheCore(t *testing.T) {
	outer := item("panel", square(10), 2)
	outer.Core = oblong(1, 1, 8, 8)
	inner := item("panel", oblong(1, 1, 8, 8), 2)
	assert.InDelta(t, Length(strip(12, inner)), Length(strip(12, outer)), 1e-9)
	assert.Less(t, Length(strip(12, outer)), Length(strip(12, item("panel", square(10), 2))))

	sheet := layout.Problem{Width: 12, Length: 18, Items: []layout.Item{outer}}
	assert.Empty(t, Misfit(sheet))
	sheet.Length = 15.5
	assert.NotEmpty(t, Misfit(sheet))
	assert.Equal(t, square(10), outer.Outline, "the problem that was given stays")
}
