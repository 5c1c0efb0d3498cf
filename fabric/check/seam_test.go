package check_test

import (
	"math"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/fabric/check"
	"ellwand/fabric/cloth"
	"ellwand/fabric/internal/fabrictest"
	"ellwand/fabric/lay"
	"ellwand/pieces"
	"ellwand/pieces/seams"
)

// Stripes along the cloth meet at the seam, and not at the cutting line, of pieces
// whose outlines include their allowance.
func TestStripesMeetAtTheSeam(t *testing.T) {
	c := cloth.Cloth{Width: 1000, Selvedge: 10, Repeat: cloth.Repeat{Across: 70}}
	left := fabrictest.Notched(fabrictest.Rectangle("left", 200, 300, 1), seams.Right, 100, "side")
	right := fabrictest.Notched(fabrictest.Rectangle("right", 220, 300, 1), seams.Left, 200, "side")
	all := []pieces.Piece{left, right}
	for i := range all {
		all[i].Edges = append([]pieces.Edge{}, all[i].Edges...)
		for k := range all[i].Edges {
			all[i].Edges[k].Included = 15
		}
	}
	p := laid(t, c, lay.Open, all...)
	var seam []float64
	for _, l := range p.Pieces {
		upright := pieces.Turn(l.Turn).Then(pieces.Move(l.X, l.Y))
		at := orb.Point{185, 100}
		if l.Name == "right" {
			at = orb.Point{15, 100}
		}
		seam = append(seam, upright.Apply(at)[1])
	}
	require.Len(t, seam, 2)
	assert.InDelta(t, 0, math.Remainder(seam[0]-seam[1], 70), 1)
	assert.NoError(t, check.Plan(p, all))
}

// An interfacing is matched to nothing: nobody sees it.
func TestHiddenPiecesAreNotMatched(t *testing.T) {
	all := []pieces.Piece{fabrictest.Rectangle("front", 200, 300, 1), fabrictest.Rectangle("front interfacing", 200, 300,
		1)}
	for i := range all {
		all[i].Edges = append([]pieces.Edge{}, all[i].Edges...)
		all[i].Edges[1].Name = seams.SideSeam
	}
	all[1].Kind = pieces.Interfacing
	c := cloth.Cloth{Width: 1000, Selvedge: 10, Repeat: cloth.Repeat{Along: 100}}
	p := laid(t, c, lay.Open, all...)
	require.Empty(t, p.Matches)
	assert.NoError(t, check.Plan(p, all))
}
