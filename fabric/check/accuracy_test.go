package check_test

import (
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/fabric/check"
	"ellwand/fabric/cloth"
	"ellwand/fabric/internal/fabrictest"
	"ellwand/fabric/lay"
	"ellwand/pieces"
)

// A piece that was measured to within 2 mm is laid 2 mm larger all round, but for
// the fold, and its bound is that of one 2 mm smaller.
func TestAccuracyOfOutlines(t *testing.T) {
	c := cloth.Cloth{Width: 1000, Selvedge: 10}
	rough, half := fabrictest.Rectangle("panel", 300, 400, 2), fabrictest.Half("front", 200, 400, 1)
	rough.Accuracy, half.Accuracy = 2, 2
	p := laid(t, c, lay.FoldedAlong, rough)
	box := p.Pieces[0].Outline.Bound()
	assert.InDelta(t, 404, box.Max[0]-box.Min[0], 0.01)
	assert.InDelta(t, 404, p.Length, 0.01)
	assert.InDelta(t, 396, p.Bound, 0.5)
	assert.Less(t, p.Bound, 396.)
	onFold := laid(t, c, lay.FoldedAlong, half)
	box = onFold.Pieces[0].Outline.Bound()
	assert.InDelta(t, 202, box.Max[1]-box.Min[1], 0.01)

	p.Pieces[0].Piece.Edges = slices.Clone(p.Pieces[0].Piece.Edges)
	p.Pieces[0].Piece.Edges[1].Allowance = 1
	require.ErrorContains(t, check.Plan(p, []pieces.Piece{rough}), "it has no room for the accuracy of its outline")
}
