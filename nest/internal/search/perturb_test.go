package search

import (
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/nest/internal/model"
)

// unlike is a search of four rectangles of two kinds on a strip 10 wide, whose
// best layout is 24 long: two tall ones of 10 by 4 about two of 8 by 8, the
// shortest there is.
func unlike() *Searcher {
	m := model.New(10, 0, 0)
	m.Touch = 1e-8 * m.Width
	for i, half := range []orb.Point{{2, 5}, {4, 4}, {4, 4}, {2, 5}} {
		x, y := half[0], half[1]
		base, _ := m.AddBase([]orb.Point{{-x, -y}, {x, -y}, {x, y}, {-x, y}}, false)
		shape := m.AddShape(model.Shape{Base: base, FlipX: 1, FlipY: 1, HalfX: x, HalfY: y})
		m.Pieces = append(m.Pieces, model.Piece{Item: i, Shapes: []int{shape}})
	}
	r := New(m, 1, 1, endless{}, func(Outcome) {})
	r.s.load([]Spot{{X: 2, Y: 5}, {Shape: 1, X: 8, Y: 4}, {Shape: 2, X: 16, Y: 4}, {Shape: 3, X: 22, Y: 5}}, 24)
	r.accept(r.s.spots(), 24)
	return r
}

func TestPerturbGoesOnFromALongerLayout(t *testing.T) {
	r := unlike()
	kept := r.shortest
	times := 0
	for range 20 {
		if !r.perturb(1) {
			continue
		}
		times++
		assert.True(t, r.returning)
		assert.Zero(t, r.s.total(), "nothing overlaps")
		assert.NotEqual(t, kept.spots, r.best)
		assert.Equal(t, r.s.used(), r.length)
		assert.LessOrEqual(t, r.length, (1+stretchMost)*kept.length)
		assert.Equal(t, kept, r.shortest, "the shortest is kept")
		assert.Equal(t, 24.0, r.reported)
	}
	assert.Positive(t, times)
}

func TestPerturbLeavesWhatCannotBeExchanged(t *testing.T) {
	r := pressed(30.5) // all alike
	before, length := r.s.spots(), r.s.length
	require.False(t, r.perturb(1))
	assert.Equal(t, before, r.s.spots())
	assert.Equal(t, length, r.s.length)
	assert.False(t, r.returning)
}

func TestLayoutIsIdle(t *testing.T) {
	r := pressed(30.5)
	r.s.passes = perturbPatience
	assert.False(t, r.isIdle())
	r.s.passes++
	assert.True(t, r.isIdle())

	r.returning = true
	r.accept(r.best, 30.7)
	assert.False(t, r.isIdle(), "it is still on its way")
	r.accept(r.best, 30.5+1e-5)
	assert.True(t, r.isIdle(), "it came back")
	assert.Equal(t, 30.5, r.shortest.length)
	r.accept(r.best, 30.4)
	assert.False(t, r.isIdle(), "it came below")
	assert.Equal(t, 30.4, r.shortest.length)
	assert.Equal(t, r.s.passes, r.advanced)
}
