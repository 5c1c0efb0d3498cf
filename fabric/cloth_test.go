package fabric_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"

	"ellwand/fabric"
)

func TestUsableWidth(t *testing.T) {
	cloth := fabric.Cloth{Width: 1500, Selvedge: 10}
	assert.Equal(t, 1480.0, fabric.Open.UsableWidth(cloth))
	// Half of the width less the one selvedge at the open side: the fold
	// itself may be used.
	assert.Equal(t, 740.0, fabric.FoldedAlong.UsableWidth(cloth))
	assert.Equal(t, 1, fabric.Open.Plies())
	assert.Equal(t, 2, fabric.FoldedAlong.Plies())
}

func TestTerms(t *testing.T) {
	assert.Equal(t, "either way", fabric.EitherWay.String())
	assert.Equal(t, "one way", fabric.OneWay.String())
	assert.Equal(t, "one way per garment", fabric.OneWayPerGarment.String())
	assert.Equal(t, "open", fabric.Open.String())
	assert.Equal(t, "folded along the warp", fabric.FoldedAlong.String())
}

func TestClothCheck(t *testing.T) {
	sound := fabric.Cloth{Name: "shell", Width: 1400, Selvedge: 10, Step: 100, Straighten: 30}
	assert.NoError(t, sound.Check())
	for name, c := range map[string]struct {
		change func(*fabric.Cloth)
		want   string
	}{
		"no width":            {func(c *fabric.Cloth) { c.Width = 0 }, "cloth shell: the width is 0 cm; give the width of the cloth from edge to edge"},
		"negative width":      {func(c *fabric.Cloth) { c.Width = -1400 }, "the width is -140 cm"},
		"no number":           {func(c *fabric.Cloth) { c.Width = math.NaN() }, "the width is"},
		"negative selvedge":   {func(c *fabric.Cloth) { c.Selvedge = -10 }, "the selvedge is -1 cm; it cannot be negative"},
		"selvedges too wide":  {func(c *fabric.Cloth) { c.Selvedge = 700 }, "two selvedges of 70 cm leave nothing of a width of 140 cm"},
		"negative step":       {func(c *fabric.Cloth) { c.Step = -100 }, "the step of the shop is -10 cm"},
		"negative straighten": {func(c *fabric.Cloth) { c.Straighten = -1 }, "straightening the ends takes"},
		"negative gap":        {func(c *fabric.Cloth) { c.Gap = -1 }, "the gap between pieces is -0.1 cm"},
		"too much tilt":       {func(c *fabric.Cloth) { c.Tilt = 0.2 }, "the tilt is 20 %; it must be from 0 to 5 %"},
		"too much shrinkage":  {func(c *fabric.Cloth) { c.Shrinkage.Warp = 0.5 }, "a shrinkage of 50 % cannot be"},
		"tiny repeat":         {func(c *fabric.Cloth) { c.Repeat.Along = 1 }, "a repeat of 0.1 cm cannot be matched"},
		"flaw of no size":     {func(c *fabric.Cloth) { c.Flaws = []fabric.Flaw{{Name: "stain"}} }, "the flaw stain encloses nothing"},
		"unknown nap":         {func(c *fabric.Cloth) { c.Nap = 7 }, `the nap must be "either way", "one way" or "one way per garment"`},
	} {
		t.Run(name, func(t *testing.T) {
			cloth := sound
			c.change(&cloth)
			assert.ErrorContains(t, cloth.Check(), c.want)
		})
	}
}
