package search

import (
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/require"

	"ellwand/nest/internal/model"
)

// endless is a budget that never ends.
type endless struct{}

func (endless) Spent(int) float64 { return 0 }
func (endless) Stopped() bool     { return false }
func (endless) Floor() float64    { return 0 }

// pressed is a search of three squares of side 10 on a strip as wide, whose
// best layout has the given length, and in which the second square overlaps
// the others by 0.04.
func pressed(best float64) *Searcher {
	m := model.New(10, 0, 0)
	m.Touch = 1e-8 * m.Width
	base, _ := m.AddBase([]orb.Point{{-5, -5}, {5, -5}, {5, 5}, {-5, 5}}, false)
	shape := m.AddShape(model.Shape{Base: base, FlipX: 1, FlipY: 1, HalfX: 5, HalfY: 5})
	for i := range 3 {
		m.Pieces = append(m.Pieces, model.Piece{Copy: i, Shapes: []int{shape}})
	}
	r := New(m, 1, 1, endless{}, func(Outcome) {})
	r.best = []Spot{{X: 5, Y: 5}, {X: 15.2, Y: 5}, {X: best - 5, Y: 5}}
	r.length = best
	r.shortest = start{r.best, best}
	r.s.load([]Spot{{X: 5, Y: 5}, {X: 14.96, Y: 5}, {X: 24.92, Y: 5}}, 29.92)
	return r
}

func TestRepairPartsWhatOverlaps(t *testing.T) {
	r := pressed(30.5)
	require.Positive(t, r.s.total())
	require.True(t, r.repair())
	require.Zero(t, r.s.total())
	require.InDelta(t, 30, r.s.used(), 1e-6)
}

func TestRepairLeavesWhatCannotBeShorter(t *testing.T) {
	r := pressed(30.001)
	before, length, total := r.s.spots(), r.s.length, r.s.total()
	require.False(t, r.repair())
	require.Equal(t, before, r.s.spots())
	require.Equal(t, length, r.s.length)
	require.Equal(t, total, r.s.total())
}
