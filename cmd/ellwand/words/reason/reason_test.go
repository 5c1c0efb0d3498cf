package reason

import (
	"errors"
	"testing"

	"github.com/stretchr/testify/assert"

	"ellwand/fabric/lay"
)

// Lays with the same reasons share a line, and pieces with the same reason
// share it within the line; what is possible is left out.
func TestWhyNot(t *testing.T) {
	wide := errors.Join(
		lay.Because("front: left", "it is %d cm wide", 90), lay.Because("back", "it is 90 cm wide"),
		lay.Because("back", "it is 90 cm wide"), lay.Because("tie", "it must go one way"))
	flaws := errors.New("the cloth has flaws; lay it open")
	plans := []lay.Plan{
		{Lay: lay.Open},
		{Lay: lay.FoldedAlong, Impossible: wide.Error(), Why: lay.Reasons(wide)},
		{Lay: lay.FoldedAcross, Impossible: flaws.Error(), Why: lay.Reasons(flaws)},
		{Lay: lay.CutAcross, Impossible: flaws.Error(), Why: lay.Reasons(flaws)},
		{Lay: lay.InStretches, Impossible: "nothing is gained by it", Throughout: &lay.Plan{}},
	}
	assert.Equal(t, []string{
		"folded along the warp: not possible: front: left, back: it is 90 cm wide\n  tie: it must go one way",
		"folded across the weft, cut across and turned: not possible: the cloth has flaws; lay it open",
		"part folded, part open: nothing is gained by it",
	}, WhyNot(plans))
}

func TestOnce(t *testing.T) {
	assert.Equal(t, "a, b: too wide\n  c: too long", Once("a: too wide\nb: too wide\nc: too long\na: too wide"))
}
