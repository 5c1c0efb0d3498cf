package app

import (
	"runtime"
	"sync/atomic"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/fabric/plan"
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

// As many workers as were asked for, or as there are cores, are shared out.
func TestWorkersAreSharedOut(t *testing.T) {
	for _, tt := range []struct{ asked, calls, each int }{
		{0, 1, runtime.NumCPU()}, {0, 3 * runtime.NumCPU(), 1}, {5, 1, 5}, {5, 2, 2}, {1, 3, 1}, {2, 0, 0},
	} {
		var calls, workers atomic.Int64
		newSolver(Search{Workers: tt.asked}, Watch{}).each(tt.calls, func(_, some int) {
			calls.Add(1)
			workers.Add(int64(some))
		})
		assert.EqualValues(t, tt.calls, calls.Load(), "%+v", tt)
		assert.EqualValues(t, tt.calls*tt.each, workers.Load(), "%+v", tt)
	}
}

// A search has the passes that it is given, or its effort's share of the usual ones.
func TestPassesOfASearch(t *testing.T) {
	assert.Equal(t, 1, Search{Passes: 1}.passes(300))
	assert.Equal(t, 300, Search{Effort: plan.Usual}.passes(300))
}

// What is left out counts as much as what was begun, each problem the same.
func TestWorkOfWhatIsLeftOut(t *testing.T) {
	begun, leftOut := answer{need: plan.Requirement{Lays: make([]lay.Plan, 1)}}, answer{}
	for _, tt := range []struct {
		all  []answer
		want int
	}{
		{[]answer{begun, begun}, 100},
		{[]answer{begun, leftOut}, 200},
		{[]answer{begun, leftOut, leftOut}, 300},
		{[]answer{leftOut}, 100},
	} {
		assert.Equal(t, tt.want, withLeftOut(plan.Work{Due: 100, Made: 60}, tt.all).Due, "%d", len(tt.all))
	}
}
