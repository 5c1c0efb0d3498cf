package search

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/nest/internal/model"
)

// gapped is ten squares of side 10 on a strip as wide, of which the first lies
// on the second, and the room of one is free between the seventh and eighth.
func gapped() *state {
	m := model.New(10, 0, 0)
	m.Touch = 1e-8 * m.Width
	base, _ := m.AddBase([]orb.Point{{-5, -5}, {5, -5}, {5, 5}, {-5, 5}}, false)
	shape := m.AddShape(model.Shape{Base: base, FlipX: 1, FlipY: 1, HalfX: 5, HalfY: 5})
	var spots []Spot
	for i := range 10 {
		m.Pieces = append(m.Pieces, model.Piece{Copy: i, Shapes: []int{shape}})
		spots = append(spots, Spot{X: 10*float64(i) + 5, Y: 5})
	}
	spots[0].X = 15
	for i := 7; i < 10; i++ {
		spots[i].X += 10
	}
	s := newState(m, rand.New(rand.NewPCG(1, 2)))
	s.load(spots, 110)
	return s
}

func TestGridSamplingFindsTheFreeRoom(t *testing.T) {
	s := gapped()
	_, ok := s.sampleGrid(0)
	require.False(t, ok, "there is no table yet")
	s.pairs.of(0, 0).promote()
	for range 20 {
		sampled, ok := s.sampleGrid(0)
		require.True(t, ok)
		require.GreaterOrEqual(t, len(sampled), 2)
		for _, p := range sampled[:2] {
			free := math.Min(math.Abs(p.at.X-5), math.Abs(p.at.X-75))
			assert.Less(t, free, 0.6, "the rooms of one square are at 5 and 75, and the grid sample found %g", p.at.X)
		}
		assert.Greater(t, math.Abs(sampled[0].at.X-sampled[1].at.X), 60.0, "both rooms")
	}
}

// A grid sample of one stretch comes everywhere in the end, and never off the strip.
func TestGridSamplingCoversTheStrip(t *testing.T) {
	s := scattered(200, 1)
	for a := range s.m.Shapes {
		for b := range s.m.Shapes {
			if m := s.pairs.of(a, b); !m.view.Ready() {
				require.True(t, m.promote())
			}
		}
	}
	tenths := map[int]int{}
	for k := range 600 {
		i := k % s.pieces
		sampled, ok := s.sampleGrid(i)
		require.True(t, ok)
		require.NotEmpty(t, sampled)
		for _, p := range sampled {
			require.Equal(t, s.clamp(i, p.at), p.at, "on the strip")
			tenths[int(10*p.at.X/s.length)]++
		}
	}
	for k := range 10 {
		assert.Greater(t, tenths[k], 20, "tenth %d of the strip", k)
	}
}

func TestGridOf(t *testing.T) {
	for _, test := range []struct {
		name          string
		length, width float64
		columns, rows int
	}{
		{"square", 100, 100, 24, 25},
		{"long", 1000, 100, 77, 7},
		{"a line along the strip", 1000, 0, 600, 1},
		{"a line across", 0, 100, 1, 600},
		{"a point", 0, 0, 1, 600},
		{"a sliver", 1e-9, 100, 1, 600},
	} {
		columns, rows := gridOf(test.length, test.width)
		assert.Equal(t, [2]int{test.columns, test.rows}, [2]int{columns, rows}, test.name)
	}
}
