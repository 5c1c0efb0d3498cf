package remnant

import (
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"

	"ellwand/nest/layout"
)

// A proof names no more pieces than it needs: of many squares of which one fits beside
// no other, two.
func TestFewestPiecesOfAProof(t *testing.T) {
	square := layout.Item{Name: "square", Outline: orb.Ring{{0, 0}, {60, 0}, {60, 60}, {0, 60}, {0, 0}},
		Turns: []layout.Turn{{}}}
	for copies := 2; copies <= 7; copies++ {
		square.Copies = copies
		p := layout.Problem{Width: 100, Length: 100, Items: []layout.Item{square}}
		assert.Equal(t, []int{2}, fewest(t.Context(), p), "%d copies", copies)
	}
}
