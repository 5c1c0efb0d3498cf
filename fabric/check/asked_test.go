package check_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"ellwand/fabric/check"
	"ellwand/fabric/cloth"
	"ellwand/fabric/internal/fabrictest"
	"ellwand/fabric/lay"
	"ellwand/pieces"
	"ellwand/pieces/marks"
	"ellwand/pieces/seams"
)

// sided is a rectangle of a skirt with one side seam, at its right or left.
func sided(name string, at int) pieces.Piece {
	p := fabrictest.Rectangle(name, 200, 300, 1)
	p.Edges = append([]pieces.Edge{}, p.Edges...)
	p.Edges[at].Name = seams.SideSeam
	p.Garment = "skirt"
	return p
}

// A seam that joins two pieces, with one edge in each, is matched on a repeat, along as
// across: a plan that leaves it out is refused.
func TestJoinedSeamsAreMatched(t *testing.T) {
	all := []pieces.Piece{sided("front", 1), sided("back", 3)}
	side := marks.OfSeam(seams.SideSeam)
	for name, c := range map[string]struct {
		repeat cloth.Repeat
		count  int
	}{
		"along":  {cloth.Repeat{Along: 80}, 1},
		"across": {cloth.Repeat{Across: 70}, 1},
		"both":   {cloth.Repeat{Along: 80, Across: 70}, 2},
		"named":  {cloth.Repeat{Along: 80, Matches: []marks.Name{side}}, 1},
	} {
		t.Run(name, func(t *testing.T) {
			p := laid(t, cloth.Cloth{Width: 1000, Selvedge: 10, Repeat: c.repeat}, lay.Open, all...)
			assert.Len(t, p.Matches, c.count)
			for i := range p.Matches {
				spoiled := p
				spoiled.Matches = append(append([]lay.Match{}, p.Matches[:i]...), p.Matches[i+1:]...)
				assert.ErrorContains(t, check.Plan(spoiled, all), "neither kept nor said to be dropped")
			}
		})
	}
}
