package cloth_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"

	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
)

func TestTerms(t *testing.T) {
	assert.Equal(t, "either way", cloth.EitherWay.String())
	assert.Equal(t, "one way", cloth.OneWay.String())
	assert.Equal(t, "one way per garment", cloth.OneWayPerGarment.String())
	assert.Equal(t, "open", lay.Open.String())
	assert.Equal(t, "folded along the warp", lay.FoldedAlong.String())
}

func TestClothCheck(t *testing.T) {
	sound := cloth.Cloth{Name: "shell", Width: 1400, Selvedge: 10, Step: 100, Straighten: 30}
	assert.NoError(t, sound.Check())
	for name, c := range map[string]struct {
		change func(*cloth.Cloth)
		want   string
	}{
		"no width": {func(c *cloth.Cloth) { c.Width = 0 },
			"cloth shell: the width is 0 cm; give the width of the cloth from edge to edge"},
		"negative width":    {func(c *cloth.Cloth) { c.Width = -1400 }, "the width is -140 cm"},
		"no number":         {func(c *cloth.Cloth) { c.Width = math.NaN() }, "the width is"},
		"negative selvedge": {func(c *cloth.Cloth) { c.Selvedge = -10 }, "the selvedge is -1 cm; it cannot be negative"},
		"selvedges too wide": {func(c *cloth.Cloth) { c.Selvedge = 700 },
			"two selvedges of 70 cm leave nothing of a width of 140 cm"},
		"negative step":       {func(c *cloth.Cloth) { c.Step = -100 }, "the step of the shop is -10 cm"},
		"negative straighten": {func(c *cloth.Cloth) { c.Straighten = -1 }, "straightening the ends takes"},
		"negative gap":        {func(c *cloth.Cloth) { c.Gap = -1 }, "the gap between pieces is -0.1 cm"},
		"too much tilt":       {func(c *cloth.Cloth) { c.Tilt = 0.2 }, "the tilt is 20 %; it must be from 0 to 5 %"},
		"too much shrinkage":  {func(c *cloth.Cloth) { c.Shrinkage.Warp = 0.5 }, "a shrinkage of 50 % cannot be"},
		"tiny repeat":         {func(c *cloth.Cloth) { c.Repeat.Along = 1 }, "a repeat of 0.1 cm cannot be matched"},
		"flaw of no size": {func(c *cloth.Cloth) { c.Flaws = []cloth.Flaw{{Name: "stain"}} },
			"the flaw stain encloses nothing"},
		"unknown nap": {func(c *cloth.Cloth) { c.Nap = 7 },
			`the nap must be "either way", "one way" or "one way per garment"`},
	} {
		t.Run(name, func(t *testing.T) {
			goods := sound
			c.change(&goods)
			assert.ErrorContains(t, goods.Check(), c.want)
		})
	}
}
