package plan_test

import (
	"context"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/fabric/cloth"
	"ellwand/fabric/internal/fabrictest"
	"ellwand/fabric/lay"
	"ellwand/fabric/plan"
)

// laidByProgram is a lay to move pieces on.
func laidByProgram(t testing.TB, c cloth.Cloth, kind lay.Kind) (lay.Plan, *plan.Bench) {
	t.Helper()
	all := fabrictest.Blouse()
	need, err := plan.Require(context.Background(), c, all, plan.Options{Lays: []lay.Kind{kind}, Passes: 20, Seed: 1})
	require.NoError(t, err)
	bench, err := plan.NewBench(c, all, need.Lays[0], nil)
	require.NoError(t, err)
	return need.Lays[0], bench
}

func TestBenchLooksAtAPieceInHand(t *testing.T) {
	c := cloth.Cloth{Name: "shell", Width: 1400, Selvedge: 10, PurchaseStep: 100}
	laid, bench := laidByProgram(t, c, lay.Open)
	for i, l := range laid.Pieces {
		found, err := bench.Look(laid.Pieces, i, l, false)
		require.NoError(t, err)
		assert.True(t, found.Free, "%s lies where it may: %v", l.Name, found)
		assert.InDelta(t, laid.Taken, found.Taken, 0.01)
		assert.InDelta(t, laid.Buy, found.Buy, 0.01)
	}
	proven, ok := bench.Plan(laid.Pieces)
	assert.True(t, ok)
	assert.InDelta(t, laid.Length, proven.Length, 1e-6)
	first, second := laid.Pieces[0], laid.Pieces[1]
	first.X, first.Y = second.X+10, second.Y+10
	found, err := bench.Look(laid.Pieces, 0, first, false)
	require.NoError(t, err)
	require.NotEmpty(t, found.Overlaps)
	assert.False(t, found.Free)
	assert.NotEmpty(t, found.Overlaps[0].Area)
	first.Y = -1000
	found, err = bench.Look(laid.Pieces, 0, first, false)
	require.NoError(t, err)
	require.Len(t, found.Broken, 1)
	assert.Equal(t, plan.OverEdge, found.Broken[0].Rule)
	first = laid.Pieces[0]
	first.Turn += 45
	found, err = bench.Look(laid.Pieces, 0, first, false)
	require.NoError(t, err)
	require.NotEmpty(t, found.Broken)
	assert.Equal(t, plan.Turned, found.Broken[0].Rule)
	away := laid.Pieces[0]
	away.X = laid.Length + 300
	found, err = bench.Look(laid.Pieces, 0, away, true)
	require.NoError(t, err)
	assert.True(t, found.Free)
	assert.Greater(t, found.Taken, laid.Taken)
	moved := append([]lay.Laid{}, laid.Pieces...)
	moved[0].X, moved[0].Y, moved[0].Outline = found.X, found.Y, found.Outline
	_, ok = bench.Plan(moved)
	assert.True(t, ok, "what looked free is proven")
	moved[0].X = moved[1].X
	_, ok = bench.Plan(moved)
	assert.False(t, ok)
}

// What is laid by hand stays, and what goes round it is proven.
func TestRoundWhatAHandHasLaid(t *testing.T) {
	c := cloth.Cloth{Name: "shell", Width: 1400, Selvedge: 10, PurchaseStep: 100}
	laid, _ := laidByProgram(t, c, lay.Open)
	l := laid.Pieces[len(laid.Pieces)-1]
	c.ByHand = []cloth.HandLaid{{Width: 1400, Lay: int(lay.Open), Pieces: []cloth.HandPiece{{
		Name: l.Name, Garment: l.Garment, Copy: l.Copy, At: [2]float64{l.X + 200, l.Y}, Turn: l.Turn,
		FaceDown: l.Mirrored,
	}}}}
	hands := plan.HandLays(c, nil)
	require.Len(t, hands, 1)
	need, err := plan.Require(context.Background(), c, fabrictest.Blouse(),
		plan.Options{Passes: 20, Seed: 1, Fixed: hands[0]})
	require.NoError(t, err)
	byHand := 0
	for _, found := range need.Lays[need.Chosen].Pieces {
		if found.ByHand {
			byHand++
			assert.Equal(t, [3]any{l.Name, l.Copy, l.X + 200}, [3]any{found.Name, found.Copy, found.X})
		}
	}
	assert.Equal(t, 1, byHand)
	c.Width = 1500
	assert.Empty(t, plan.HandLays(c, nil), "another width is laid by itself")
}

func BenchmarkLook(b *testing.B) {
	laid, bench := laidByProgram(b, cloth.Cloth{Name: "shell", Width: 1400, Selvedge: 10, PurchaseStep: 100}, lay.Open)
	held := laid.Pieces[0]
	for i := 0; b.Loop(); i++ {
		held.X, held.Y = float64(10*(i%100)), float64(10*(i%70))
		_, err := bench.Look(laid.Pieces, 0, held, true)
		require.NoError(b, err)
	}
}
