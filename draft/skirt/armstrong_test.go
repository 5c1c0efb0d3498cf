package skirt

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/draft/construct"
	"ellwand/draft/internal/drafttest"
	"ellwand/pieces"
	"ellwand/pieces/seams"
)

// The darted skirt is built after one handbook; this checks it against another
// (Armstrong, Patternmaking for Fashion Design, 5th edition, the basic skirt,
// from memory [source.Armstrong]): 1/2 in of ease on each quarter of the hip line and 1/4 in at
// the waist; two back darts 5 1/2 in long, front darts 3 1/2 in long, the back
// ones taking in twice as much as the front ones.
func TestAnotherHandbookSkirt(t *testing.T) {
	const inch = 25.4
	block := drafted(t, Options{})
	assert.InDelta(t, 4*inch/2, block.Hip-size12.Hip, 15, "ease on the hip line")
	assert.InDelta(t, 4*inch/4, block.Waist-size12.Waist, 15, "ease at the waist")

	block = drafted(t, Options{HipEase: 4 * inch / 2, WaistEase: 4 * inch / 4})
	front, back := block.Pieces[0], block.Pieces[1]
	require.Len(t, back.Darts, 2)
	require.NotEmpty(t, front.Darts)
	for _, d := range back.Darts {
		assert.InDelta(t, 5.5*inch, dartLength(d), 15, "length of a back dart")
	}
	for _, d := range front.Darts {
		assert.InDelta(t, 3.5*inch, dartLength(d), 15, "length of a front dart")
	}
	assert.InDelta(t, 2, takenIn(back.Darts)/takenIn(front.Darts), 0.2, "back darts to front darts")
	side := drafttest.Path(t, front, seams.SideSeam)
	assert.Greater(t, side.End()[1], 0.0, "the waist rises to the side")
}

func dartLength(d pieces.Dart) float64 {
	return construct.Distance(construct.Between(d.Start, d.End, 0.5), d.Apex)
}

func takenIn(darts []pieces.Dart) float64 {
	sum := 0.0
	for _, d := range darts {
		sum += construct.Distance(d.Start, d.End)
	}
	return sum
}
