package app

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/fabric/cloth"
	"ellwand/pieces"
)

func aProblem() problem {
	pocket := pieces.Rectangle("pocket", 200, 310)
	pocket.Cut = 5
	return problem{cloth: cloth.Cloth{Width: 900, Selvedge: 10, PurchaseStep: 100}, all: []pieces.Piece{pocket}}
}

// Equal problems are laid once, and every answer is that of its problem.
func TestSolveAllKeepsTheOrder(t *testing.T) {
	narrow, wide := aProblem(), aProblem()
	narrow.cloth.Width = 250
	answers, err := newSolver(Search{Passes: 5, Workers: 2}, Watch{}).all(t.Context(), []problem{wide, narrow, wide})
	require.NoError(t, err)
	assert.Equal(t, answers[0], answers[2])
	assert.InDelta(t, 1550, answers[1].found.Taken, 1)
}
