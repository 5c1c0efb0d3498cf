package model

import (
	"math"
	"math/rand/v2"
	"sync"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// ell is an outline that no mirror image leaves as it is, about (15, 10):
//
//	+--+
//	|  |
//	|  +--------+
//	+-----------+
var ell = []orb.Point{{0, 0}, {30, 0}, {30, 6}, {9, 6}, {9, 20}, {0, 20}}

// add puts an outline into the model, mirrored as asked, and returns its shape.
func add(m *Model, points []orb.Point, flipX, flipY float64, obstacle bool) int {
	base, _ := m.AddBase(points, obstacle)
	_, high := bounds(m.Bases[base].Points)
	return m.AddShape(Shape{Base: base, FlipX: flipX, FlipY: flipY, HalfX: high[0], HalfY: high[1]})
}

func bounds(points []orb.Point) (low, high orb.Point) {
	box := orb.Ring(points).Bound()
	return box.Min, box.Max
}

// A base lies about the centre of its box, and equal outlines share one, wherever
// they were; what is kept clear of is another.
func TestBasesAreShared(t *testing.T) {
	m := New(100, 0, 0)
	first, centre := m.AddBase(ell, false)
	require.Equal(t, orb.Point{15, 10}, centre)
	low, high := bounds(m.Bases[first].Points)
	require.Equal(t, orb.Point{-15, -10}, low)
	require.Equal(t, orb.Point{15, 10}, high)
	assert.InDelta(t, 30*6+9*14, m.Bases[first].OutlineArea, 1e-9)
	assert.InDelta(t, 30*20-21*14/2, m.Bases[first].HullArea, 1e-9, "the box less the corner above the foot")
	assert.InDelta(t, math.Pow(m.Bases[first].HullArea, 0.125), m.Bases[first].Factor, 1e-12)

	moved := make([]orb.Point, len(ell))
	for i, q := range ell {
		moved[i] = orb.Point{q[0] + 64, q[1] - 32}
	}
	again, centre := m.AddBase(moved, false)
	require.Equal(t, first, again)
	require.Equal(t, orb.Point{79, -22}, centre)
	obstacle, _ := m.AddBase(ell, true)
	require.NotEqual(t, first, obstacle)
	require.Len(t, m.Bases, 2)
}

// The parts of a mirrored shape are the mirrored parts, counter-clockwise.
func TestPartsOfMirroredShapes(t *testing.T) {
	m := New(100, 0, 0)
	for _, flip := range [][2]float64{{1, 1}, {-1, 1}, {1, -1}, {-1, -1}} {
		shape := add(m, ell, flip[0], flip[1], false)
		parts, plain := m.PartsOf(shape), m.Bases[m.Shapes[shape].Base].Parts
		require.Len(t, parts, len(plain))
		for i, part := range parts {
			var twice float64
			corners := map[orb.Point]bool{}
			for k, q := range part {
				next := part[(k+1)%len(part)]
				twice += q[0]*next[1] - q[1]*next[0]
				corners[orb.Point{flip[0] * q[0], flip[1] * q[1]}] = true
			}
			require.Positive(t, twice, "%v", flip)
			require.Len(t, corners, len(plain[i]))
			for _, q := range plain[i] {
				require.True(t, corners[q], "%v: %v", flip, q)
			}
		}
	}
}

// The centre of a shape keeps half its box from the ends and the sides; pinned,
// it has one place across.
func TestRanges(t *testing.T) {
	m := New(100, 0, 0)
	m.LowY, m.HighY = 3, 90
	free := add(m, ell, 1, 1, false)
	low, high := m.AddShape(m.Shapes[free]), m.AddShape(m.Shapes[free])
	m.Shapes[low].Low, m.Shapes[high].High = true, true
	test := func(shape int, wantLow, wantHigh float64) {
		t.Helper()
		from, to := m.RangeY(shape)
		assert.Equal(t, [2]float64{wantLow, wantHigh}, [2]float64{from, to})
	}
	test(free, 10, 90)
	test(low, 13, 13)
	test(high, 80, 80)
	from, to := m.RangeX(free, 50)
	assert.Equal(t, [2]float64{15, 35}, [2]float64{from, to})
}

// A model of some of the pieces has those, in the given order, and leaves the
// whole as it was.
func TestOnly(t *testing.T) {
	m := New(100, 0, 0)
	shape := add(m, ell, 1, 1, false)
	for k := range 4 {
		m.Pieces = append(m.Pieces, Piece{Item: k, Shapes: []int{shape}})
	}
	part := m.Only([]int{3, 1})
	require.Equal(t, []Piece{m.Pieces[3], m.Pieces[1]}, part.Pieces)
	require.Len(t, m.Pieces, 4)
	require.Equal(t, m.HullArea(3), part.HullArea(0))
}

// Two squares of 10 overlap by what is left of 10 along the axis on which they
// are farther apart; with a gap, by as much more.
func TestDirectDepthOfSquares(t *testing.T) {
	square := []orb.Point{{0, 0}, {10, 0}, {10, 10}, {0, 10}}
	for _, gap := range []float64{0, 2} {
		m := New(100, 0, gap)
		m.Touch = 1e-6
		a, obstacle := add(m, square, 1, 1, false), add(m, square, 1, 1, true)
		for _, c := range []struct{ dx, dy, depth float64 }{
			{0, 0, 10}, {4, 0, 6}, {-4, 1, 6}, {3, -8, 2}, {1, 9.5, 0.5}, {10, 0, 0}, {0, -10, 0}, {30, 30, 0},
		} {
			assert.InDelta(t, c.depth, m.DirectDepth(a, obstacle, c.dx, c.dy), 1e-9, "no gap is kept from an obstacle")
			want := c.depth + gap
			if math.Abs(c.dx) > 10+gap || math.Abs(c.dy) > 10+gap {
				want = 0
			}
			assert.InDelta(t, want, m.DirectDepth(a, a, c.dx, c.dy), 1e-9, "gap %g at %g, %g", gap, c.dx, c.dy)
		}
		at := 10 + gap
		assert.Zero(t, m.DirectDepth(a, a, at-1e-7, 0), "no deeper than what counts as touching")
		assert.Positive(t, m.DirectDepth(a, a, at-1e-5, 0))
	}
}

// Without a table, with one, and by overlap alone, shapes in any mirror image and
// any order give the same answer.
func TestPairAgreesWithTheDirectTest(t *testing.T) {
	rng := rand.New(rand.NewPCG(4, 4))
	triangle := []orb.Point{{0, 0}, {24, 3}, {8, 17}}
	for _, gap := range []float64{0, 1.5} {
		m := New(60, 0, gap)
		m.Touch = 1e-6
		var shapes []int
		for _, flip := range [][2]float64{{1, 1}, {-1, 1}, {1, -1}, {-1, -1}} {
			shapes = append(shapes, add(m, ell, flip[0], flip[1], false), add(m, triangle, flip[0], flip[1], false))
		}
		shapes = append(shapes, add(m, triangle, 1, 1, true))
		overlaps := 0
		for range 6000 {
			a, b := shapes[rng.IntN(len(shapes))], shapes[rng.IntN(len(shapes))]
			dx, dy := 70*(rng.Float64()-0.5), 50*(rng.Float64()-0.5)
			depth := m.DirectDepth(a, b, dx, dy)
			if depth > 0 && depth < 0.01 {
				continue // where rounding decides
			}
			view := m.Pair(a, b)
			require.Equal(t, depth > 0, view.Depth(dx, dy) > 0, "shapes %d and %d at %g, %g", a, b, dx, dy)
			require.Equal(t, depth > 0, m.DirectOverlap(a, b, dx, dy))
			require.InDelta(t, depth, m.DirectDepth(b, a, -dx, -dy), 1e-9, "exchanged")
			if depth > 0 {
				overlaps++
			}
		}
		require.Greater(t, overlaps, 1000)
	}
}

// A table is made once, also when several ask for it at the same time, and is
// shared by the mirror images that look alike to each other.
func TestTablesAreShared(t *testing.T) {
	m := New(60, 0, 0)
	m.Touch = 1e-6
	plain, turned := add(m, ell, 1, 1, false), add(m, ell, -1, -1, false)
	mirrored := add(m, ell, -1, 1, false)
	var group sync.WaitGroup
	for range 8 {
		group.Go(func() { m.Pair(plain, mirrored) })
	}
	group.Wait()
	require.Equal(t, 1, made(m))
	m.Pair(turned, add(m, ell, 1, -1, false)) // both turned by 180 degrees: the same region, turned
	require.Equal(t, 1, made(m))
	m.Pair(plain, turned)
	require.Equal(t, 2, made(m))
	m.Pair(turned, plain)
	require.Equal(t, 2, made(m))
	m.Pair(plain, plain)
	require.Equal(t, 3, made(m))
}

func made(m *Model) int {
	seen := map[any]bool{}
	m.tables.made.Range(func(_, table any) bool {
		seen[table] = true
		return true
	})
	return len(seen)
}

// Many outlines have coarser tables, so that all of them fit into memory.
func TestCellsAcross(t *testing.T) {
	for bases, want := range map[int]int{1: 48, 90: 48, 91: 40, 160: 40, 161: 24, 1000: 24} {
		assert.Equal(t, want, (&Model{Bases: make([]Base, bases)}).cellsAcross(), "%d outlines", bases)
	}
}

// The disc inside a part lies about the mean of its corners and touches the
// nearest side.
func TestPartHoldsItsDisc(t *testing.T) {
	p := newPart([]orb.Point{{0, 0}, {12, 0}, {0, 9}})
	require.InDeltaSlice(t, []float64{4, 3}, p.centre[:], 1e-12)
	require.InDelta(t, 12./5, p.radius, 1e-12, "from the slanted side, 3 x + 4 y = 36")
	require.Equal(t, [2]orb.Point{{0, 0}, {12, 9}}, [2]orb.Point{p.lo, p.hi})
}
