package cloth_test

import (
	"errors"
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
	sound := cloth.Cloth{Name: "shell", Width: 1400, Selvedge: 10, PurchaseStep: 100, Straighten: 30}
	assert.NoError(t, sound.Check())
	stain := cloth.Flaw{Name: "stain"}
	for name, c := range map[string]struct {
		change func(*cloth.Cloth)
		want   cloth.Fault
	}{
		"no width":       {func(c *cloth.Cloth) { c.Width = 0 }, cloth.Fault{Of: cloth.NoWidth}},
		"negative width": {func(c *cloth.Cloth) { c.Width = -1400 }, cloth.Fault{Of: cloth.NoWidth, Length: -1400}},
		"no number": {func(c *cloth.Cloth) { c.Width = math.Inf(1) },
			cloth.Fault{Of: cloth.NoWidth, Length: math.Inf(1)}},
		"negative selvedge": {func(c *cloth.Cloth) { c.Selvedge = -10 }, cloth.Fault{Of: cloth.NegativeSelvedge,
			Length: -10}},
		"selvedges too wide": {func(c *cloth.Cloth) { c.Selvedge = 700 }, cloth.Fault{Of: cloth.OnlySelvedges, Length: 700,
			Other: 1400}},
		"negative step": {func(c *cloth.Cloth) { c.PurchaseStep = -100 },
			cloth.Fault{Of: cloth.NegativeStep, Length: -100}},
		"negative straighten": {func(c *cloth.Cloth) { c.Straighten = -1 }, cloth.Fault{Of: cloth.NegativeStraighten,
			Length: -1}},
		"negative share":   {func(c *cloth.Cloth) { c.HandLaying.Share = -1 }, cloth.Fault{Of: cloth.NegativeHandLaying}},
		"negative minimum": {func(c *cloth.Cloth) { c.Minimum = -1 }, cloth.Fault{Of: cloth.NegativeSafety}},
		"negative gap":     {func(c *cloth.Cloth) { c.Gap = -1 }, cloth.Fault{Of: cloth.NegativeGap, Length: -1}},
		"too much tilt":    {func(c *cloth.Cloth) { c.Tilt = 0.2 }, cloth.Fault{Of: cloth.TiltOutside, Share: 0.2}},
		"too much shrinkage": {func(c *cloth.Cloth) { c.Shrinkage.Warp = 0.5 },
			cloth.Fault{Of: cloth.ShrinkageOutside, Share: 0.5}},
		"tiny repeat": {func(c *cloth.Cloth) { c.Repeat.Along = 1 }, cloth.Fault{Of: cloth.RepeatTooFine, Length: 1}},
		"centre line": {func(c *cloth.Cloth) { c.Repeat.CentreLine = -5 },
			cloth.Fault{Of: cloth.NegativeCentreLine, Length: -5}},
		"no stripes": {func(c *cloth.Cloth) { c.Repeat.Centred = []string{"front"} },
			cloth.Fault{Of: cloth.NoStripes}},
		"border": {func(c *cloth.Cloth) { c.Border.Line = 1400 },
			cloth.Fault{Of: cloth.BorderOffCloth, Length: 1400}},
		"motif": {func(c *cloth.Cloth) { c.Motif.Along, c.Motif.Across = -1, 2 },
			cloth.Fault{Of: cloth.NegativeMotif, Length: -1, Other: 2}},
		"motif once": {func(c *cloth.Cloth) { c.Motif.Pieces, c.Repeat.Along = []string{"front"}, 50 },
			cloth.Fault{Of: cloth.MotifWithoutRepeat}},
		"flaw of no size": {func(c *cloth.Cloth) { c.Flaws = []cloth.Flaw{stain} },
			cloth.Fault{Of: cloth.FlawOfNothing, Flaw: "stain"}},
		"unknown nap": {func(c *cloth.Cloth) { c.Nap = 7 }, cloth.Fault{Of: cloth.UnknownNap}},
	} {
		t.Run(name, func(t *testing.T) {
			goods := sound
			c.change(&goods)
			c.want.Cloth = "cloth shell"
			assert.Equal(t, errors.Join(c.want), goods.Check())
		})
	}
}
