// Package jigsaw makes problems whose shortest layout is known, because they are
// cut from a rectangle: no layout is shorter than the rectangle, since its area
// is full.
package jigsaw

import (
	"fmt"
	"math"
	"math/rand/v2"

	"github.com/paulmach/orb"

	"ellwand/nest/layout"
	"ellwand/nest/portable"
)

// Puzzle is a rectangle that was cut up.
type Puzzle struct {
	Cut     Cut
	Problem layout.Problem
	// Solved is the rectangle put together again: no layout is shorter.
	Solved layout.Layout
}

// Figures of the cuts, our own choice: how far a corner moves and how far a
// curve leaves its chord, as shares of the side of a mean piece, so that no two
// cuts meet; and the corners of a curve.
const (
	cornerShare = 0.25
	waveShare   = 0.08
	waveCorners = 12
)

// New cuts a rectangle of that length and width (in any unit, both positive)
// into columns along and rows across (1 or more each). The same seed makes the
// same puzzle. The pieces come shuffled, each drawn about its own middle.
func New(seed uint64, cut Cut, length, width float64, columns, rows int) Puzzle {
	c := cutter{cut: cut, columns: columns, rows: rows, length: length, width: width,
		random: rand.New(rand.NewPCG(seed, uint64(cut)))}
	rings := c.rings()
	out := Puzzle{Cut: cut, Problem: layout.Problem{Width: width}, Solved: layout.Layout{Length: length}}
	for item, k := range c.random.Perm(columns * rows) {
		ring := rings[k]
		middle := ring.Bound().Center()
		for i, p := range ring {
			ring[i] = orb.Point{p[0] - middle[0], p[1] - middle[1]}
		}
		out.Problem.Items = append(out.Problem.Items, layout.Item{
			Name: fmt.Sprintf("piece %d", item), Outline: ring, Copies: 1, Turns: []layout.Turn{{}, {Degrees: 180}},
		})
		out.Solved.Placements = append(out.Solved.Placements, layout.Placement{Item: item, X: middle[0], Y: middle[1]})
	}
	return out
}

// rings of all pieces, counter-clockwise and closed.
func (c *cutter) rings() []orb.Ring {
	if c.cut == Chopped {
		return c.chopped(c.columns * c.rows)
	}
	c.corners()
	c.edges()
	var rings []orb.Ring
	for k := range c.columns * c.rows {
		rings = append(rings, c.piece(k%c.columns, k/c.columns))
	}
	return rings
}

// corners of the grid: the lines lie at uneven distances, each a half to one and
// a half of the mean, and inside the rectangle corners of cuts that are not
// straight are moved off them.
func (c *cutter) corners() {
	xs, ys := c.uneven(c.columns, c.length), c.uneven(c.rows, c.width)
	for i := range c.columns + 1 {
		var column []orb.Point
		for j := range c.rows + 1 {
			p := orb.Point{xs[i], ys[j]}
			dx, dy := c.random.Float64()-0.5, c.random.Float64()-0.5
			if c.cut != Straight && i > 0 && i < c.columns {
				p[0] += dx * cornerShare * c.length / float64(c.columns)
			}
			if c.cut != Straight && j > 0 && j < c.rows {
				p[1] += dy * cornerShare * c.width / float64(c.rows)
			}
			column = append(column, p)
		}
		c.corner = append(c.corner, column)
	}
}

func (c *cutter) uneven(n int, end float64) []float64 {
	at := []float64{0}
	for range n {
		at = append(at, at[len(at)-1]+0.5+c.random.Float64())
	}
	for i := range at {
		at[i] *= end / at[n]
	}
	at[n] = end
	return at
}

func (c *cutter) edges() {
	for j := range c.rows + 1 {
		var row []orb.LineString
		for i := range c.columns {
			row = append(row, c.edge(c.corner[i][j], c.corner[i+1][j], j > 0 && j < c.rows))
		}
		c.along = append(c.along, row)
	}
	for i := range c.columns + 1 {
		var column []orb.LineString
		for j := range c.rows {
			a, b, isInside := c.corner[i][j], c.corner[i][j+1], i > 0 && i < c.columns
			if isInside && c.cut == Tongued {
				column = append(column, tongue(a, b, c.narrowest(i), j%2 == 0))
				continue
			}
			column = append(column, c.edge(a, b, isInside))
		}
		c.across = append(c.across, column)
	}
}

// edge is a cut between two corners: a half wave or a whole one, if it is curved.
func (c *cutter) edge(a, b orb.Point, isInside bool) orb.LineString {
	halves, high := 1+c.random.IntN(2), waveShare*(2*c.random.Float64()-1)
	if c.cut != Curved || !isInside {
		return orb.LineString{a, b}
	}
	return wave(a, b, halves, float64(high*math.Min(c.length/float64(c.columns), c.width/float64(c.rows))))
}

// wave is a curve of so many half waves, so high.
func wave(a, b orb.Point, halves int, high float64) orb.LineString {
	dx, dy := b[0]-a[0], b[1]-a[1]
	long := portable.Hypot(dx, dy)
	line := orb.LineString{a}
	for k := 1; k < waveCorners; k++ {
		t := float64(k) / waveCorners
		wave, _ := portable.SincosDegrees(180 * float64(halves) * t)
		off := float64(high * wave)
		line = append(line, orb.Point{a[0] + float64(t*dx) - off*dy/long, a[1] + float64(t*dy) + off*dx/long})
	}
	return append(line, b)
}

// piece of a column and a row, counter-clockwise and closed.
func (c *cutter) piece(i, j int) orb.Ring {
	var ring orb.Ring
	ring = append(ring, c.along[j][i]...)
	ring = append(ring, c.across[i+1][j][1:]...)
	ring = append(ring, reversed(c.along[j+1][i])[1:]...)
	return append(ring, reversed(c.across[i][j])[1:]...)
}

func reversed(line orb.LineString) orb.LineString {
	out := line.Clone()
	out.Reverse()
	return out
}
