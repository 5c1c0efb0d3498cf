package bound

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// Three oblongs of 6 by 4 lie two beside each other on a width of 10, so that they need
// 9; and below a length of 12 they lie all three beside each other, which takes 12 across.
// From 9 on, eighths of it are proven too short up to 11.25, and four halvings of the
// eighth above come as near to 12 as this, by hand.
func TestPiecesTriedAcross(t *testing.T) {
	assert.InDelta(t, 11.953125, Length(strip(10, item("a", oblong(0, 0, 6, 4), 3))), 1e-9)
	assert.InDelta(t, 6, Length(strip(10, item("a", oblong(0, 0, 6, 4), 2))), 1e-9, "nothing is gained")
}
