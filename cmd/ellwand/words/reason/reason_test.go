package reason

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"ellwand/fabric/lay"
	"ellwand/pieces/language"
)

// Lays with the same reasons share a line, and pieces with the same reason
// share it within the line; what is possible is left out.
func TestWhyNot(t *testing.T) {
	wide := []lay.Reason{
		{Of: lay.WiderThanFolded, Piece: "front: left", Takes: 900, Room: 700},
		{Of: lay.WiderThanFolded, Piece: "back", Takes: 900, Room: 700},
		{Of: lay.WiderThanFolded, Piece: "back", Takes: 900, Room: 700}, {Of: lay.Unpaired, Piece: "tie"},
	}
	flaws := []lay.Reason{{Of: lay.FlawsMove}}
	plans := []lay.Plan{
		{Lay: lay.Open},
		{Lay: lay.FoldedAlong, Why: wide},
		{Lay: lay.FoldedAcross, Why: flaws},
		{Lay: lay.CutAcross, Why: flaws},
		{Lay: lay.InStretches, Why: []lay.Reason{{Of: lay.NoGain, Throughout: lay.Open}}, Throughout: &lay.Plan{}},
	}
	assert.Equal(t, []string{
		"folded along the warp: not possible: front: left, back: it is 90 cm wide and the folded cloth only 70 cm; " +
			"lay the cloth open, or take a wider cloth\n  tie: two plies give a right and a left, but this piece is not its " +
			"own mirror image and is no pair; lay the cloth open, or say that it is a pair",
		"folded across the weft, cut across and turned: not possible: the cloth has flaws, and where " +
			"the fold or cut across it falls depends on the length, so that they would lie elsewhere each time; lay it open " +
			"or folded along the warp",
		"part folded, part open: nothing is gained by it; lay the cloth open throughout, which takes no more, with " +
			"less to chalk",
	}, language.Texts(WhyNot(plans), language.English))
}
