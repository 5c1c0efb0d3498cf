package nest

import (
	"context"
	"testing"

	"github.com/stretchr/testify/assert"

	"ellwand/nest/jigsaw"
)

// A panic in one of the searches, which have goroutines of their own, comes out
// where Solve was called.
func TestPanicOfASearchCanBeRecovered(t *testing.T) {
	p := jigsaw.New(1, jigsaw.Slanted, 1000, 600, 3, 3).Problem
	assert.Panics(t, func() {
		_, _ = Solve(context.Background(), p, Options{Passes: 5, Progress: func(Progress) { panic("jammed") }})
	})
}
