package search

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestIsStuck(t *testing.T) {
	for _, c := range []struct {
		name                   string
		begun, gained, patient int // passes; patient is the last at which it goes on
	}{
		{"no gain since the start", 0, 0, anewPatience},
		{"a gain late in a long start", 0, 300_000, 600_000 + anewPatience},
		{"the second start", 500_000, 520_000, 540_000 + anewPatience},
	} {
		t.Run(c.name, func(t *testing.T) {
			r := pressed(30.5)
			r.begun, r.gained = c.begun, c.gained
			r.s.passes = c.patient
			assert.False(t, r.isStuck())
			r.s.passes++
			assert.True(t, r.isStuck())
		})
	}
}

func TestBeginAnewKeepsWhatWasReported(t *testing.T) {
	r := pressed(30.5)
	var seen []float64
	r.report = func(found Outcome) { seen = append(seen, found.Length) }
	r.accept(r.best, 30.5)
	r.s.passes = 1000
	require.True(t, r.beginAnew())
	assert.Zero(t, r.s.total())
	assert.Equal(t, r.s.spots(), r.best)
	assert.Equal(t, r.s.used(), r.length)
	assert.False(t, r.isStuck())

	r.accept(r.best, 31)
	r.accept(r.best, 30.2)
	assert.Equal(t, []float64{30.5, 30.2}, seen, "a longer layout of a later start is not reported")

	require.True(t, r.beginAnew())
	r.length = 32
	r.Adopt(Outcome{Spots: r.best, Length: 30.2})
	assert.Equal(t, 30.2, r.length, "what was reported is gone on from in the end")
}
