package freecloth

import (
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"ellwand/pieces/geometry"
	"ellwand/testdata/sample"
)

func init() { sample.Rapid(50) }

func rectangle(x0, y0, x1, y1 float64) orb.Ring {
	return orb.Ring{{x0, y0}, {x1, y0}, {x1, y1}, {x0, y1}, {x0, y0}}
}

// Lengths 100 by 60, a piece in the near left corner:
//
//	+----------+
//	|          |
//	|xxx       |
//	|xxx       |
//	+----------+
func TestLargest(t *testing.T) {
	c := Of(orb.Point{20, -10}, 100, 60, 10)
	box, found := c.Largest(0)
	require.True(t, found)
	assert.Equal(t, orb.Bound{Min: orb.Point{20, -10}, Max: orb.Point{120, 50}}, box)
	c.Take(rectangle(20, -10, 50, 30))
	box, found = c.Largest(0)
	require.True(t, found)
	assert.Equal(t, orb.Bound{Min: orb.Point{50, -10}, Max: orb.Point{120, 50}}, box, "what only touches stays free")
	c.Take(rectangle(50, -10, 120, 31))
	box, found = c.Largest(0)
	require.True(t, found)
	assert.Equal(t, orb.Bound{Min: orb.Point{20, 40}, Max: orb.Point{120, 50}}, box, "a millimetre takes a cell")
	box, found = c.Largest(20)
	require.True(t, found)
	assert.Equal(t, orb.Bound{Min: orb.Point{20, 30}, Max: orb.Point{50, 50}}, box, "10 mm are too narrow")
	c.Take(rectangle(-1e12, -1e12, 1e12, 1e12))
	_, found = c.Largest(0)
	assert.False(t, found)
}

// Every cell that a ring reaches into by more than a touch is taken, and no other; the
// rectangle found is free, and none that is tried one by one is larger.
func TestLargestAgainstTrying(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := Of(orb.Point{-20, 10}, 70, 50, 10)
		number := rapid.Custom(func(t *rapid.T) float64 { return float64(rapid.IntRange(-20, 90).Draw(t, "n")) })
		for range rapid.IntRange(0, 3).Draw(t, "pieces") {
			a, b := orb.Point{number.Draw(t, "x"), number.Draw(t, "y")}, orb.Point{number.Draw(t, "x"), number.Draw(t, "y")}
			ring := orb.Ring{a, b, {number.Draw(t, "x"), number.Draw(t, "y")}, a}
			before := append([]bool(nil), c.taken...)
			c.Take(ring)
			for column := range c.columns {
				for row := range c.rows {
					at := column*c.rows + row
					isIn := before[at] || reaches(ring, c.box(column, column+1, row, row+1))
					if !isIn && c.taken[at] || isIn && !c.taken[at] {
						t.Fatalf("cell %d, %d is taken: %v", column, row, c.taken[at])
					}
				}
			}
		}
		least := float64(rapid.IntRange(0, 3).Draw(t, "least")) * 10
		box, found := c.Largest(least)
		best := tried(c, int(least/10))
		assert.Equal(t, best > 0, found)
		assert.Equal(t, float64(best)*100, (box.Max[0]-box.Min[0])*(box.Max[1]-box.Min[1]))
	})
}

// reaches reports whether a ring reaches into a cell by more than a touch.
func reaches(ring orb.Ring, cell orb.Bound) bool {
	inner := cell.Pad(-touch)
	return geometry.Crosses(ring, inner) || geometry.Inside(ring, inner.Center())
}

// tried is the area of the largest free rectangle, in cells.
func tried(c *Cells, least int) int {
	best := 0
	for x0 := range c.columns {
		for x1 := x0 + 1; x1 <= c.columns; x1++ {
			for y0 := range c.rows {
				for y1 := y0 + 1; y1 <= c.rows; y1++ {
					if x1-x0 >= least && y1-y0 >= least && c.isFree(x0, x1, y0, y1) {
						best = max(best, (x1-x0)*(y1-y0))
					}
				}
			}
		}
	}
	return best
}

func (c *Cells) isFree(x0, x1, y0, y1 int) bool {
	for x := x0; x < x1; x++ {
		for y := y0; y < y1; y++ {
			if c.taken[x*c.rows+y] {
				return false
			}
		}
	}
	return true
}
