// Package freecloth finds the largest rectangles of cloth that nothing lies on.
package freecloth

import (
	"math"
	"slices"

	"github.com/paulmach/orb"
)

// Cells are the squares of a rectangle of cloth, of which some are taken.
type Cells struct {
	side          float64 // mm
	corner        orb.Point
	columns, rows int
	taken         []bool // column by column
}

// Of a rectangle from its corner of least x and y, all of them free: as many cells of
// that side as lie in it whole. Lengths in mm.
func Of(corner orb.Point, length, width, side float64) *Cells {
	const slack = 1e-6 // mm, of rounding [source.OwnChoice]
	c := &Cells{side: side, corner: corner}
	c.columns, c.rows = max(0, int((length+slack)/side)), max(0, int((width+slack)/side))
	c.taken = make([]bool, c.columns*c.rows)
	return c
}

// touch, mm: what only touches a cell leaves it free [source.OwnChoice].
const touch = 1e-3

// Take every cell that a closed ring reaches into.
func (c *Cells) Take(ring orb.Ring) {
	box := ring.Bound()
	first, last := c.column(box.Min[0]), c.column(box.Max[0])
	for column := max(0, first); column <= min(last, c.columns-1); column++ {
		c.takeInColumn(column, ring)
	}
}

// column of a place along.
func (c *Cells) column(x float64) int { return cellOf(x-c.corner[0], c.side) }

func cellOf(at, side float64) int {
	return int(math.Floor(math.Max(-1e9, math.Min(at, 1e9)) / side))
}

// takeInColumn takes what the edges of a ring pass through in one column, and what
// lies between them in its middle.
func (c *Cells) takeInColumn(column int, ring orb.Ring) {
	from := c.corner[0] + float64(float64(column)*c.side) + touch
	to := c.corner[0] + float64(float64(column+1)*c.side) - touch
	middle := (from + to) / 2
	var crossings []float64
	for i := 1; i < len(ring); i++ {
		a, b := ring[i-1], ring[i]
		if a[0] > b[0] {
			a, b = b, a
		}
		if b[0] < from || a[0] > to {
			continue
		}
		if a[0] == b[0] {
			c.takeBetween(column, min(a[1], b[1]), max(a[1], b[1]))
			continue
		}
		at := func(x float64) float64 { return a[1] + float64((b[1]-a[1])*(x-a[0])/(b[0]-a[0])) }
		low, high := at(max(from, a[0])), at(min(to, b[0]))
		c.takeBetween(column, min(low, high), max(low, high))
		if a[0] <= middle && b[0] > middle {
			crossings = append(crossings, at(middle))
		}
	}
	slices.Sort(crossings)
	for i := 1; i < len(crossings); i += 2 {
		c.takeBetween(column, crossings[i-1], crossings[i])
	}
}

// takeBetween takes the cells of a column between two places across.
func (c *Cells) takeBetween(column int, low, high float64) {
	low, high = low-c.corner[1]+touch, high-c.corner[1]-touch
	if high < low {
		return
	}
	first, last := cellOf(low, c.side), cellOf(high, c.side)
	for row := max(first, 0); row <= min(last, c.rows-1); row++ {
		c.taken[column*c.rows+row] = true
	}
}

// Largest is the rectangle of free cells with the greatest area, neither of its sides
// below least, mm; false where there is none. For each column it looks how far back
// each row is free, and goes through those bars by a stack of rising ones (common
// knowledge of algorithms, linear in the cells).
func (c *Cells) Largest(least float64) (box orb.Bound, found bool) {
	side, best := int(math.Ceil(least/c.side-1e-9)), 0
	back := make([]int, c.rows+1) // the last one stays 0 and ends every bar
	var rising []int              // rows
	for column := range c.columns {
		c.growBack(back, column)
		for row, free := range back {
			for len(rising) > 0 && back[rising[len(rising)-1]] >= free {
				long := back[rising[len(rising)-1]]
				rising = rising[:len(rising)-1]
				from := 0
				if len(rising) > 0 {
					from = rising[len(rising)-1] + 1
				}
				if wide := row - from; long >= side && wide >= side && long*wide > best {
					best, box = long*wide, c.box(column+1-long, column+1, from, row)
				}
			}
			rising = append(rising, row)
		}
		rising = rising[:0]
	}
	return box, best > 0
}

// growBack brings the free lengths of the rows up to a column.
func (c *Cells) growBack(back []int, column int) {
	for row := range c.rows {
		back[row]++
		if c.taken[column*c.rows+row] {
			back[row] = 0
		}
	}
}

// box of columns and rows, from the first to before the last.
func (c *Cells) box(fromColumn, toColumn, fromRow, toRow int) orb.Bound {
	at := func(column, row int) orb.Point {
		return orb.Point{c.corner[0] + float64(float64(column)*c.side), c.corner[1] + float64(float64(row)*c.side)}
	}
	return orb.Bound{Min: at(fromColumn, fromRow), Max: at(toColumn, toRow)}
}
