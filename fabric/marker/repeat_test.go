package marker

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"ellwand/fabric"
)

// TestFirstAcross by hand: selvedge 10 mm, cloth 1020 mm wide, a line of the
// repeat 60 mm from the edge of the cloth and every 80 mm.
func TestFirstAcross(t *testing.T) {
	plan := openPlan()
	plan.Cloth.Repeat = fabric.Repeat{Across: 80, CentreLine: 60}
	y, ok := firstAcross(plan)
	assert.True(t, ok)
	assert.InDelta(t, 50, y, 1e-9)
	// Folded, the middle of the cloth, 510 mm from its edge, is y = 0; lines
	// lie at 460 and 540 mm.
	plan.Lay, plan.Width = fabric.FoldedAlong, 500
	y, ok = firstAcross(plan)
	assert.True(t, ok)
	assert.InDelta(t, 30, y, 1e-9)
	plan.Lay = fabric.BothSelvedgesIn
	_, ok = firstAcross(plan)
	assert.False(t, ok)
	assert.Contains(t, textOf(t, written(t, withRepeat(), Options{})), "repeat")
}

func withRepeat() fabric.LayPlan {
	plan := openPlan()
	plan.Cloth.Repeat.Along = 120
	return plan
}
