// Package nofit answers, for two outlines A and B and an offset d of B
// against A, whether they overlap and how deeply.
//
// The offsets at which they overlap are the inside of the no-fit region: the
// sum of A and B turned by 180 degrees (Art 1966; Bennell and Oliveira 2008,
// doi 10.1016/j.ejor.2006.11.038). With A and B split into convex parts it is
// the union of the sums of their parts, and "strictly inside one part sum" is
// an exact test that lets outlines touch. A Table lays a grid over the region:
// a cell is clear of it, inside it, or crossed by its boundary, and then lists
// the few half-planes that decide there. The depth (the distance to the
// nearest offset without overlap) is kept at the corners and interpolated.
package nofit

import (
	"math"
)

// Table is the no-fit region of two outlines on a grid. It is immutable and
// safe for concurrent use.
type Table struct {
	// HalfX and HalfY are the extents of the region about offset (0, 0).
	HalfX, HalfY float64
	// The grid begins at (-startX, -startY), a little outside the region, so
	// that the boundary always runs inside cells.
	startX, startY float64
	scale          float64 // cells a unit
	side           float64 // of a cell
	nx, ny         int
	cells          []cell
	unit           float64 // depth of 1 in a cell's corners
	depths         []uint8 // of the low corner of each cell; 0 outside the region
	depthUnit      float64 // depth of 1 in depths
	planes         []plane
	edges          []Segment // boundary of the region, cut to cells; while it is made
	stretches      []stretch // of edges in each cell; while it is made
	limit          float64   // depth up to which outlines only touch
}

// cell is what a look-up reads: twelve bytes together, since the look-ups of a
// search are spread over megabytes and each further line of cache costs as
// much as the arithmetic (BenchmarkDepth).
type cell struct {
	class int32 // clear, inside, or firstList + where its list of planes begins
	// corners are the signed depths, low to high in x, then in y.
	corners [4]int16
}

const (
	clear     = 0
	inside    = 1
	firstList = 2
)

// stretch is the part of Table.edges that lies in a cell.
type stretch struct{ cell, from, to int32 }

// plane is a half-plane x*nx + y*ny < c of a part sum.
type plane struct {
	nx, ny, c float64
	closes    uint8
}

// What the last plane of a part sum closes.
const (
	closesSum  = 1
	closesList = 2
)

// Segment is a stretch of the boundary of a no-fit region.
type Segment struct{ X1, Y1, X2, Y2 float64 }

// exactDepth is the depth inside the deepest part sum of the list that begins
// at a plane; not positive outside all of them.
func (t *Table) exactDepth(first int32, x, y float64) float64 {
	deepest := 0.0
	least := math.MaxFloat64
	planes := t.planes[first:]
	for k := range planes {
		p := &planes[k]
		if away := p.c - float64(p.nx*x) - float64(p.ny*y); away < least {
			least = away
		}
		if p.closes == 0 {
			continue
		}
		if least > deepest {
			deepest = least
		}
		if p.closes == closesList {
			break
		}
		least = math.MaxFloat64
	}
	return deepest
}

func (t *Table) column(v, start float64, n int) int {
	return min(max(int((v+start)*t.scale), 0), n-1)
}

// Bytes is about the memory that the table holds.
func (t *Table) Bytes() int {
	return 13*len(t.cells) + 32*len(t.planes)
}

func (t *Table) cornerX(i int) float64 { return float64(float64(i)*t.side) - t.startX }

func (t *Table) cornerY(i int) float64 { return float64(float64(i)*t.side) - t.startY }
