package plan_test

import (
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"

	"ellwand/fabric/cloth"
	"ellwand/fabric/internal/fabrictest"
	"ellwand/fabric/lay"
)

// On one-way cloth all pieces may point to the one end or all to the other; a
// flaw at the cut end makes the two differ. The wedge is 80 cm wide at its foot
// and 10 at its top, and beside the flaw the first 60 cm have room for its top
// alone.
func TestOneWayWithFlawsTriesBothEnds(t *testing.T) {
	wedge := fabrictest.Polygon("wedge", orb.Point{0, 0}, orb.Point{800, 0}, orb.Point{450, 600}, orb.Point{350, 600})
	c := cloth.Cloth{Name: "velvet", Width: 820, Selvedge: 10, Nap: cloth.OneWay}
	for name, flaws := range map[string][]cloth.Flaw{
		"room for the top at the cut end":  {rectangle(0, 0, 200, 150), rectangle(0, 670, 200, 820)},
		"room for the foot at the cut end": {rectangle(400, 0, 600, 150), rectangle(400, 670, 600, 820)},
	} {
		c.Flaws = flaws
		assert.InDelta(t, 600, inLay(t, c, lay.Open, wedge).Length, 1, name)
		one := c
		one.Nap, one.OneWayPieces = cloth.EitherWay, []string{"wedge"}
		assert.InDelta(t, 600, inLay(t, one, lay.Open, wedge).Length, 1, "a piece that goes one way: "+name)
	}
}

// In a lay of two beds too: the folded part has the back, the open one the wedge,
// which fits beside the flaws one way only.
func TestOneWayWithFlawsTriesBothEndsInTwoBeds(t *testing.T) {
	wedge := fabrictest.Polygon("wedge", orb.Point{0, 0}, orb.Point{800, 0}, orb.Point{450, 600}, orb.Point{350, 600})
	c := cloth.Cloth{Name: "velvet", Width: 820, Selvedge: 10, Nap: cloth.OneWay}
	for name, flaws := range map[string][]cloth.Flaw{
		"the top first":  {rectangle(500, 0, 700, 150), rectangle(500, 670, 700, 820)},
		"the foot first": {rectangle(900, 0, 1100, 150), rectangle(900, 670, 1100, 820)},
	} {
		c.Flaws = flaws
		plan := inLay(t, c, lay.InStretches, fabrictest.Half("back", 400, 500, 1), wedge)
		assert.InDelta(t, 1100, plan.Taken, 1, name)
	}
}

func rectangle(x0, y0, x1, y1 float64) cloth.Flaw {
	return cloth.Flaw{Name: "hole", Outline: orb.Ring{{x0, y0}, {x1, y0}, {x1, y1}, {x0, y1}, {x0, y0}}}
}
