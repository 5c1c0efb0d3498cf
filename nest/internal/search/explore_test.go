package search

import (
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"

	"ellwand/nest/internal/model"
)

func TestSmallStepsAreAsLikelyAsLarge(t *testing.T) {
	r := &Searcher{rng: rand.New(rand.NewPCG(1, 1))}
	small := 0
	for range 1000 {
		step := r.shrinkShare()
		assert.GreaterOrEqual(t, step, shrinkLeast)
		assert.LessOrEqual(t, step, shrinkMost)
		if step < 0.00316 { // the geometric mean
			small++
		}
	}
	assert.InDelta(t, 500, small, 80, "as many small steps as large")
}

func TestEverySecondSearchTakesLargeStepsOnly(t *testing.T) {
	m := model.New(10, 0, 0)
	drawn := New(m, 1, 0, endless{}, nil)
	large := New(m, 1, 1, endless{}, nil)
	for range 10 {
		assert.Less(t, drawn.shrinkShare(), shrinkMost)
		assert.Equal(t, shrinkMost, large.shrinkShare())
	}
	large.perturbed = true
	assert.Less(t, large.shrinkShare(), shrinkMost, "once perturbed, all draw")
}

// watched is a budget of so many passes that notes the lengths of strip, shorter
// than 30, on which they are made.
type watched struct {
	endless
	most    int
	state   *state
	lengths map[float64]bool
}

func (w *watched) Spent(passes int) float64 {
	if w.state.length < 30 {
		w.lengths[w.state.length] = true
	}
	return float64(passes) / float64(w.most)
}

func TestLengthIsGivenUpWhereNothingCanBeExchanged(t *testing.T) {
	r := pressed(30) // the shortest there is, of pieces all alike
	w := &watched{most: 5 * perturbPatience, state: r.s, lengths: map[float64]bool{}}
	r.budget = w
	r.explore(1)
	assert.GreaterOrEqual(t, len(w.lengths), 3, "a length out of reach is not kept")
	assert.LessOrEqual(t, len(w.lengths), 6)
}
