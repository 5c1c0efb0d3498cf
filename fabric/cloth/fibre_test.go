package cloth_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"ellwand/fabric/cloth"
)

// The shares as the trade has them: cotton 3 to 5 %, linen 4 to 5, viscose 4 to 8, wool
// 2 to 4, polyester 0 to 1 in the warp, about half of it in the weft (common practice).
func TestFibresShrink(t *testing.T) {
	for _, c := range []struct {
		fibre       cloth.Fibre
		least, most float64
	}{
		{cloth.UnknownFibre, 0, 0}, {cloth.Cotton, 3, 5}, {cloth.Linen, 4, 5}, {cloth.Viscose, 4, 8},
		{cloth.Wool, 2, 4}, {cloth.Polyester, 0, 1}, {cloth.Fibre(99), 0, 0},
	} {
		least, most := c.fibre.Shrinks()
		assert.InDelta(t, c.least, 100*least, 1e-9, c.fibre)
		assert.InDelta(t, c.most, 100*most, 1e-9, c.fibre)
		wetted, cut := c.fibre.Shrinkage(false), c.fibre.Shrinkage(true)
		assert.InDelta(t, c.most, 100*wetted.Warp, 1e-9, "what is bought is enough")
		assert.InDelta(t, c.most/2, 100*wetted.Weft, 1e-9)
		assert.InDelta(t, (c.least+c.most)/2, 100*cut.Warp, 1e-9, "pieces are enlarged by the mean")
		assert.True(t, cut.CutFirst)
		if c.most > 0 {
			assert.InDelta(t, c.least, 100*wetted.Least().Warp, 1e-9)
			assert.InDelta(t, c.least/2, 100*wetted.Least().Weft, 1e-9)
		}
	}
	given := cloth.Shrinkage{Warp: 0.07, Weft: 0.01}
	assert.Equal(t, given, given.Least(), "shares that the maker gives are what they are")
}

func TestAdditionWithin(t *testing.T) {
	a := cloth.Addition{Share: 0.02, Length: 4}
	assert.InDelta(t, 24, a.Of(1000), 1e-9)
	assert.InDelta(t, 1000, a.Within(1024), 1e-9)
}
