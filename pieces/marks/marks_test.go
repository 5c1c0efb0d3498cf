package marks

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"

	"ellwand/pieces/seams"
)

// Every mark, on either side, numbered or not, is read back from its words.
func TestWordsRoundTrip(t *testing.T) {
	seen := map[string]bool{}
	for p := range pointCount {
		n := Name{point: p}
		assert.Equal(t, p != noPoint, n.String() != "", "point %d", p)
		assert.False(t, seen[n.String()], "two marks are called %q", n)
		seen[n.String()] = true
		if p == noPoint {
			continue
		}
		for _, each := range []Name{n, n.On(seams.OnFront), n.On(seams.OnBack), n.Numbered(1),
			n.On(seams.OnBack).Numbered(12)} {
			assert.Equal(t, each, Called(each.String()))
			assert.Equal(t, each.Mirrored(), Called(each.Mirrored().String()))
			assert.Equal(t, n, each.Mirrored().Kind())
		}
	}
}

// What people call their own marks comes back as they wrote it.
func TestAnyWordsRoundTrip(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		words := rapid.OneOf(rapid.String(),
			rapid.StringMatching(`(front |back )?[a ]{0,3}( 0?[0-9]| mirrored){0,3}`)).Draw(t, "words")
		assert.Equal(t, words, Called(words).String())
		assert.Equal(t, Called(words), Called(Called(words).String()))
	})
	assert.Equal(t, None, Called(""))
	assert.NotEqual(t, Called("a"), Called("b"))
	assert.Equal(t, []Name{FrontArmhole, Pleat.Numbered(2)}, All([]string{"front armhole", "pleat 2"}))
}

func TestWords(t *testing.T) {
	assert.Equal(t, "front princess upper", PrincessUpper.On(seams.OnFront).String())
	assert.Equal(t, "upper", PrincessUpper.On(seams.OnFront).Brief())
	assert.Equal(t, "elbow", BackElbow.Brief())
	assert.Equal(t, "outside knee", OutsideKnee.Brief())
	assert.Equal(t, "bust line mirrored", BustLine.Mirrored().String())
	assert.Equal(t, seams.OnBack, BackArmhole.Side())
	assert.Equal(t, None, None.Mirrored())
}

// Seams among the matches are read back too, and are not the notches of their words.
func TestSeams(t *testing.T) {
	for _, seam := range MatchingSeams() {
		name := OfSeam(seam)
		assert.Equal(t, name, Called(name.String()))
		assert.Equal(t, seam, name.Seam())
	}
	assert.Equal(t, "side seam", OfSeam(seams.SideSeam).String())
	assert.Equal(t, "front seam", OfSeam(seams.FrontSeam).String())
	assert.NotEqual(t, CentreFront, OfSeam(seams.CentreFront))
	assert.Equal(t, seams.None, CentreFront.Seam())
}
