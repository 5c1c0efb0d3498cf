package nest

import (
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
)

// Of passes and time that counts which is nearer to its end.
func TestSpent(t *testing.T) {
	at := func() time.Duration { return 13 * time.Second }
	r := &run{o: Options{Passes: 40, Clock: at}, begin: 10 * time.Second}
	assert.InDelta(t, 0.25, r.Spent(10), 1e-12)
	r.limit = 12 * time.Second
	assert.InDelta(t, 0.25, r.Spent(4), 1e-12)
	assert.InDelta(t, 0.5, r.Spent(20), 1e-12)
	r.o.Passes = 0
	assert.InDelta(t, 0.25, r.Spent(20), 1e-12)
}
