package plan_test

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
	"ellwand/fabric/words"
	"ellwand/pieces"
)

// A motif by hand: motifs have their centres at 150 mm along and every 320, at 200
// mm from the edge and every 350; so have the middles of the pieces.
func TestMotif(t *testing.T) {
	front := fabrictest.Polygon("front", orb.Point{0, 0}, orb.Point{260, 0}, orb.Point{260, 300}, orb.Point{40, 340})
	front.Cut = 2
	whole := fabrictest.Half("whole", 120, 300, 1)
	c := cloth.Cloth{Width: 1400, Selvedge: 10, Repeat: cloth.Repeat{Along: 320, Across: 350},
		Motif: cloth.Motif{Along: 150, Across: 200, Pieces: []string{"front", "whole"}}}
	all := []pieces.Piece{front, whole, fabrictest.Rectangle("back", 200, 300, 2)}
	p := inLay(t, c, lay.Open, all...)
	require.True(t, p.Possible(), words.WhyNot(p))
	for _, l := range p.Pieces {
		if l.Name == "back" {
			continue
		}
		middle := l.Outline.Bound().Center()
		assert.InDelta(t, 0, math.Remainder(middle[0]-150, 320), 0.51, l.Name)
		assert.InDelta(t, 0, math.Remainder(middle[1]+10-200, 350), 0.51, l.Name)
	}
	for name, spoil := range map[string]func(*cloth.Motif){
		"1.6 mm along and 0.0 mm across off": func(m *cloth.Motif) { m.Along += 1.6 },
		"0.0 mm along and 1.6 mm across off": func(m *cloth.Motif) { m.Across += 1.6 },
	} {
		spoiled := p
		spoil(&spoiled.Cloth.Motif)
		assert.ErrorContains(t, check.Plan(spoiled, all), name)
	}
}

// On a fold the middle of a whole piece is the fold, which must lie on a motif.
func TestMotifOnTheFold(t *testing.T) {
	whole := fabrictest.Half("whole", 120, 300, 2)
	c := cloth.Cloth{Width: 1400, Selvedge: 10, Repeat: cloth.Repeat{Along: 320, Across: 350},
		Motif: cloth.Motif{Along: 150, Across: 0, Pieces: []string{"whole"}}}
	p := inLay(t, c, lay.FoldedAlong, whole) // the fold at 700 mm is twice the repeat
	require.True(t, p.Possible(), words.WhyNot(p))
	for _, l := range p.Pieces {
		assert.InDelta(t, 0, math.Remainder(l.Outline.Bound().Center()[0]-150, 320), 0.51)
	}
}
