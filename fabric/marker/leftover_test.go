package marker

import (
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/fabric/lay"
	"ellwand/pieces/geometry"
)

// TestLeftovers on a lay made by hand: 1000 mm across, pieces over the whole
// width to 600 mm, and one more in a corner behind them.
func TestLeftovers(t *testing.T) {
	plan := openPlan()
	plan.Length, plan.Buy = 900, 1500
	plan.Pieces = []lay.Laid{placedPiece("cape", 1000, 600, 0, 0, 270), placedPiece("hood", 300, 300, 600, 0, 270)}
	found := leftovers(plan, centimetreCell)
	require.NotEmpty(t, found)
	// Beside the hood 900 by 700, behind it 600 by 1000: the larger is first.
	assert.Equal(t, orb.Bound{Min: orb.Point{600, 300}, Max: orb.Point{1500, 1000}}, found[0].box)
	require.Len(t, found, 2)
	assert.Equal(t, orb.Bound{Min: orb.Point{900, 0}, Max: orb.Point{1500, 300}}, found[1].box)
}

// TestLeftoversTouchNothing: no rectangle reaches over a piece or another one.
func TestLeftoversTouchNothing(t *testing.T) {
	for name, plan := range map[string]lay.Plan{"open": openPlan(), "folded": foldedPlan(), "solved": required(t)} {
		t.Run(name, func(t *testing.T) {
			found := leftovers(plan, centimetreCell)
			for i, r := range found {
				inner := r.box.Pad(-0.01)
				for _, l := range plan.Pieces {
					assert.False(t, geometry.Crosses(l.Outline, inner) || geometry.Inside(l.Outline, inner.Center()), "%s", l.Name)
				}
				for _, other := range found[:i] {
					assert.False(t, touches(inner, other.box.Pad(-0.01)))
				}
			}
		})
	}
}

func TestProfilesOfEveryLay(t *testing.T) {
	for _, kind := range lay.Kinds() {
		plan := lay.Plan{Lay: kind, Plies: kind.Plies(), Width: 700, FoldedIn: 300}
		for _, p := range profiles(plan) {
			for _, thread := range p.threads {
				assert.GreaterOrEqual(t, len(thread), 2, "%s", kind)
			}
			assert.NotEmpty(t, p.marks, "%s", kind)
		}
	}
}

// TestRestOfALongLayIsShownInRows: one under the other, together the whole
// lay, none beyond the room.
func TestRestOfALongLayIsShownInRows(t *testing.T) {
	for _, length := range []float64{300, 1200, 5000, 11200, 40000} {
		plan := openPlan()
		plan.Length, plan.Buy = length, length
		views := restViews(plan, 200, 150)
		assert.Equal(t, length > 3000, len(views) > 1, "%g", length)
		at, bottom := 0.0, 0.0
		for _, v := range views {
			assert.InDelta(t, at, v.from, 1e-6)
			assert.GreaterOrEqual(t, v.box().Min[1], bottom)
			assert.LessOrEqual(t, (v.to-v.from)*v.scale, 200+1e-6)
			at, bottom = v.to, v.box().Max[1]
		}
		assert.InDelta(t, length, at, 1e-6)
		assert.LessOrEqual(t, bottom, 150.0)
	}
}
