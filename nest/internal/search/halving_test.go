package search

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestIsStagnant(t *testing.T) {
	for _, c := range []struct {
		name           string
		rung, advanced int
		lastNotStuck   int // passes
	}{
		{"a first rung", 0, 500_000, 500_000 + rungPatience},
		{"a third rung", 2, 20_000, 20_000 + 9*rungPatience},
	} {
		t.Run(c.name, func(t *testing.T) {
			r := pressed(30.5)
			r.rung, r.advanced = c.rung, c.advanced
			r.s.passes = c.lastNotStuck
			assert.False(t, r.isStagnant())
			r.s.passes++
			assert.True(t, r.isStagnant())
		})
	}
}

// TestStartsRace gives every start that ends its rung a length, and looks at
// which goes on.
func TestStartsRace(t *testing.T) {
	r := pressed(30.5)
	for _, c := range []struct {
		ends    float64 // length of the start that is stuck
		rung    int     // of the start that follows
		follows float64 // its length; 0 for another first layout
	}{
		{75, 0, 0},
		{70, 0, 0},
		{72, 1, 70},
		{69, 0, 0},
		{68, 0, 0},
		{67, 0, 0},
		{66, 1, 66},
		{66, 0, 0}, // no gain
		{80, 0, 0},
		{79, 0, 0},
		{78, 1, 78},
		{77, 2, 66},
		{65, 0, 0}, // waits in the third rung
	} {
		r.shortest.length = c.ends
		require.True(t, r.nextStart())
		assert.Equal(t, c.rung, r.rung, "after %g", c.ends)
		if c.follows > 0 {
			assert.Equal(t, c.follows, r.length, "after %g", c.ends)
		} else {
			assert.Equal(t, r.s.used(), r.length, "after %g", c.ends)
		}
		assert.False(t, r.isStagnant())
	}
	assert.Len(t, r.waiting[2], 1)
}

func TestBeginAgainKeepsWhatWasReported(t *testing.T) {
	r := pressed(30.5)
	var seen []float64
	r.report = func(found Outcome) { seen = append(seen, found.Length) }
	r.accept(r.best, 30.5)
	r.s.passes = 1000
	require.True(t, r.beginAgain())
	assert.Zero(t, r.s.total())
	assert.Equal(t, r.s.spots(), r.best)
	assert.Equal(t, r.s.used(), r.length)
	assert.False(t, r.isStagnant())

	r.accept(r.best, 31)
	r.accept(r.best, 30.2)
	assert.Equal(t, []float64{30.5, 30.2}, seen, "a longer layout of a later start is not reported")

	require.True(t, r.beginAgain())
	r.length = 32
	r.Adopt(Outcome{Spots: r.best, Length: 30.2})
	assert.Equal(t, 30.2, r.length, "what was reported is gone on from in the end")
}
