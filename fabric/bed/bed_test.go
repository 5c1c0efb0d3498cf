package bed_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"ellwand/fabric/bed"
	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
)

func TestUsableWidth(t *testing.T) {
	c := cloth.Cloth{Width: 1500, Selvedge: 10}
	assert.Equal(t, 1480.0, bed.UsableWidth(lay.Open, c))
	// Half of the width less the one selvedge at the open side: the fold
	// itself may be used.
	assert.Equal(t, 740.0, bed.UsableWidth(lay.FoldedAlong, c))
	assert.Equal(t, 1, lay.Open.Plies())
	assert.Equal(t, 2, lay.FoldedAlong.Plies())
}
