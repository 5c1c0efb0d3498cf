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
		step := r.exploreStep()
		assert.GreaterOrEqual(t, step, exploreLeast)
		assert.LessOrEqual(t, step, exploreMost)
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
		assert.Less(t, drawn.exploreStep(), exploreMost)
		assert.Equal(t, exploreMost, large.exploreStep())
	}
}
