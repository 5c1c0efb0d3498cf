package construct

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// A line that is drawn to a level ends on it and is as long as is said, also where the
// level is not that of the first point (geometry).
func TestReach(t *testing.T) {
	var s Sheet
	corner := s.Start(0, 0, "")
	from := s.Up(corner, 300, "")
	level := s.Up(corner, 180, "")
	for _, end := range []Point{s.ReachRight(from, level, 200, ""), s.ReachLeft(from, level, 200, "")} {
		assert.InDelta(t, 200, Distance(from.At, end.At), 1e-9)
		assert.InDelta(t, 180, end.Y(), 1e-9)
	}
}
