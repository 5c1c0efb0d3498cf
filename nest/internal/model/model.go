// Package model is the problem as the search sees it: shapes about their
// centres, pieces with the shapes they may take, fixed shapes, and a table of
// the no-fit region for each pair of shapes, made when first asked for.
package model

import (
	"fmt"
	"math"

	"github.com/paulmach/orb"

	"ellwand/nest/internal/convex"
	"ellwand/nest/internal/outline"
)

// Shape is an outline in one turn, about the centre of its bounding box.
type Shape struct {
	// Base is the outline up to mirror images in x and y; FlipX and FlipY
	// say, as 1 or -1, how this shape mirrors it.
	Base         int
	FlipX, FlipY float64
	// HalfX and HalfY are half the sides of the bounding box.
	HalfX, HalfY float64
	// CentreX and CentreY are the centre of the bounding box before it was
	// moved to (0, 0).
	CentreX, CentreY float64
	// Turn and Tilt lead back to the problem.
	Turn      int
	Tilt      float64
	Direction int
	// Low and High pin the shape to y = 0 or to the width of the strip.
	Low, High bool
	// OffsetX and OffsetY place the centre on a lattice.
	OffsetX, OffsetY float64
}

// Piece is one copy of an item.
type Piece struct {
	Item, Copy int
	// Shapes it may take: indices into Model.Shapes.
	Shapes []int
	Group  int
	// PeriodX and PeriodY of the lattice of its centre; 0 for none.
	PeriodX, PeriodY float64
}

// Spot is where a shape lies: the place of its centre.
type Spot struct {
	Shape int
	X, Y  float64
}

// Model is the whole problem. Only the tables change after it is built, and
// those behind a lock: it is safe for concurrent use.
type Model struct {
	Width float64
	// LowY and HighY are the lines that pinned shapes touch.
	LowY, HighY float64
	// ClearLow and ClearHigh are how far other shapes keep from those lines.
	ClearLow, ClearHigh float64
	// Length of the sheet, or 0 for a strip of open length.
	Length float64
	Gap    float64
	// Touch is the depth up to which outlines only touch.
	Touch  float64
	Shapes []Shape
	Pieces []Piece
	// Fixed are shapes that stay where they are.
	Fixed    []Spot
	Bases    []Base
	byPoints map[string]int // index of a base
	solids   []solid        // of each shape
	tables   *tables
	// cells on the long side of a table; 0 by the number of outlines.
	cells int
}

// Base is an outline about its centre with what is derived from it.
type Base struct {
	Points []orb.Point
	Parts  [][]orb.Point
	// Factor is the eighth root of the area of the convex hull: the product
	// of two weighs the depth of an overlap.
	Factor      float64
	HullArea    float64
	OutlineArea float64
	// Obstacle says that no gap is kept from it.
	Obstacle bool
	// id of the outline among those that share tables.
	id int
}

// New returns an empty model of a strip.
func New(width, length, gap float64) *Model {
	return &Model{Width: width, HighY: width, Length: length, Gap: gap, tables: &tables{}}
}

// Only returns a model of some of the pieces, in the given order. It shares
// the shapes and the tables.
func (m *Model) Only(pieces []int) *Model {
	part := *m
	part.Pieces = make([]Piece, len(pieces))
	for k, i := range pieces {
		part.Pieces[k] = m.Pieces[i]
	}
	return &part
}

// AddBase stores a clean outline and returns its index and the centre it was
// moved from. Equal outlines share a base.
func (m *Model) AddBase(points []orb.Point, obstacle bool) (index int, centre orb.Point) {
	lo, hi := outline.Bounds(points)
	centre = orb.Point{(lo[0] + hi[0]) / 2, (lo[1] + hi[1]) / 2}
	moved := make([]orb.Point, len(points))
	for i, p := range points {
		moved[i] = orb.Point{p[0] - centre[0], p[1] - centre[1]}
	}
	key := fmt.Sprint(obstacle, moved)
	if index, ok := m.byPoints[key]; ok {
		return index, centre
	}
	hull := outline.SignedArea(outline.Hull(moved))
	m.Bases = append(m.Bases, Base{
		Points: moved, Parts: convex.Parts(moved), Factor: math.Sqrt(math.Sqrt(math.Sqrt(hull))),
		HullArea: hull, OutlineArea: outline.SignedArea(moved), Obstacle: obstacle, id: m.tables.shared.id(key),
	})
	if m.byPoints == nil {
		m.byPoints = map[string]int{}
	}
	m.byPoints[key] = len(m.Bases) - 1
	return len(m.Bases) - 1, centre
}

// AddShape stores a shape of a base and returns its index. The gap must
// have been set.
func (m *Model) AddShape(s Shape) int {
	m.Shapes = append(m.Shapes, s)
	m.solids = append(m.solids, newSolid(m.imageOf(s), m.Gap))
	return len(m.Shapes) - 1
}

// imageOf returns the convex parts of a base mirrored as the shape says.
func (m *Model) imageOf(s Shape) [][]orb.Point {
	parts := m.Bases[s.Base].Parts
	if s.FlipX == 1 && s.FlipY == 1 {
		return parts
	}
	out := make([][]orb.Point, len(parts))
	for i, p := range parts {
		out[i] = flipped(p, s.FlipX, s.FlipY)
	}
	return out
}

// HullArea of a piece.
func (m *Model) HullArea(piece int) float64 {
	return m.Bases[m.Shapes[m.Pieces[piece].Shapes[0]].Base].HullArea
}

// OutlineArea of a piece.
func (m *Model) OutlineArea(piece int) float64 {
	return m.Bases[m.Shapes[m.Pieces[piece].Shapes[0]].Base].OutlineArea
}

// RangeX returns the least and greatest x of the centre of a shape on a strip
// of the given length.
func (m *Model) RangeX(shape int, length float64) (low, high float64) {
	s := &m.Shapes[shape]
	return s.HalfX, length - s.HalfX
}

// RangeY returns the least and greatest y of the centre of a shape.
func (m *Model) RangeY(shape int) (low, high float64) {
	s := &m.Shapes[shape]
	switch {
	case s.Low:
		return m.LowY + s.HalfY, m.LowY + s.HalfY
	case s.High:
		return m.HighY - s.HalfY, m.HighY - s.HalfY
	}
	low, high = 0, m.Width
	if m.ClearLow > 0 {
		low = max(low, m.LowY+m.ClearLow)
	}
	if m.ClearHigh > 0 {
		high = min(high, m.HighY-m.ClearHigh)
	}
	return low + s.HalfY, high - s.HalfY
}

// PartsOf returns the convex parts of a shape, about its centre.
func (m *Model) PartsOf(shape int) [][]orb.Point { return m.imageOf(m.Shapes[shape]) }
