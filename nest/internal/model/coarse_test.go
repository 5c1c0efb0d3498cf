package model

import (
	"math"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/require"
)

// crescent has a hundred corners, hollow above.
func crescent() []orb.Point {
	var points []orb.Point
	for i := range 51 {
		x := float64(i)*2 - 50
		points = append(points, orb.Point{x, -math.Sqrt(3600 - x*x)})
	}
	for i := range 51 {
		x := 50 - float64(i)*2
		points = append(points, orb.Point{x, 40 - math.Sqrt(3600-x*x)})
	}
	return points
}

// Of coarser outlines any layout is one of the outlines themselves: what does not overlap
// there, does not overlap here, and everything keeps its box and its turns.
func TestCoarserOutlinesHoldTheOthers(t *testing.T) {
	m := New(200, 0, 0)
	m.Touch = 1e-6
	var shapes []int
	for _, flip := range [][2]float64{{1, 1}, {-1, -1}, {1, -1}} {
		shapes = append(shapes, add(m, crescent(), flip[0], flip[1], false))
	}
	m.Pieces = []Piece{{Shapes: shapes}}
	c := m.Coarser(0.5, 24)
	require.Equal(t, len(m.Shapes), len(c.Shapes))
	_, all := m.Size()
	outlines, parts := c.Size()
	require.Equal(t, 1, outlines)
	require.Less(t, 3*parts, all)
	require.Equal(t, 24, c.cellsAcross())
	require.InDelta(t, m.Bases[0].OutlineArea, c.Bases[0].OutlineArea, 0.5*250, "the tolerance along the outline")
	for k := range m.Shapes {
		require.InDelta(t, m.Shapes[k].HalfX, c.Shapes[k].HalfX, 1e-9)
		low, high := bounds(c.Bases[c.Shapes[k].Base].Points)
		require.InDelta(t, -m.Shapes[k].HalfY, low[1], 1e-9)
		require.InDelta(t, m.Shapes[k].HalfY, high[1], 1e-9)
	}
	apart := 0
	for i := range 4000 {
		dx, dy := float64(i%80)*3-120, float64(i/80)*4-100
		a, b := shapes[i%3], shapes[i%2]
		if c.DirectOverlap(a, b, dx, dy) {
			continue
		}
		apart++
		require.False(t, m.DirectOverlap(a, b, dx, dy), "shapes %d and %d at %g, %g", a, b, dx, dy)
	}
	require.Greater(t, apart, 1000)
}
