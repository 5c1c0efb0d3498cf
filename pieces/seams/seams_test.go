package seams

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"
)

// Every seam, and every part of it, is read back from its words.
func TestWordsRoundTrip(t *testing.T) {
	seen := map[string]bool{}
	for _, n := range named {
		assert.NotEmpty(t, n.String())
		assert.False(t, seen[n.String()], "two seams are called %q", n)
		seen[n.String()] = true
		for _, part := range []Name{n, n.Stretch(1), n.Stretch(12), n.Mouth(0), n.Mouth(2), n.Dart(0), n.Dart(1)} {
			assert.Equal(t, part, Called(part.String()))
			assert.Equal(t, part.Mirrored(), Called(part.Mirrored().String()))
			assert.Equal(t, n, part.Seam())
			assert.Equal(t, n.Role(), part.Mirrored().Role())
		}
	}
	for r := range roleCount {
		assert.Equal(t, r != noRole, roleWords[r] != "", "role %d", r)
	}
	for s := range sideCount {
		assert.Equal(t, s != NoSide, s.String() != "", "side %d", s)
	}
}

// What people call their own seams comes back as they wrote it.
func TestAnyWordsRoundTrip(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		words := rapid.OneOf(rapid.String(),
			rapid.StringMatching(`[a ]{0,3}( mouth| dart| 0?[0-9]| mirrored){0,3}`)).Draw(t, "words")
		assert.Equal(t, words, Called(words).String())
		assert.Equal(t, Called(words), Called(Called(words).String()))
	})
	assert.Equal(t, None, Called(""))
	assert.NotEqual(t, Called("a"), Called("b"))
	assert.Equal(t, Called("flap"), Called("flap 2").Seam())
}

func TestParts(t *testing.T) {
	assert.Equal(t, "waist mouth 2", Waist.Mouth(2).String())
	assert.Equal(t, "armhole dart", Armhole.Dart(0).String())
	assert.Equal(t, "side 1 mirrored", SideSeam.Stretch(1).Mirrored().String())
	assert.True(t, Waist.Mouth(2).IsMouth())
	assert.False(t, Waist.Stretch(2).IsMouth())
	assert.True(t, Waist.IsFirst())
	assert.True(t, Waist.Stretch(1).IsFirst())
	assert.False(t, Waist.Stretch(2).IsFirst())
	assert.False(t, Waist.Mouth(1).IsFirst())
	assert.Equal(t, 2, Waist.Dart(2).Order())
	assert.Equal(t, Waist.Dart(0), Waist.Dart(2).Unnumbered())
	assert.Equal(t, Waist, Waist.Stretch(2).Unnumbered())
	assert.Equal(t, None, None.Mirrored())
}

func TestRoleAndSide(t *testing.T) {
	assert.Equal(t, Underarm, FrontUnderarm.Role())
	assert.Equal(t, OnFront, FrontUnderarm.Side())
	assert.Equal(t, NoSide, Underarm.Side())
	assert.Equal(t, Neck, FacingNeck.Role())
	assert.Equal(t, NarrowHem, SideNarrowHem.Role())
	for _, n := range []Name{CentreFront, CentreBack, Centre, CentreBack.Mirrored()} {
		assert.True(t, n.IsCentre(), n)
	}
	assert.False(t, SideSeam.IsCentre())
	assert.Equal(t, "neck, shoulder", List([]Name{Neck, Shoulder}))
}
